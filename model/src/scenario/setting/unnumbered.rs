//! Names that the file does not give hang on how many of a kind there are: when one is left out, the others keep theirs.

use super::super::resolve::names::Names;
use crate::yaml::{Node, NodeValue, Trail};

/// Writes into every row without a name, of the kind of the row at `leaving`, the name that it has by default now.
pub(super) fn pin(tree: &mut Node, names: &Names, leaving: &Trail) {
    let kind = text(tree, leaving, "kind");
    let is_like = |at: &Trail| at != leaving && text(tree, at, "kind") == kind && text(tree, at, "name").is_none();
    let like: Vec<(Trail, &[String])> = names.rows().into_iter().filter(|(at, _)| is_like(at)).collect();
    // A given name of several alike is numbered from 1, whatever they were numbered from before.
    if like.iter().any(|(_, all)| all.len() > 1) {
        return;
    }
    for (at, all) in like {
        if let Some(name) = all.first() {
            tree.set(&at.key("name"), Node::text(name));
        }
    }
}

/// The text under a key of a row.
fn text<'a>(tree: &'a Node, row: &Trail, key: &str) -> Option<&'a str> {
    let NodeValue::Map(entries) = &tree.at(row).value else { return None };
    let entry = entries.iter().find(|entry| entry.key == key)?;
    if let NodeValue::Text(text) = &entry.node.value { Some(text) } else { None }
}
