//! What is drawn by its outline: tables, storage with a stroke at its front, rugs with a border, chairs at tables.

use elbowroom_model::{Drawn, Point};
use elbowroom_solver::geometry::joined;

use super::axes::Axes;
use super::pens::{OUTLINE, WITHIN, body, ground, line};
use crate::drawing::{At, Dash, Fill, Path, Pen, Tone, hand};
use crate::render::plan::figure::Figure;
use crate::render::plan::shown::PieceShown;

/// From the edge of a rug to its border, mm.
const BORDER: f64 = 70.0;
/// Radius of the corners of a chair at a table, mm.
const CHAIR: f64 = 60.0;
/// From the front of a piece to the stroke along it, as a share of its depth.
const FRONT: f64 = 0.1;

/// A rug with its border; floor that stays open by its edge alone.
pub(super) fn under(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = figure.frame.all(&outline(&piece.parts()));
    if piece.piece.kind.traits().drawn == Drawn::OpenFloor {
        let pen = Pen::of(hand::FITTINGS, Tone::Grey).broken(Dash::Dashed);
        figure.put(Path::ring(ring, Some(pen), Fill::None));
        return;
    }
    figure.labels.mind_ring(&ring);
    figure.put(Path::ring(ring, Some(WITHIN), Fill::Tone(Tone::Rug)));
    let axes = Axes::of(&piece.main(), piece.placed.facing);
    if axes.width > 4.0 * BORDER && axes.depth > 4.0 * BORDER {
        let half = axes.width / 2.0 - BORDER;
        let border = axes.rectangle([-half, half], [BORDER, axes.depth - BORDER]);
        let border = figure.frame.all(&border);
        figure.labels.bar_under(&border);
        figure.put(Path::ring(border, Some(Pen::of(hand::FITTINGS, Tone::Grey)), Fill::None));
    }
}

/// Chairs at tables: light, since nobody measures them, and under their tables.
pub(super) fn chairs(figure: &mut Figure<'_>) {
    for chair in figure.plan.chairs.clone() {
        let ring = figure.frame.all(&chair.ring);
        figure.labels.body(ring.clone());
        let radius = figure.frame.length(CHAIR);
        figure.put(Path::rounded(&ring, radius, Some(WITHIN), Fill::Tone(Tone::Paper)));
    }
}

/// The outline.
pub(super) fn solid(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = ring(figure, piece);
    body(figure, piece);
    figure.put(Path::ring(ring, Some(OUTLINE), Fill::Tone(ground(piece))));
}

/// A stroke along the front, so that one sees which way a piece faces.
pub(super) fn front(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let axes = Axes::of(&piece.main(), piece.placed.facing);
    let (half, ahead) = (axes.width / 2.0, axes.depth * (1.0 - FRONT));
    line(figure, [axes.at(-half, ahead), axes.at(half, ahead)]);
}

/// The outline on the sheet.
pub(super) fn ring(figure: &Figure<'_>, piece: PieceShown<'_>) -> Vec<At> {
    figure.frame.all(&outline(&piece.parts()))
}

/// The outline of a piece of these parts: of a corner sofa all runs as one.
pub(super) fn outline(parts: &[Vec<Point>]) -> Vec<Point> {
    let Some((main, returns)) = parts.split_first() else { return Vec::new() };
    returns.iter().fold(main.clone(), |ring, part| joined(&ring, part).unwrap_or(ring))
}
