//! Other words of the trade, for kinds and for keys: what is the same thing, and what is only like it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::nearest::same;
use crate::yaml::typed;

const WORDS: &str = include_str!("../../data/words.yaml");

static ROWS: LazyLock<Words> = LazyLock::new(|| typed::of_own(WORDS).unwrap_or_default());

/// The data file.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Words {
    pieces: BTreeMap<String, Meaning>,
    items: BTreeMap<String, Meaning>,
    keys: BTreeMap<String, String>,
}

/// What another word means.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(untagged)]
pub(crate) enum Meaning {
    /// The same as a kind.
    Same {
        /// The kind, as files write it.
        means: String,
    },
    /// More than a kind says.
    Like {
        /// The kind, as files write it.
        like: String,
        /// What to give besides.
        but: String,
    },
}

impl Meaning {
    /// The kind that is meant, as files write it.
    pub(crate) fn kind(&self) -> &str {
        match self {
            Self::Same { means } => means,
            Self::Like { like, .. } => like,
        }
    }
}

/// What `word` means among `kinds`: the kind itself where only case, hyphens or spaces differ, or by the data; `None` where
/// it is a kind as it stands, or nothing that is known.
pub(crate) fn meaning<'a>(word: &str, kinds: impl Iterator<Item = &'a str> + Clone) -> Option<Meaning> {
    if let Some(kind) = kinds.clone().find(|kind| same(kind, word)) {
        return (kind != word).then(|| Meaning::Same { means: kind.to_owned() });
    }
    let rows = ROWS.pieces.iter().chain(&ROWS.items);
    let mut meant = rows.filter(|(known, _)| same(known, word)).map(|(_, meaning)| meaning);
    meant.find(|meaning| kinds.clone().any(|kind| kind == meaning.kind())).cloned()
}

/// The key that another word for one means; `None` where it is no such word.
pub(crate) fn key_meant(word: &str) -> Option<&'static str> {
    ROWS.keys.iter().find(|(known, _)| same(known, word)).map(|(_, key)| key.as_str())
}

#[cfg(test)]
mod tests {
    use super::{ROWS, meaning};

    #[test]
    fn no_word_stands_twice_and_all_rows_read() {
        assert!(!ROWS.pieces.is_empty() && !ROWS.items.is_empty() && !ROWS.keys.is_empty());
        let both = ROWS.pieces.keys().find(|word| ROWS.items.contains_key(*word));
        assert_eq!(both, None);
    }

    #[test]
    fn a_kind_as_it_stands_has_no_other_meaning() {
        let kinds = ["sofa", "coffee-table"];
        assert_eq!(meaning("sofa", kinds.into_iter()), None);
        assert_eq!(meaning("Coffee table", kinds.into_iter()).unwrap().kind(), "coffee-table");
        assert_eq!(meaning("Settee", kinds.into_iter()).unwrap().kind(), "sofa");
        assert_eq!(meaning("outlet", kinds.into_iter()), None);
        assert_eq!(meaning("boat", kinds.into_iter()), None);
    }
}
