//! A step: changes to the file together, or one taken back or again; and why one is not taken.

use elbowroom_model::Fault;
use elbowroom_model::filed::{Change, Filed, Unchanged};
use serde_json::Value;

use super::seen::Seen;

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

/// A step that was taken.
pub(in crate::page) struct Taken {
    /// The room after it.
    pub(in crate::page) seen: Seen,
    /// Something else had changed other places of the file since.
    pub(in crate::page) beside: bool,
}

/// Who has changed a file meanwhile.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::page) enum By {
    /// Another window of this page.
    Window,
    /// Something else on this machine.
    Other,
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
    /// The same place was changed since.
    Crossed {
        /// Who changed it.
        by: By,
        /// What stands now at each place that was to be changed.
        there: Vec<Value>,
    },
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

/// What stands now at the places of changes that were made from another text, where that is no longer what they were made from.
pub(super) fn crossed(from: &str, now: &str, changes: &[Change]) -> Vec<Value> {
    let (Ok(from), Ok(now)) = (Filed::read(from), Filed::read(now)) else { return vec![Value::Null] };
    let (from, now) = (from.values(), now.values());
    let places = changes.iter().map(|change| match change {
        Change::Set { at, .. } | Change::Remove { at } | Change::Add { at, .. } => at.as_str(),
    });
    places.filter(|at| is_crossed(&from, &now, at)).map(|at| found(&now, at).clone()).collect()
}

fn found<'v>(values: &'v Value, at: &str) -> &'v Value {
    at.split('.').fold(values, |here, step| match step.parse::<usize>() {
        Ok(row) => &here[row],
        Err(_) => &here[step],
    })
}

/// Whether a place is another one by now: it holds something else, or a list on the way to it has other rows.
fn is_crossed(from: &Value, now: &Value, at: &str) -> bool {
    let ends = at.match_indices('.').map(|(end, _)| &at[..end]);
    // A name may be what is changed: the rows are then told apart by their number alone.
    let is_name = at.ends_with(".name") || at.ends_with(".kind");
    let same_rows = |list: &str| match (found(from, list).as_array(), found(now, list).as_array()) {
        (Some(before), Some(after)) => {
            let name = |row: &Value| (row["kind"].clone(), row["name"].clone());
            before.len() == after.len()
                && !has_moved(before, after)
                && (is_name || before.iter().zip(after).all(|(one, other)| name(one) == name(other)))
        }
        (None, None) => true,
        _ => false,
    };
    found(from, at) != found(now, at) || !ends.into_iter().all(same_rows)
}

/// Whether a row of a list stands at another place by now: its number then means another one.
fn has_moved(before: &[Value], after: &[Value]) -> bool {
    before.iter().enumerate().any(|(row, one)| after.get(row) != Some(one) && after.contains(one))
}
