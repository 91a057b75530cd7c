//! The kinds of program that the ratio run compares, by their words.

use elbowroom_solver::search::Sought;

/// Each with its word.
pub(crate) const KINDS: [(&str, Sought); 3] =
    [("largest", Sought::Largest), ("sizes", Sought::Sizes), ("plan", Sought::Plan)];

/// The word of a kind.
pub(crate) fn word(kind: Sought) -> &'static str {
    KINDS.iter().find(|(_, each)| *each == kind).map_or("", |(word, _)| word)
}

/// The kind of a word.
pub(crate) fn of(word: &str) -> Option<Sought> {
    KINDS.iter().find(|(each, _)| *each == word).map(|(_, kind)| *kind)
}
