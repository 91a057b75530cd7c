//! What the screen for trying a piece elsewhere says.

use elbowroom_model::Brief;
use elbowroom_solver::routes::Route;

use crate::words::lengths::taped;

/// What one does.
pub(crate) const ABOUT: &str = "Choose a piece, then move it: arrow keys go 1 cm, with Shift 10 cm; or type where it stands; or drag it. What that breaks is told at once. Nothing is written to the file.";
/// Over the pieces.
pub(crate) const PIECES: &str = "Where each piece stands";
/// A field.
pub(crate) const ACROSS: &str = "From the first wall's left end, along it";
/// A field.
pub(crate) const DOWN: &str = "And straight out from it";
/// A field.
pub(crate) const FACES: &str = "Faces, degrees from along the first wall";
/// A button.
pub(crate) const BACK: &str = "Put all back";
/// A button.
pub(crate) const SETTLE: &str = "Settle the rest";
/// What it does.
pub(crate) const SETTLE_ABOUT: &str = "Solves again with the pieces you moved held where they are.";
/// Where no rule is broken.
pub(crate) const SOUND: &str = "Every rule holds.";
/// Over what is broken.
pub(crate) const BROKEN: &str = "What this breaks";
/// Where there is nothing to try.
pub(crate) const NONE: &str = "A piece can be tried elsewhere once something fits.";
/// Where nothing fits about what is held.
pub(crate) const NOT_SETTLED: &str = "Nothing fits with these pieces held there.";
/// After settling.
pub(crate) const SETTLED: &str = "Settled: the others stand about what you moved.";
/// The moved piece is held.
pub(crate) const HOLD: &str = "hold it there";

/// Score, beside that of the option.
pub(crate) fn score(now: f64, option: f64) -> String {
    format!("Score {now:.0} of 100; the option had {option:.0}.")
}

/// A way with its width.
pub(crate) fn way(brief: &Brief, route: &Route) -> String {
    let [width, needs] = [route.width, route.needs].map(|length| taped(brief.units, length));
    format!("{} to {}: {width} wide, {needs} needed", route.from.name(brief), route.to.name(brief))
}
