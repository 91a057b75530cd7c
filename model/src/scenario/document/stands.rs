//! What a plan aims at with a piece, and where the piece stands in the room as it is, as written.

use schemars::JsonSchema;
use serde::Deserialize;

use crate::aim::SizesAim;
use crate::length::Measure;

/// What plans aim at with a piece.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(untagged)]
pub(crate) enum AimRow {
    /// Usual or largest.
    Word(SizesAim),
    /// Sizes of its own.
    Sizes(AimSizesRow),
}

/// Sizes that plans aim at; what is missing is as usual.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct AimSizesRow {
    /// Along its back.
    pub(crate) width: Option<Measure>,
    /// Of a corner sofa: whole length of the return, the corner included.
    #[serde(rename = "return")]
    pub(crate) return_length: Option<Measure>,
    /// Of a corner sofa: whole length of its second return.
    pub(crate) second_return: Option<Measure>,
    /// Away from its back.
    pub(crate) depth: Option<Measure>,
    /// Of a corner sofa: depth of a return that has one of its own.
    pub(crate) return_depth: Option<Measure>,
}

/// Where a piece stands: at a wall, or anywhere.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlaceRow {
    /// The wall behind it.
    pub(crate) wall: Option<String>,
    /// From that wall's left end, as you face it from inside, to the nearer end of the piece.
    pub(crate) from: Option<Measure>,
    /// From that wall to its back; default the gap that the piece keeps.
    pub(crate) off: Option<Measure>,
    /// Without a wall: plan coordinates [x, y] of the middle of its back; of a corner sofa, of the main run's back.
    pub(crate) at: Option<[Measure; 2]>,
    /// Without a wall: the way it faces, degrees counter-clockwise from +x.
    pub(crate) facing: Option<f64>,
}
