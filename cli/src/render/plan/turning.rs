//! The circle that a wheelchair turns in, where one is asked for.

use super::figure::Figure;
use super::signs;
use crate::drawing::{At, Label, Mark, Tone, hand};
use crate::words::plan as words;

/// Type of its name, mm.
const TYPE: f64 = hand::FIGURES;
/// A label had better not lie on it: it is minded as so many chords.
const CHORDS: usize = 24;

/// The circle.
pub(super) fn draw(figure: &mut Figure<'_>) {
    let Some((centre, radius)) = on_sheet(figure) else { return };
    figure.put(Mark::Layer("turning-circle"));
    signs::turning(centre, radius).into_iter().for_each(|mark| figure.put(mark));
    figure.labels.mind_ring(&(0..CHORDS).map(|chord| round(centre, radius, chord)).collect::<Vec<_>>());
}

/// Its name and its diameter, below its centre before other places within it.
pub(super) fn name(figure: &mut Figure<'_>) {
    let (Some((centre, radius)), Some(circle)) = (on_sheet(figure), figure.shown.turning_circle()) else { return };
    let text = words::turning(&figure.shown.tape(circle.diameter));
    let offs = [0.25, -0.25, 0.5, -0.5, 0.75, -0.75].map(|share| centre + At::new(0.0, radius * share));
    figure.labels.place(&Label { ground: Some(Tone::Floor), ..Label::new(centre, offs.into(), TYPE, text) });
}

fn on_sheet(figure: &Figure<'_>) -> Option<(At, f64)> {
    let circle = figure.shown.turning_circle()?;
    Some((figure.frame.at(circle.centre), figure.frame.length(circle.diameter / 2.0)))
}

fn round(centre: At, radius: f64, chord: usize) -> At {
    let (sine, cosine) = (std::f64::consts::TAU * chord as f64 / CHORDS as f64).sin_cos();
    centre + At::new(cosine, sine) * radius
}
