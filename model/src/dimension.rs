//! The dimensions of a piece that have ranges of their own.

use serde::Serialize;
use strum::{IntoStaticStr, VariantArray};

use crate::aim::AimedSizes;

/// A dimension that has a range of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, IntoStaticStr, VariantArray)]
#[serde(rename_all = "snake_case")]
#[strum(serialize_all = "snake_case")]
pub enum Dimension {
    /// Along the back (of a corner sofa: of the main run, the corner included).
    Width,
    /// Whole length of a corner sofa's return along its back, the corner included.
    Return,
    /// Away from the back (of all runs of a corner sofa).
    Depth,
    /// Whole length of a second return, at the other end of the main run.
    SecondReturn,
    /// Of a corner sofa's return, where it is another than that of the main run.
    ReturnDepth,
}

impl Dimension {
    /// Every dimension, in the order they are told.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The dimension as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }

    /// The dimension in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::SecondReturn => "second return",
            Self::ReturnDepth => "depth of the return",
            Self::Width | Self::Return | Self::Depth => self.key(),
        }
    }
}

impl AimedSizes {
    /// The size aimed at in one dimension, mm.
    #[must_use]
    pub const fn get(&self, dimension: Dimension) -> Option<f64> {
        match dimension {
            Dimension::Width => self.width,
            Dimension::Return => self.return_length,
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => self.depth,
            Dimension::ReturnDepth => self.return_depth,
        }
    }

    /// The same sizes with one of them set, mm.
    #[must_use]
    pub const fn with(mut self, dimension: Dimension, size: f64) -> Self {
        match dimension {
            Dimension::Width => self.width = Some(size),
            Dimension::Return => self.return_length = Some(size),
            Dimension::SecondReturn => self.second_return = Some(size),
            Dimension::Depth => self.depth = Some(size),
            Dimension::ReturnDepth => self.return_depth = Some(size),
        }
        self
    }
}
