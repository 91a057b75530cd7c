//! Floor that is kept free, hatched: what a leaf sweeps, landings, what lies before heat.

use elbowroom_solver::plan::ZoneKind;

use super::figure::Figure;
use crate::drawing::{At, Dash, Fill, Mark, Path, Pen, Tone, hand, hatch};

/// All zones, below everything else.
pub(super) fn draw(figure: &mut Figure<'_>) {
    figure.put(Mark::Layer("zones"));
    let zones = figure.plan.zones.clone();
    for zone in zones {
        let ring = figure.frame.all(&zone.ring);
        for mark in marks(&ring, zone.kind) {
            figure.put(mark);
        }
    }
}

/// A zone: each kind has its own slant.
pub(super) fn marks(ring: &[At], kind: ZoneKind) -> Vec<Mark> {
    let slants: &[(f64, f64)] = match kind {
        ZoneKind::Swing => &[(0.0, 2.0)],
        ZoneKind::Landing => &[(-45.0, 2.8)],
        ZoneKind::KeepClear => &[(45.0, 2.4), (-45.0, 2.4)],
    };
    let pen = Pen::of(hand::FITTINGS, Tone::Pale);
    let lines = slants.iter().flat_map(|(slant, apart)| hatch(ring, *slant, *apart));
    let mut marks: Vec<Mark> = lines.map(|line| Path::line(line, pen).into()).collect();
    let edge = Pen::of(hand::FITTINGS, Tone::Pale).broken(Dash::Dashed);
    if kind != ZoneKind::Swing {
        marks.push(Path::ring(ring.iter().copied(), Some(edge), Fill::None).into());
    }
    marks
}
