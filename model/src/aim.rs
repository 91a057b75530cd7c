//! What plans aim at: the size that a piece should have, where nothing stands against it.

use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

/// What sizes are aimed at.
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
pub enum SizesAim {
    /// The sizes that people usually want, as they suit the room.
    #[default]
    Usual,
    /// The most that is asked for.
    Largest,
}

impl SizesAim {
    /// Both aims.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The aim as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// What the file says that plans aim at with one piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PieceAim {
    /// The usual sizes, whatever all others aim at.
    Usual,
    /// The most that is asked for.
    Largest,
    /// These sizes.
    Sizes(AimedSizes),
}

/// Sizes that a plan aims at, mm; where one is missing, what is usual.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct AimedSizes {
    /// Along the back.
    pub width: Option<f64>,
    /// Of a corner sofa's return, the corner included.
    pub return_length: Option<f64>,
    /// Of its second return.
    pub second_return: Option<f64>,
    /// Away from the back.
    pub depth: Option<f64>,
    /// Away from the back of its return, where that is of another depth.
    pub return_depth: Option<f64>,
}
