//! What the screen of the measurements says.

use elbowroom_model::Unit;

/// How it goes, with figures as this unit has them.
pub(crate) fn about(unit: Unit) -> String {
    let such = match unit {
        Unit::Millimetre => "3520, 3.52 m, 11 ft 6",
        Unit::Centimetre => "352, 3.52 m, 11 ft 6",
        Unit::Metre => "3.52, 352 cm, 11 ft 6",
        Unit::Inch => "138 1/2, 11 ft 6, 3.52 m",
        Unit::Foot => "11 6, 11 ft 6, 138 in, 3.52 m",
    };
    format!(
        "Clockwise: face a wall from inside, measure it, then turn to the one at its right-hand end. Any unit will do: {such}."
    )
}
/// Over the room's own fields.
pub(crate) const ROOM: &str = "The room";
/// A field.
pub(crate) const NAME: &str = "Name";
/// A field.
pub(crate) const UNITS: &str = "Bare figures are";
/// A field.
pub(crate) const CEILING: &str = "Ceiling";
/// A field.
pub(crate) const OFF_BY: &str = "A length may be off by";
/// Over the walls.
pub(crate) const WALLS: &str = "Walls, clockwise";
/// A field.
pub(crate) const LENGTH: &str = "Length";
/// A field.
pub(crate) const CORNER: &str = "The corner at its right-hand end";
/// A choice.
pub(crate) const SQUARE: &str = "square";
/// A choice.
pub(crate) const OUTWARD: &str = "square, outward";
/// A choice.
pub(crate) const OTHER: &str = "other, degrees inside";
/// A field.
pub(crate) const BEARING: &str = "Compass bearing as you face it";
/// Over what a wall holds.
pub(crate) const HOLDS: &str = "On this wall";
/// Where it holds nothing.
pub(crate) const HOLDS_NOTHING: &str = "Nothing yet. Tap what is there:";
/// Otherwise.
pub(crate) const HOLDS_MORE: &str = "Tap what else is there:";
/// A field.
pub(crate) const AT: &str = "From the wall's left end";
/// A field.
pub(crate) const WIDE: &str = "Width";
/// A field.
pub(crate) const DEEP: &str = "Depth";
/// A field.
pub(crate) const SILL: &str = "Sill height";
/// A field.
pub(crate) const HEAD: &str = "Head height";
/// A field.
pub(crate) const VIEW: &str = "What one sees out of it";
/// Its choices.
pub(crate) const VIEWS: [(&str, &str); 3] = [("plain", "plain"), ("liked", "liked"), ("avoided", "avoided")];
/// A field.
pub(crate) const LEADS_TO: &str = "Leads to";
/// A field.
pub(crate) const STANCE: &str = "Seats keep";
/// Its choices.
pub(crate) const STANCES: [(&str, &str); 3] =
    [("none", "no matter"), ("open", "sight of it"), ("away", "their backs to it")];
/// A field.
pub(crate) const HIGH: &str = "Height";
/// A field.
pub(crate) const KEEP_CLEAR: &str = "Keep clear before it";
/// A field.
pub(crate) const CARRIES: &str = "Carries";
/// Its choices.
pub(crate) const CARRIED: [(&str, &str); 3] = [("power", "power"), ("aerial", "aerial"), ("data", "data")];
/// A field.
pub(crate) const DOOR: &str = "How the door hangs, as you face it from inside";
/// The four doors and the one that slides: hinge, swing, what is told.
pub(crate) const DOORS: [(&str, &str, &str); 4] = [
    ("left", "in", "hinged left, opens in"),
    ("right", "in", "hinged right, opens in"),
    ("left", "out", "hinged left, opens out"),
    ("right", "out", "hinged right, opens out"),
];
/// A door without a swing.
pub(crate) const SLIDES: &str = "slides";
/// A button.
pub(crate) const BEFORE: &str = "Wall before";
/// A button.
pub(crate) const NEXT: &str = "Next wall";
/// A button.
pub(crate) const ADD_WALL: &str = "Add a wall after this one";
/// A button.
pub(crate) const REMOVE_WALL: &str = "Remove this wall";
/// Over the diagonals.
pub(crate) const DIAGONALS: &str = "Diagonals";
/// What they are for.
pub(crate) const DIAGONALS_ABOUT: &str = "From the left end of one wall to the left end of another: they tell whether corners are square, and which length is off.";
/// A button.
pub(crate) const ADD_DIAGONAL: &str = "Add a diagonal";
/// A button: the figures of something new are in.
pub(crate) const PUT_THERE: &str = "Put it there";
/// A button: nothing new after all.
pub(crate) const LEAVE_OUT: &str = "Leave it out";
/// Before its figures are in.
pub(crate) const NOT_YET_THERE: &str = "Measure it first: it is on the wall once its figures are in.";
/// A field.
pub(crate) const FIRE_OPENING: &str = "Opening of the fire, width";
/// A field.
pub(crate) const FIRE_OPENING_AT: &str = "Its opening, from the breast's left end";
/// A field.
pub(crate) const CLIENT: &str = "Client";
/// A field.
pub(crate) const NOTE: &str = "Note";
/// What becomes of it.
pub(crate) const NOTE_ABOUT: &str = "Stands on sheets and at the head of the page.";
/// Over the diagonal that is asked for.
pub(crate) const ASK_DIAGONAL: &str = "Measure a diagonal";
/// Why it is asked for.
pub(crate) const ASK_DIAGONAL_ABOUT: &str =
    "One diagonal tells which of the lengths is off, and whether the corners are square.";
/// A field.
pub(crate) const FROM: &str = "From the left end of";
/// A field.
pub(crate) const TO: &str = "To the left end of";
/// Where the walls are given by places.
pub(crate) const BY_PLACES: &str = "The walls of this file are given by the coordinates of their ends. Change those in an editor; what they hold can be changed here.";
/// The drawing, for who cannot see it.
pub(crate) const DRAWN: &str = "The walls as measured";
/// What closes.
pub(crate) const CLOSES: &str = "The walls close.";

/// A wall that has no name of its own.
pub(crate) fn wall(place: usize) -> String {
    format!("wall {}", place + 1)
}

/// A button that adds something to a wall.
pub(crate) fn add(kind: &str) -> String {
    format!("+ {kind}")
}

/// Which wall of how many.
pub(crate) fn wall_of(place: usize, all: usize) -> String {
    format!("Wall {} of {all}", place + 1)
}

/// A small gap that is spread.
pub(crate) fn closes_within(gap: &str) -> String {
    format!("The walls end {gap} from where they began: little enough to spread over them.")
}

/// A gap that is too wide, beside the drawing.
pub(crate) fn ends_off(gap: &str) -> String {
    format!("The walls end {gap} from where they began.")
}

/// Something that is new on a wall.
pub(crate) fn new(kind: &str) -> String {
    format!("A new {kind}")
}

/// A gap that is too wide.
pub(crate) fn gap(gap: &str) -> String {
    format!("gap {gap}")
}

/// Removing a thing on a wall, told apart from the others.
pub(crate) fn remove(name: &str) -> String {
    format!("Remove {name}")
}
