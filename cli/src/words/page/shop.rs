//! A shop's list dropped on the page.

/// Over it.
pub(crate) const HEADING: &str = "From a shop's list";
/// What it is for.
pub(crate) const ABOUT: &str = "A list of real pieces (CSV or .xlsx: kind, name and sizes, and price where known) is tried against \
     this room: which fit, by how much the others miss. It is read here and kept nowhere.";
/// A field.
pub(crate) const CHOOSE: &str = "Choose a list, or drop one here";
/// A field.
pub(crate) const SETS: &str = "The best sets too, one for each piece of the room";
/// While it is tried.
pub(crate) const BUSY: &str = "The pieces of the list are tried in the room.";
/// Once it is told.
pub(crate) const DONE: &str = "What fits is told below.";
/// Where it cannot be read.
pub(crate) const AMISS: &str = "The list cannot be read as it is; what is wrong stands below, by its line.";
/// What is wrong with a list.
pub(crate) const FAULTS: &str = "What is wrong with the list";
/// Of a list that is too large.
pub(crate) const TOO_LARGE: &str = "This list is too large to be read.";
/// Once the room is another.
pub(crate) const OLD: &str = "The room has changed since this was told.";
/// A button.
pub(crate) const AGAIN: &str = "Try the list again";
/// A list that has no name.
pub(crate) const LIST: &str = "the list";

/// Over what is told of a list.
pub(crate) fn of(called: &str) -> String {
    format!("What fits of {called}")
}
