//! What is built and sold of things that have no row in the table of sizes.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::file::Tag;
use crate::length::Measure;
use crate::unit::Unit;
use crate::yaml::typed;

const PLAUSIBLE: &str = include_str!("../../data/plausible.yaml");

static ROWS: LazyLock<BTreeMap<String, BTreeMap<String, BuiltRow>>> =
    LazyLock::new(|| typed::of_own(PLAUSIBLE).unwrap_or_default());

/// A row of the data.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct BuiltRow {
    least: Measure,
    most: Measure,
    /// Each row has one; none is told.
    #[serde(rename = "tag")]
    _tag: Tag,
}

/// Least and most that is built or sold, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Built {
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

/// What is built of `figure` of a thing of this kind (`model/data/plausible.yaml`); `None` where nothing is known.
///
/// ```
/// use elbowroom_model::tables::built;
/// assert_eq!(built("radiator", "height").map(|built| built.most), Some(2200.0));
/// assert_eq!(built("pillar", "height"), None);
/// ```
#[must_use]
pub fn built(kind: &str, figure: &str) -> Option<Built> {
    let row = ROWS.get(kind)?.get(figure)?;
    let length = |measure: &Measure| measure.length(Unit::Millimetre).ok();
    Some(Built { least: length(&row.least)?, most: length(&row.most)? })
}

#[cfg(test)]
mod tests {
    use super::{ROWS, built};

    #[test]
    fn every_row_reads_and_runs_forward() {
        assert!(!ROWS.is_empty());
        for (kind, figures) in ROWS.iter() {
            for figure in figures.keys() {
                let found = built(kind, figure).expect("a row reads");
                assert!(found.least >= 0.0 && found.least < found.most, "{kind} {figure}: {found:?}");
            }
        }
    }
}
