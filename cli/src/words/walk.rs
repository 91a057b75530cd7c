//! Prose of the last part of the tape sheet: what to walk through once all is marked.

use elbowroom_model::article::the;
use elbowroom_model::{Front, PieceKind};

/// Over what to try.
pub(crate) const WALK: &str = "Walk it";
/// The last thing to try.
pub(crate) const LIVE: &str =
    "Leave it for a day and live round it. What you step over, move on the plan before you buy.";
/// A door to open.
pub(crate) fn open(door: &str) -> String {
    let door = the(door);
    format!("Open {door} all the way: its leaf touches no strip and no box.")
}

/// A way to walk; the doorway at its end that is no wider, with its width.
pub(crate) fn way(
    [from, to]: [&str; 2],
    [needs, width]: [&str; 2],
    between: Option<[&str; 2]>,
    doorway: Option<(&str, String)>,
) -> String {
    let pinch =
        between.map_or_else(String::new, |[one, other]| format!(", narrowest between {} and {}", the(one), the(other)));
    let aside = doorway.map_or_else(String::new, |(door, own)| format!("; {} itself is {own}", the(door)));
    let (from, to) = (the(from), the(to));
    format!(
        "Walk from {from} to {to} with a stick of {needs} level before you: it passes everywhere in the room (the way is {width} wide{pinch}{aside})."
    )
}

/// A circle to turn in.
pub(crate) fn turn(diameter: &str) -> String {
    format!("Turn the wheelchair all the way round on the circle of {diameter}: no part of it comes past the strips.")
}

/// A front to open.
pub(crate) fn front(piece: &str, kind: PieceKind, clear: &str) -> String {
    let piece = the(piece);
    match kind.traits().front {
        Front::SatAt => format!("Draw a chair out from {piece}: {clear} are clear before it."),
        Front::DinedAt => {
            format!("Draw chairs out along both sides of {piece} and sit down: {clear} are clear there.")
        }
        Front::Opened | Front::Watched | Front::None => {
            format!("Stand before {piece} and draw out a drawer or open a door: {clear} are clear before it.")
        }
    }
}

/// Feet to the table.
pub(crate) fn feet(seat: &str, table: &str, clear: &str) -> String {
    let (seat, table) = (the(seat), the(table));
    format!(
        "Sit on a chair at the front of {seat}: feet and hand reach {table}, {clear} away, and you still step in between."
    )
}

/// A look at the screen.
pub(crate) fn screen(seat: &str, unit: &str, clear: &str) -> String {
    let (seat, unit) = (the(seat), the(unit));
    format!("From {seat} look at the card on {unit}, {clear} from front to front: near enough, and not too near?")
}
