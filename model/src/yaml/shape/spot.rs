//! Where in the file something is, in the room's own words.

use crate::quote::quoted;
use crate::yaml::tree::{Entry, NodeValue};

/// A place in the file.
#[derive(Clone)]
pub(super) struct Spot {
    /// The item; empty at the top.
    pub item: String,
    /// The key whose value this is.
    pub key: String,
}

impl Spot {
    /// What it is called in a sentence.
    pub(super) fn of(&self) -> String {
        if self.item.is_empty() { "the file".to_owned() } else { self.item.clone() }
    }
}

/// The spot inside a map: named as the map names itself.
pub(super) fn spot_of(entries: &[Entry], spot: &Spot, is_kind: &dyn Fn(&str) -> bool) -> Spot {
    let text = |key: &str| {
        let entry = entries.iter().find(|entry| entry.key == key)?;
        if let NodeValue::Text(text) = &entry.node.value { Some(quoted(text)) } else { None }
    };
    let top = spot.item.is_empty() && spot.key == "file";
    let own = if top {
        None
    } else {
        text("name").or_else(|| text("kind").filter(|kind| is_kind(kind)).map(|kind| kind.replace('-', " ")))
    };
    let fallback = if top || !spot.item.is_empty() { spot.item.clone() } else { spot.key.clone() };
    Spot { item: own.unwrap_or(fallback), key: spot.key.clone() }
}

/// The words for the `index`th entry of a list.
pub(super) fn nth(spot: &Spot, index: usize) -> String {
    let one = match spot.key.as_str() {
        "walls" => "wall",
        "fixed" => "fixed thing",
        "pieces" => "piece",
        "diagonals" => "diagonal",
        "way" => "point of the way",
        "holds" => return format!("item {} of {}", index + 1, spot.of()),
        _ => return spot.item.clone(),
    };
    format!("{one} {}", index + 1)
}
