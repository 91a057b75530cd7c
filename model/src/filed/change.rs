//! One change to a file, worked out in its text.

use std::fmt;

use serde_json::{Map, Value};

use super::extent::{dash, end, indent, is_flow, line_end, line_start, start};
use super::read_text::ReadText;
use super::scalar::written;
use crate::yaml::{Entry, Node, NodeValue};

/// One change to a file. Places are keys and numbers of rows, from 0, with points between: `walls.0.holds.1.width`.
#[derive(Debug, Clone, PartialEq)]
pub enum Change {
    /// Puts a value at a place, there already or not.
    Set {
        /// The place.
        at: String,
        /// The value.
        to: Value,
    },
    /// Takes out a key or a row; a list or map that would be left empty goes with it.
    Remove {
        /// The place.
        at: String,
    },
    /// Puts a row into a list, there already or not.
    Add {
        /// The list.
        at: String,
        /// The row.
        row: Value,
        /// The row that it comes before; at the end where none is named.
        before: Option<usize>,
    },
}

/// Why a file was not changed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unchanged {
    /// The file has no such place.
    NoPlace,
    /// The text is written so that this cannot be changed without touching something else.
    NotKept,
}

impl fmt::Display for Unchanged {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::NoPlace => "the file has no such place",
            Self::NotKept => "the file is written so that this cannot be changed without touching something else",
        })
    }
}

impl std::error::Error for Unchanged {}

/// The text with the change.
pub(super) fn rewritten(filed: &ReadText, change: &Change) -> Result<String, Unchanged> {
    match change {
        Change::Set { at, to } => set(filed, at, to),
        Change::Remove { at } => remove(filed, at),
        Change::Add { at, row, before } => add(filed, at, row, *before),
    }
}

/// A stretch of the text with something else in its place.
fn spliced(text: &str, from: usize, to: usize, with: &str) -> Result<String, Unchanged> {
    match (text.get(..from), text.get(to..)) {
        (Some(before), Some(after)) => Ok(format!("{before}{with}{after}")),
        _ => Err(Unchanged::NotKept),
    }
}

fn feed(text: &str) -> &'static str {
    if text.contains("\r\n") { "\r\n" } else { "\n" }
}

fn found<'a>(tree: &'a Node, at: &str) -> Option<&'a Node> {
    at.split('.').filter(|step| !step.is_empty()).try_fold(tree, |here, step| match &here.value {
        NodeValue::Map(entries) => entries.iter().find(|entry| entry.key == step).map(|entry| &entry.node),
        NodeValue::List(rows) => rows.get(step.parse::<usize>().ok()?),
        _ => None,
    })
}

/// The place above, and the last step to one.
fn parted(at: &str) -> (&str, &str) {
    at.rsplit_once('.').unwrap_or(("", at))
}

fn set(filed: &ReadText, at: &str, to: &Value) -> Result<String, Unchanged> {
    let text = &filed.text;
    if let Some(node) = found(&filed.tree, at) {
        let (from, until) = start(node).zip(end(text, node)).ok_or(Unchanged::NotKept)?;
        let gap = if from == until { " " } else { "" };
        return spliced(text, from, until, &format!("{gap}{}", written(to)));
    }
    let (above, last) = parted(at);
    match found(&filed.tree, above) {
        Some(Node { value: NodeValue::Map(entries), .. }) if !entries.is_empty() => {
            add_key(filed, found(&filed.tree, above).ok_or(Unchanged::NoPlace)?, last, to)
        }
        Some(Node { value: NodeValue::List(_), .. }) => Err(Unchanged::NoPlace),
        _ if above.is_empty() => Err(Unchanged::NoPlace),
        // Not there, or empty: it is put there with the key in it.
        _ => set(filed, above, &Value::Object(Map::from_iter([(last.to_owned(), to.clone())]))),
    }
}

/// What stands last in a row, and may be long: what comes to the row comes before it.
const LAST: &str = "holds";

/// Puts a key at the end of a map that holds some already, or before what always stands last in it.
fn add_key(filed: &ReadText, map: &Node, key: &str, to: &Value) -> Result<String, Unchanged> {
    let text = &filed.text;
    let NodeValue::Map(entries) = &map.value else { return Err(Unchanged::NoPlace) };
    let before = match entries.as_slice() {
        [.., before, last] if last.key == LAST => Some(before),
        [.., last] => Some(last),
        [] => None,
    };
    let last = before.and_then(|entry| end(text, &entry.node)).ok_or(Unchanged::NotKept)?;
    if is_flow(text, map) {
        return spliced(text, last, last, &format!(", {key}: {}", written(to)));
    }
    let first = entries.first().and_then(|entry| entry.place).ok_or(Unchanged::NotKept)?;
    let (pad, feed, here) = (" ".repeat(indent(text, first.offset)), feed(text), line_end(text, last));
    let ends = if text[..here].ends_with('\n') { "" } else { feed };
    let gap = if pad.is_empty() && (to.is_object() || to.is_array()) { feed } else { "" };
    let lines = in_lines(key, to, &pad, feed);
    spliced(text, here, here, &format!("{ends}{gap}{lines}"))
}

/// A key with its value: rows and keys of its own a line each, the rest in one.
fn in_lines(key: &str, to: &Value, pad: &str, feed: &str) -> String {
    let each: Vec<String> = match to {
        Value::Object(keys) if !keys.is_empty() && pad.is_empty() => {
            keys.iter().map(|(key, value)| format!("{pad}  {key}: {}{feed}", written(value))).collect()
        }
        Value::Array(rows) if rows.iter().any(Value::is_object) => {
            rows.iter().map(|row| format!("{pad}  - {}{feed}", written(row))).collect()
        }
        _ => return format!("{pad}{key}: {}{feed}", written(to)),
    };
    format!("{pad}{key}:{feed}{}", each.concat())
}

fn remove(filed: &ReadText, at: &str) -> Result<String, Unchanged> {
    let text = &filed.text;
    let (above, last) = parted(at);
    let parent = found(&filed.tree, above).ok_or(Unchanged::NoPlace)?;
    let (place, count) = match &parent.value {
        NodeValue::Map(entries) => (entries.iter().position(|entry| entry.key == last), entries.len()),
        NodeValue::List(rows) => (last.parse().ok().filter(|place| *place < rows.len()), rows.len()),
        _ => (None, 0),
    };
    let place = place.ok_or(Unchanged::NoPlace)?;
    if count == 1 {
        return if above.is_empty() { Err(Unchanged::NotKept) } else { remove(filed, above) };
    }
    let stretch = match &parent.value {
        NodeValue::Map(entries) => of_entry(text, is_flow(text, parent), entries, place),
        NodeValue::List(rows) => of_row(text, is_flow(text, parent), rows, place),
        _ => None,
    };
    let (from, until) = stretch.ok_or(Unchanged::NotKept)?;
    spliced(text, from, until, "")
}

/// What goes with an entry of a map.
fn of_entry(text: &str, flow: bool, entries: &[Entry], place: usize) -> Option<(usize, usize)> {
    let key = |place: usize| entries.get(place)?.place.map(|key| key.offset);
    let ends = |place: usize| end(text, &entries.get(place)?.node);
    let shares_line = text[line_start(text, key(place)?)..key(place)?].trim() != "";
    match place.checked_sub(1) {
        None if flow || shares_line => Some((key(0)?, key(1)?)),
        Some(before) if flow => Some((ends(before)?, ends(place)?)),
        _ => Some((line_start(text, key(place)?), line_end(text, ends(place)?))),
    }
}

/// What goes with a row of a list.
fn of_row(text: &str, flow: bool, rows: &[Node], place: usize) -> Option<(usize, usize)> {
    let starts = |place: usize| start(rows.get(place)?);
    let ends = |place: usize| end(text, rows.get(place)?);
    if !flow {
        let dash = dash(text, starts(place)?)?;
        return Some((line_start(text, dash), line_end(text, ends(place)?)));
    }
    match place.checked_sub(1) {
        None => Some((starts(0)?, starts(1)?)),
        Some(before) => Some((ends(before)?, ends(place)?)),
    }
}

fn add(filed: &ReadText, at: &str, row: &Value, before: Option<usize>) -> Result<String, Unchanged> {
    let text = &filed.text;
    let list = match found(&filed.tree, at) {
        Some(list) if matches!(&list.value, NodeValue::List(rows) if !rows.is_empty()) => list,
        Some(Node { value: NodeValue::Null | NodeValue::List(_), .. }) | None => {
            return set(filed, at, &Value::Array(vec![row.clone()]));
        }
        Some(_) => return Err(Unchanged::NoPlace),
    };
    let NodeValue::List(rows) = &list.value else { return Err(Unchanged::NoPlace) };
    let next = before.and_then(|before| rows.get(before));
    let last = rows.last().and_then(|last| end(text, last)).ok_or(Unchanged::NotKept)?;
    if is_flow(text, list) {
        return match next.and_then(start) {
            Some(next) => spliced(text, next, next, &format!("{}, ", written(row))),
            None => spliced(text, last, last, &format!(", {}", written(row))),
        };
    }
    let feed = feed(text);
    let dash_of = |row: &Node| start(row).and_then(|start| dash(text, start));
    let first = rows.first().and_then(dash_of).ok_or(Unchanged::NotKept)?;
    let here = match next {
        Some(next) => line_start(text, dash_of(next).ok_or(Unchanged::NotKept)?),
        None => line_end(text, last),
    };
    let ends = if here == 0 || text[..here].ends_with('\n') { "" } else { feed };
    let line = format!("{ends}{}- {}{feed}", " ".repeat(indent(text, first)), written(row));
    spliced(text, here, here, &line)
}
