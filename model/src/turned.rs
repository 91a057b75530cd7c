//! Whether a chair may stand turned toward the heart of its group, and by how much.

use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

/// Angles by which a chair may be turned from a square-on way that it may stand, degrees: what one sets by eye, up to
/// half of a corner (common practice, no source).
pub const TURNS: [f64; 3] = [15.0, 30.0, 45.0];

/// Whether a chair may stand turned by one of [`TURNS`] toward the heart of its group.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Default,
    Serialize,
    Deserialize,
    schemars::JsonSchema,
    EnumString,
    IntoStaticStr,
    VariantArray,
)]
#[serde(rename_all = "kebab-case")]
#[strum(serialize_all = "kebab-case")]
pub enum Turned {
    /// It stands square to the main seat or to its wall.
    #[default]
    No,
    /// It stands turned.
    Yes,
    /// Either way.
    Either,
}

impl Turned {
    /// Every answer.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The answer as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }

    /// Whether it may stand turned.
    #[must_use]
    pub const fn may_turn(self) -> bool {
        matches!(self, Self::Yes | Self::Either)
    }

    /// Whether it may stand square.
    #[must_use]
    pub const fn may_be_square(self) -> bool {
        matches!(self, Self::No | Self::Either)
    }
}
