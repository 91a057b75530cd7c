//! What the screen of the furniture says.

use elbowroom_model::{Rounding, SizeRange, Unit};

/// Over the pieces.
pub(crate) const PIECES: &str = "What should stand in the room";
/// What one can write, with figures as this unit has them.
pub(crate) fn about(unit: Unit) -> String {
    let such = match unit {
        Unit::Millimetre => "2000..2600",
        Unit::Centimetre => "200..260",
        Unit::Metre => "2..2.6",
        Unit::Inch => "80..102",
        Unit::Foot => "80..102 in",
    };
    format!("A size you own as one figure; a range as {such}; nothing for what is usual.")
}
/// Over the form for another.
pub(crate) const ADD: &str = "Add a piece";
/// A button.
pub(crate) const ADD_THIS: &str = "Add";
/// A field.
pub(crate) const NAME: &str = "Name";
/// A field.
pub(crate) const WIDTH: &str = "Width";
/// A field.
pub(crate) const DEPTH: &str = "Depth";
/// A field.
pub(crate) const RETURN: &str = "Return";
/// A field.
pub(crate) const HAND: &str = "Hand as you sit";
/// A field.
pub(crate) const SCREEN: &str = "Screen";
/// A field.
pub(crate) const PLACES: &str = "Places";
/// A field.
pub(crate) const COUNT: &str = "How many";
/// A field.
pub(crate) const NEEDED: &str = "Is it needed";
/// A choice.
pub(crate) const IS_NEEDED: &str = "needed";
/// A choice.
pub(crate) const IF_IT_FITS: &str = "only if it fits";
/// Folded fields of a piece.
pub(crate) const MORE: &str = "More about it";
/// A field.
pub(crate) const SECOND_RETURN: &str = "Second return";
/// A field.
pub(crate) const RETURN_DEPTH: &str = "Depth of the return";
/// A field.
pub(crate) const CHAISE: &str = "Its return has no back";
/// A field.
pub(crate) const PAIR: &str = "Two of them stand";
/// Its choices.
pub(crate) const PAIRS: [(&str, &str); 3] =
    [("either", "either way"), ("facing", "facing each other"), ("corner", "round a corner")];
/// A field.
pub(crate) const AIM: &str = "Draw it";
/// Its choices.
pub(crate) const AIMS: [(&str, &str); 3] =
    [("", "as the others"), ("usual", "of usual size"), ("largest", "as large as it can be")];
/// A field.
pub(crate) const AIM_WIDTH: &str = "Width to aim at";
/// A field.
pub(crate) const AIM_RETURN: &str = "Return to aim at";
/// A field.
pub(crate) const AIM_DEPTH: &str = "Depth to aim at";
/// A field.
pub(crate) const SERVES: &str = "Stands by which seat";
/// A choice of it.
pub(crate) const ANY_SEAT: &str = "any";
/// A field of what has its place in the file.
pub(crate) const HELD: &str = "In its place";
/// Its choices.
pub(crate) const HOLDS: [(&str, &str); 2] = [("true", "held there"), ("false", "free to stand elsewhere")];
/// Choices of a hand.
pub(crate) const HANDS: [(&str, &str); 3] = [("either", "either"), ("left", "left"), ("right", "right")];
/// A button.
pub(crate) const REMOVE: &str = "Remove";
/// Over the clearances.
pub(crate) const CLEARANCES: &str = "How much room to keep free";
/// A field.
pub(crate) const PROFILE: &str = "Start from";
/// The profiles.
pub(crate) const PROFILES: [(&str, &str); 3] =
    [("snug", "snug: the least that works"), ("easy", "easy: as usual"), ("wheelchair", "wheelchair")];
/// Folded figures.
pub(crate) const EACH: &str = "Each clearance by itself";
/// Over who lives there.
pub(crate) const HOUSEHOLD: &str = "Who lives there";
/// A field.
pub(crate) const PEOPLE: &str = "People";
/// A field.
pub(crate) const CHILDREN: &str = "Children live here";
/// A choice.
pub(crate) const YES: &str = "yes";
/// A choice.
pub(crate) const NO: &str = "no";

/// What is usual and what is there, beside a field.
pub(crate) fn usual(unit: Unit, range: SizeRange) -> String {
    let [least, usual, most] = [range.least, range.usual, range.most].map(|it| unit.words(it, Rounding::Nearest));
    if range.least == range.most { format!("usual {usual}") } else { format!("usual {usual}; {least} to {most}") }
}

/// Removing a piece, told apart from the others.
pub(crate) fn remove(name: &str) -> String {
    format!("{REMOVE} {name}")
}

/// A clearance by its words.
pub(crate) fn clearance(key: &str) -> String {
    elbowroom_model::article::capital(&key.replace('_', " "))
}
