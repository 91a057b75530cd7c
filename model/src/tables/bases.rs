//! What the criteria and cautions rest on.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::file::{Tag, told};
use crate::length::{Measure, Unit};
use crate::yaml::typed;

const BASES: &str = include_str!("../../data/bases.yaml");

/// A figure that a criterion or caution rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Basis {
    /// The figure: mm, degrees, a ratio or a count, as its row says.
    pub figure: f64,
    /// Tag and source, as told.
    pub source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct BasisRow {
    figure: Measure,
    unit: BasisUnit,
    tag: Tag,
    source: String,
}

#[derive(Deserialize, PartialEq)]
#[serde(rename_all = "snake_case")]
enum BasisUnit {
    Mm,
    Deg,
    Ratio,
    Count,
}

static ROWS: LazyLock<BTreeMap<String, Basis>> = LazyLock::new(|| read().unwrap_or_default());

/// The basis of this name in `model/data/bases.yaml`; `None` where there is none.
///
/// ```
/// let circle = elbowroom_model::tables::basis("conversation_circle").unwrap();
/// assert_eq!(circle.figure, 3048.0);
/// ```
#[must_use]
pub fn basis(name: &str) -> Option<&'static Basis> {
    ROWS.get(name)
}

fn read() -> Option<BTreeMap<String, Basis>> {
    let rows: BTreeMap<String, BasisRow> = typed::of_own(BASES).ok()?;
    rows.into_iter().map(|(name, row)| Some((name, basis_of(&row)?))).collect()
}

fn basis_of(row: &BasisRow) -> Option<Basis> {
    // Bare figures of every unit are taken as they stand; lengths may carry a unit of their own.
    let figure = row.figure.length(Unit::Millimetre).ok()?;
    let bare = matches!(row.figure, Measure::Number(_));
    (bare || row.unit == BasisUnit::Mm).then(|| Basis { figure, source: told(Some(row.tag), Some(&row.source)) })
}
