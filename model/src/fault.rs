//! What is wrong with a scenario, as a value.

use serde::Serialize;

/// One fault of a scenario: where, what is wrong, by how much, and the remedy. A reader collects all of them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, thiserror::Error)]
#[error("{message}")]
pub struct Fault {
    /// Stable name of the kind of fault: `unknown_key`, `walls_cross`, `item_past_wall_end`, ...
    pub code: &'static str,
    /// The item in the room's own words: `hall door`, `canal wall`; `None` where the fault is the file's as a whole.
    pub item: Option<String>,
    /// What is wrong and by how much, one sentence.
    pub message: String,
    /// What to do about it, one sentence.
    pub remedy: String,
    /// Where in the text, where it can be had.
    pub place: Option<Place>,
}

/// A place in the text of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Place {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// Byte offset into the text.
    pub offset: usize,
    /// Length in bytes of what is at fault.
    pub length: usize,
}
