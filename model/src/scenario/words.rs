//! Other words for kinds, and for yes and no, put right in the tree before it is held to the schema.

use crate::kind::PieceKind;
use crate::quote::quoted;
use crate::tables::{Meaning, meaning};
use crate::yaml::{Node, NodeValue};

/// Kinds of what a wall holds, as files write them.
const ITEM_KINDS: [&str; 6] = ["window", "door", "opening", "radiator", "fireplace", "socket"];

/// Keys of what is so or not.
const ANSWERS: [&str; 7] = ["chaise", "passing", "needed", "hold", "opens", "must_reach", "children"];

/// The key whose answers are words.
const TURNED: &str = "turned";

/// Writes the kind that is meant where the tree has another word for it; what must be told of that, each word once.
pub(super) fn put_right(tree: &mut Node) -> Vec<String> {
    let mut told = Vec::new();
    let pieces = under(tree, "pieces");
    for piece in pieces {
        let kinds = PieceKind::ALL.iter().map(|kind| kind.key());
        put_one_right(piece, kinds.clone(), &mut told);
        put_answers_right(piece);
        for stand_in in under(piece, "instead") {
            put_word_right(&mut stand_in.value, kinds.clone(), &mut told);
            put_one_right(stand_in, kinds.clone(), &mut told);
        }
    }
    if let Some(household) = value_of(tree, "household") {
        put_answers_right(household);
    }
    for wall in under(tree, "walls") {
        let kinds = PieceKind::ALL.iter().map(|kind| kind.key());
        for kept_off in under(wall, "keep_free") {
            put_word_right(&mut kept_off.value, kinds.clone(), &mut told);
        }
        for item in under(wall, "holds") {
            put_one_right(item, ITEM_KINDS.into_iter(), &mut told);
            put_answers_right(item);
        }
    }
    told
}

/// The entries of the list that `node` has under `key`.
fn under<'a>(node: &'a mut Node, key: &str) -> Vec<&'a mut Node> {
    match value_of(node, key).map(|node| &mut node.value) {
        Some(NodeValue::List(items)) => items.iter_mut().collect(),
        _ => Vec::new(),
    }
}

fn value_of<'a>(node: &'a mut Node, key: &str) -> Option<&'a mut Node> {
    let NodeValue::Map(entries) = &mut node.value else { return None };
    entries.iter_mut().find(|entry| entry.key == key).map(|entry| &mut entry.node)
}

/// Reads `yes` and `no` as the answers that they are wherever one is asked for: tools that write YAML take them for `true` and
/// `false`, and people write either.
fn put_answers_right(row: &mut Node) {
    let NodeValue::Map(entries) = &mut row.value else { return };
    for entry in entries {
        let value = &mut entry.node.value;
        let said = match value {
            NodeValue::Bool(said) => Some(*said),
            NodeValue::Text(word) => answer(word),
            _ => None,
        };
        match (said, entry.key.as_str()) {
            (Some(said), TURNED) => *value = NodeValue::Text(if said { "yes" } else { "no" }.to_owned()),
            (Some(said), key) if ANSWERS.contains(&key) => *value = NodeValue::Bool(said),
            _ => {}
        }
    }
}

fn answer(word: &str) -> Option<bool> {
    match word.to_ascii_lowercase().as_str() {
        "yes" => Some(true),
        "no" => Some(false),
        _ => None,
    }
}

fn put_one_right<'a>(row: &mut Node, kinds: impl Iterator<Item = &'a str> + Clone, told: &mut Vec<String>) {
    if let Some(kind) = value_of(row, "kind") {
        put_word_right(&mut kind.value, kinds, told);
    }
}

fn put_word_right<'a>(value: &mut NodeValue, kinds: impl Iterator<Item = &'a str> + Clone, told: &mut Vec<String>) {
    let NodeValue::Text(word) = value else { return };
    if let Some(Meaning::Same { means }) = meaning(word, kinds) {
        let notice = format!("`{}` is read as the kind {means}.", quoted(word));
        if !told.contains(&notice) {
            told.push(notice);
        }
        *word = means;
    }
}
