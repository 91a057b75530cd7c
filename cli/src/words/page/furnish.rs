//! What the screen of the furniture says.

use elbowroom_model::{Rounding, SizeRange, Unit};

/// Over the pieces.
pub(crate) const PIECES: &str = "What should stand in the room";
/// What one can write.
pub(crate) const ABOUT: &str = "A size you own as one figure; a range as 200..260; nothing for what is usual.";
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
