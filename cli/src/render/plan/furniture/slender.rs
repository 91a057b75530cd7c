//! Lamps and plants, as round as they are.

use super::axes::Axes;
use super::pens::{OUTLINE, WITHIN};
use crate::drawing::{Area, At, Fill, Path, Tone};
use crate::render::plan::figure::Figure;
use crate::render::plan::shown::PieceShown;

/// Radius of the pot of a plant, as a share of its leaves'.
const POT: f64 = 0.45;

/// A ring with a cross.
pub(super) fn lamp(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let (middle, radius) = round(figure, piece);
    figure.put(Path::circle(middle, radius, Some(OUTLINE), Fill::Tone(Tone::Piece)));
    for arm in [At::new(radius, 0.0), At::new(0.0, radius)] {
        figure.put(Path::line([middle - arm, middle + arm], WITHIN));
    }
    figure.labels.keep_out(Area::round(middle, 2.0 * radius, 2.0 * radius));
}

/// A ring within a ring.
pub(super) fn plant(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let (middle, radius) = round(figure, piece);
    figure.put(Path::circle(middle, radius, Some(OUTLINE), Fill::Tone(Tone::Piece)));
    figure.put(Path::circle(middle, radius * POT, Some(WITHIN), Fill::None));
    figure.labels.keep_out(Area::round(middle, 2.0 * radius, 2.0 * radius));
}

/// The largest circle in a piece.
fn round(figure: &Figure<'_>, piece: PieceShown<'_>) -> (At, f64) {
    let axes = Axes::of(&piece.main(), piece.placed.facing);
    (figure.frame.at(axes.middle()), figure.frame.length(axes.width.min(axes.depth) / 2.0))
}
