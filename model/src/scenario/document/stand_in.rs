//! What may stand in for a piece, as written.

use schemars::JsonSchema;
use serde::Deserialize;

use crate::kind::PieceKind;
use crate::length::Measure;

/// What may stand in for a piece: a kind with its usual sizes, or with sizes of its own.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(untagged)]
pub(crate) enum StandInRow {
    /// A kind with its usual sizes.
    Kind(PieceKind),
    /// A kind with sizes of its own.
    Sized(SizedRow),
}

/// A kind with sizes of its own; what is missing is as usual.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct SizedRow {
    /// What it is.
    #[schemars(required)]
    pub(crate) kind: Option<PieceKind>,
    /// Along its back; of a corner sofa the main run, the corner included.
    pub(crate) width: Option<Measure>,
    /// Of a corner sofa: whole length of the return, the corner included.
    #[serde(rename = "return")]
    pub(crate) return_length: Option<Measure>,
    /// Away from its back; of a corner sofa all runs.
    pub(crate) depth: Option<Measure>,
    /// How many sit at a dining table, or on a sofa.
    pub(crate) seats: Option<u32>,
}
