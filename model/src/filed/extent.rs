//! From where to where a value stands in the text, and the lines that it stands in.

use crate::yaml::{Node, NodeValue};

/// Whether a list or map is written between brackets.
pub(super) fn is_flow(text: &str, node: &Node) -> bool {
    node.place.is_some_and(|place| matches!(text.as_bytes().get(place.offset), Some(b'{' | b'[')))
}

/// The byte that a value starts at.
pub(super) fn start(node: &Node) -> Option<usize> {
    node.place.map(|place| place.offset)
}

/// The byte after the last one of a value; `None` where that cannot be told.
pub(super) fn end(text: &str, node: &Node) -> Option<usize> {
    let place = node.place?;
    let last = match &node.value {
        NodeValue::Map(entries) => entries.last().map(|entry| &entry.node),
        NodeValue::List(rows) => rows.last(),
        _ => return Some(place.offset + place.length),
    };
    let within = match last {
        Some(last) => end(text, last)?,
        None => place.offset + 1,
    };
    if is_flow(text, node) { closed(text, within) } else { Some(within) }
}

/// The byte after the bracket that closes what ends at `from`, past blanks, commas and comments.
fn closed(text: &str, from: usize) -> Option<usize> {
    let mut at = from;
    loop {
        match text.as_bytes().get(at)? {
            b'}' | b']' => return Some(at + 1),
            b'#' => at += text[at..].find('\n')?,
            b' ' | b'\t' | b'\r' | b'\n' | b',' => at += 1,
            _ => return None,
        }
    }
}

/// The byte that a line starts at.
pub(super) fn line_start(text: &str, at: usize) -> usize {
    text[..at].rfind('\n').map_or(0, |feed| feed + 1)
}

/// The byte after the line feed of a line, or the end of the text.
pub(super) fn line_end(text: &str, at: usize) -> usize {
    // A block of text ends with a line feed of its own.
    if at > 0 && text[..at].ends_with('\n') {
        return at;
    }
    text[at..].find('\n').map_or(text.len(), |feed| at + feed + 1)
}

/// The columns before a byte of its line.
pub(super) fn indent(text: &str, at: usize) -> usize {
    text[line_start(text, at)..at].chars().count()
}

/// The dash of the row of a list that starts at a byte.
pub(super) fn dash(text: &str, row: usize) -> Option<usize> {
    let before = text[..row].trim_end_matches([' ', '\t', '\r', '\n']);
    before.ends_with('-').then(|| before.len() - 1)
}
