//! Screens, as a thick bar.

use elbowroom_model::screen_width;

use super::axes::Axes;
use super::pens::{OUTLINE, body};
use super::plain;
use crate::drawing::{Fill, Path, Tone};
use crate::render::plan::figure::Figure;
use crate::render::plan::shown::PieceShown;

/// How deep a screen on a unit is drawn, mm.
const DEEP: f64 = 60.0;

/// A screen that hangs takes its own outline.
pub(super) fn hung(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = plain::ring(figure, piece);
    body(figure, piece);
    figure.put(Path::ring(ring, Some(OUTLINE), Fill::Tone(Tone::Ink)));
}

/// The screen that stands on a unit, at the middle of its depth.
pub(super) fn on_top(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let Some(width) = piece.piece.screen.map(screen_width) else { return };
    let axes = Axes::of(&piece.main(), piece.placed.facing);
    let half = width.min(axes.width) / 2.0;
    let ahead = (axes.depth * 0.3).max(DEEP / 2.0);
    let bar = axes.rectangle([-half, half], [ahead - DEEP / 2.0, ahead + DEEP / 2.0]);
    let bar = bar.map(|at| figure.frame.at(at));
    figure.labels.keep_out_ring(bar);
    figure.put(Path::ring(bar, None, Fill::Tone(Tone::Ink)));
}
