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
    /// Of a corner sofa's second return.
    pub second_return: Option<DimensionRange>,
    /// Away from its back.
    pub depth: DimensionRange,
    /// Of a return that has a depth of its own.
    pub return_depth: Option<DimensionRange>,
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
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => Some(self.depth),
            Dimension::ReturnDepth => self.return_depth,
        }
    }

    /// The sizes as planned: what is drawn and set out.
    #[must_use]
    pub fn planned(&self) -> Size {
        self.sizes(|range| range.planned)
    }

    /// The largest sizes that fit together.
    #[must_use]
    pub fn together(&self) -> Size {
        self.sizes(|range| range.together)
    }

    fn sizes(&self, of: impl Fn(DimensionRange) -> f64) -> Size {
        Size {
            width: of(self.width),
            return_length: self.return_length.map(&of),
            second_return: self.second_return.map(&of),
            depth: of(self.depth),
            return_depth: self.return_depth.map(&of),
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
