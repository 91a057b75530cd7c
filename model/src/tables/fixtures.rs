//! Fixed things that are used: how much floor before them, by the kind that a file gives them.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::file::{Tag, told};
use crate::nearest::same;
use crate::used_at::UsedAt;
use crate::yaml::typed;

const FIXTURES: &str = include_str!("../../data/fixtures.yaml");

static ROWS: LazyLock<BTreeMap<String, FixtureRow>> = LazyLock::new(|| typed::of_own(FIXTURES).unwrap_or_default());

/// A row of the data.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct FixtureRow {
    /// Depth of the floor before it, mm.
    depth: f64,
    /// The edge that one stands before, where that is not its longest.
    #[serde(default)]
    at: UsedAt,
    tag: Tag,
    source: String,
}

/// How a fixed thing of some kind is used.
#[derive(Debug, Clone, PartialEq)]
pub struct FixtureUse {
    /// Depth of the floor before it that stays clear, mm.
    pub depth: f64,
    /// The edge that one stands before.
    pub at: UsedAt,
    /// What the figure rests on, as told: `(M) ...`.
    pub source: String,
}

/// How a fixed thing of this kind is used where the file says nothing (`model/data/fixtures.yaml`); `None`: it is not.
///
/// ```
/// use elbowroom_model::tables::fixture_use;
/// assert_eq!(fixture_use("Washing machine").map(|used| used.depth), Some(900.0));
/// assert_eq!(fixture_use("pillar"), None);
/// ```
#[must_use]
pub fn fixture_use(kind: &str) -> Option<FixtureUse> {
    let row = ROWS.iter().find(|(known, _)| same(known, kind)).map(|(_, row)| row)?;
    Some(FixtureUse { depth: row.depth, at: row.at, source: told(Some(row.tag), Some(&row.source)) })
}

#[cfg(test)]
mod tests {
    use super::ROWS;

    #[test]
    fn every_row_reads_and_has_a_depth() {
        assert!(!ROWS.is_empty() && ROWS.values().all(|row| row.depth > 0.0), "{ROWS:?}");
    }
}
