//! A table as written: the data files' own types, and the user's.

use enum_map::Enum;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use strum::IntoStaticStr;

use crate::keyed::Keyed;
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::rules::Clearance;
use crate::unit::Unit;

/// Rows that stand in for the built-in ones.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TableFile {
    /// Unit of bare numbers; default mm.
    pub units: Option<Unit>,
    /// Sizes by kind of piece.
    pub sizes: Option<Keyed<PieceKind, SizeRow>>,
    /// Clearances by rule, then by profile.
    pub clearances: Option<Keyed<Clearance, Keyed<Profile, FigureRow>>>,
}

/// A profile of clearances.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default, Serialize, Deserialize, JsonSchema, Enum, IntoStaticStr,
)]
#[serde(rename_all = "snake_case")]
#[strum(serialize_all = "snake_case")]
pub enum Profile {
    /// As tight as people put up with.
    Snug,
    /// Comfortable.
    #[default]
    Easy,
    /// For someone who uses a wheelchair.
    Wheelchair,
}

impl Profile {
    /// The profile as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// Sizes of one kind; what is left out stays as it is.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SizeRow {
    /// Along the back.
    pub width: Option<RangeRow>,
    /// Along the back of a corner sofa with a second return: a U.
    pub u_width: Option<RangeRow>,
    /// Whole length of a corner sofa's return along its back.
    #[serde(rename = "return")]
    pub return_length: Option<RangeRow>,
    /// Away from the back.
    pub depth: Option<RangeRow>,
    /// Above the floor.
    pub height: Option<FigureRow>,
    /// What a millimetre of any dimension counts in the size value.
    pub weight: Option<f64>,
    /// Sizes that it comes in, smallest first.
    pub steps: Option<Vec<StepRow>>,
    /// Widths by how many sit on it, fewest first.
    pub by_places: Option<Vec<PlacesRow>>,
}

/// How wide a seat for so many is.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlacesRow {
    /// How many sit on it.
    pub seats: u32,
    /// Along its back.
    pub width: RangeRow,
}

/// Least, usual and most of a dimension.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RangeRow {
    /// Least that people buy.
    pub least: Option<Measure>,
    /// What most people want.
    pub usual: Option<Measure>,
    /// Most that people buy.
    pub most: Option<Measure>,
    /// P published, M from memory, D derived, C common practice.
    pub tag: Option<Tag>,
    /// Where the figures come from.
    pub source: Option<String>,
}

/// How a figure is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Tag {
    /// Published, read in a stored copy or a faithful reproduction.
    P,
    /// From memory of the named publication, not seen.
    M,
    /// Derived by exact arithmetic from published figures.
    D,
    /// Common practice, no source.
    C,
}

/// One figure, alone or with its source.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum FigureRow {
    /// The figure alone.
    Figure(Measure),
    /// The figure with its source.
    Sourced(SourcedFigure),
}

/// A figure with its source.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SourcedFigure {
    /// The figure.
    #[schemars(required)]
    pub figure: Option<Measure>,
    /// How it is known.
    pub tag: Option<Tag>,
    /// Where it comes from.
    pub source: Option<String>,
}

/// A size that a kind comes in.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepRow {
    /// Places at a dining table of this size.
    pub seats: Option<u32>,
    /// Along the long side.
    pub width: Measure,
    /// Along the short side.
    pub depth: Measure,
}

/// Tag and source in one text.
pub(super) fn told(tag: Option<Tag>, source: Option<&str>) -> String {
    let source = crate::quote::clean(source.unwrap_or("the user's table"));
    tag.map_or_else(|| source.clone(), |tag| format!("({tag:?}) {source}"))
}

/// The schema that a table is held to.
pub(super) static SCHEMA: std::sync::LazyLock<serde_json::Value> =
    std::sync::LazyLock::new(|| schemars::schema_for!(TableFile).to_value());
