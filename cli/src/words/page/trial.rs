//! What the screen for trying a piece elsewhere says.

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::routes::Route;

use crate::words::lengths::{shop_unit, taped};

/// What one does.
pub(crate) fn about(unit: Unit) -> String {
    let [near, far] = [10.0, 100.0].map(|step| taped(shop_unit(unit), step));
    format!(
        "Choose a piece, then move it: drag it, type its figures, or use the keys. Arrows go {near}, with Shift {far}; T turns \
         it a quarter, with Shift back; W and N make it wider and narrower, D and S deeper and shallower. What that breaks is told \
         at once. Nothing is written to the file until you keep it."
    )
}
/// Over the pieces.
pub(crate) const PIECES: &str = "Where each piece stands";
/// A field.
pub(crate) const ACROSS: &str = "From the first wall's left end, along it";
/// A field.
pub(crate) const DOWN: &str = "And straight out from it";
/// A field.
pub(crate) const FACES: &str = "Faces, degrees from along the first wall";
/// A field.
pub(crate) const SECOND_RETURN: &str = "Second return";
/// A field.
pub(crate) const RETURN_DEPTH: &str = "Depth of the return";
/// A button.
pub(crate) const TURN_LEFT: &str = "Turn it left";
/// A button.
pub(crate) const TURN_RIGHT: &str = "Turn it right";
/// What is wrong with an angle.
pub(crate) const NO_ANGLE: &str = "give degrees from -360 to 360, such as 90.";
/// A button.
pub(crate) const UNDO: &str = "Take a move back";
/// A button.
pub(crate) const REDO: &str = "Move it again";
/// A button.
pub(crate) const BACK: &str = "Put all back";
/// A button.
pub(crate) const STANDS: &str = "As it stands today";
/// A button.
pub(crate) const SETTLE: &str = "Settle the rest";
/// A button.
pub(crate) const KEEP: &str = "Keep it so";
/// What the buttons do.
pub(crate) const BUTTONS_ABOUT: &str = "Settle the rest solves again with the pieces you moved held where they are. Keep it so writes into the file where each piece stands and holds it there; Undo above takes that back.";
/// After it was kept.
pub(crate) const KEPT: &str = "Kept: the file holds each piece there now. Undo, above, takes that back.";
/// Where the file cannot hold it.
pub(crate) const NOT_KEPT: &str =
    "The pieces of the file are no longer those that are shown here, so nothing was written.";
/// After the room as it is was put in.
pub(crate) const AS_IT_STANDS: &str = "This is the room as the file says that it stands today.";
/// Where no seat has a place.
pub(crate) const NO_SEAT: &str = "The file does not say where any seat stands today.";
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

/// Pieces of the room as it is whose place is not in the file.
pub(crate) fn has_no_place(names: &[&str]) -> String {
    format!("The file does not say where these stand today: {}.", names.join(", "))
}

/// What is typed is no length.
pub(crate) fn no_length(text: &str, why: &str) -> String {
    format!("{text} {why}. Write it as 352, 3.52 m or 11 ft 6.")
}

/// What is typed is a length that nothing here can have.
pub(crate) fn no_such_length(text: &str) -> String {
    format!("{text} is no figure that a piece in this room can have.")
}

/// Score, beside that of the option.
pub(crate) fn score(now: f64, option: f64) -> String {
    format!("Score {now:.0} of 100; the option had {option:.0}.")
}

/// A way with its width.
pub(crate) fn way(brief: &Brief, route: &Route) -> String {
    let [width, needs] = [route.width, route.needs].map(|length| taped(brief.units, length));
    format!("{} to {}: {width} wide, {needs} needed", route.from.name(brief), route.to.name(brief))
}
