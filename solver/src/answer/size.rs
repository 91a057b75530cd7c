//! How large a piece of an option may be, and what holds it.

use elbowroom_model::{Dimension, PieceId};

use crate::layout::Size;
use crate::sizes::HeldBy;

/// How large a piece that stands may be.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceSizes {
    /// The piece, by its place in the brief.
    pub piece: PieceId,
    /// Along its back.
    pub width: DimensionRange,
    /// Of a corner sofa.
    pub return_length: Option<DimensionRange>,
    /// Away from its back.
    pub depth: DimensionRange,
    /// What holds each dimension; empty beyond the options shown.
    pub held_by: Vec<HeldBy>,
}

impl PieceSizes {
    /// The figures of one dimension, where the piece has it.
    #[must_use]
    pub const fn get(&self, dimension: Dimension) -> Option<DimensionRange> {
        match dimension {
            Dimension::Width => Some(self.width),
            Dimension::Return => self.return_length,
            Dimension::Depth => Some(self.depth),
        }
    }

    /// The sizes as planned: what is drawn and set out.
    #[must_use]
    pub fn planned(&self) -> Size {
        Size {
            width: self.width.planned,
            return_length: self.return_length.map(|range| range.planned),
            depth: self.depth.planned,
        }
    }

    /// The largest sizes that fit together.
    #[must_use]
    pub fn together(&self) -> Size {
        Size {
            width: self.width.together,
            return_length: self.return_length.map(|range| range.together),
            depth: self.depth.together,
        }
    }
}

/// The figures of one dimension, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DimensionRange {
    /// The least that still does its work.
    pub least: f64,
    /// What the plan aims at; `None` for what comes in steps.
    pub aim: Option<f64>,
    /// As planned: what is drawn and set out.
    pub planned: f64,
    /// All pieces at theirs fit together, where the plan has them.
    pub together: f64,
    /// The most it could be if every other piece gave way; `None` beyond the options shown.
    pub alone: Option<f64>,
    /// The most that is sold or asked for.
    pub most: f64,
}
