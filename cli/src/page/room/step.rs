//! A step: changes to the file together, or one taken back or again; and why one is not taken.

use elbowroom_model::Fault;
use elbowroom_model::filed::{Change, Filed, Unchanged};

use crate::process::failure::Failure;

/// A step that was taken, or taken back.
#[derive(Debug, Clone)]
pub(in crate::page) enum Step {
    /// Changes to the file, together.
    Changes(Vec<Change>),
    /// The last step taken back.
    Undo,
    /// What was taken back, taken again.
    Redo,
}

/// Why a step was not taken. Nothing was written.
#[derive(Debug)]
pub(in crate::page) enum NotTaken {
    /// The file cannot be read.
    Unreadable,
    /// Another window has taken a step since.
    Behind,
    /// Something else has written to the file since.
    OnDisk,
    /// There is nothing to take back, or to take again.
    Nothing,
    /// The text cannot be changed so.
    Unchanged(Unchanged),
    /// The text is no YAML that could be changed.
    NoYaml(Box<Fault>),
    /// It could not be saved.
    Failed(Failure),
}

/// A text with changes, one after another.
pub(super) fn changed(text: &str, changes: &[Change]) -> Result<String, NotTaken> {
    changes.iter().try_fold(text.to_owned(), |text, change| {
        let filed = Filed::read(&text).map_err(NotTaken::NoYaml)?;
        filed.changed(change).map_err(NotTaken::Unchanged)
    })
}
