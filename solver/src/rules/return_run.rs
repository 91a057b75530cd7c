//! A return of a corner sofa, at one end of its main run.

use elbowroom_model::Point;

use super::linear::{Linear, LinearPoint};
use super::pose::Pose;

/// A return, with what stands at its end.
pub(crate) struct ReturnRun {
    /// Its whole length, the corner included.
    pub(crate) length: Linear,
    /// How deep it is.
    pub(crate) depth: Linear,
    /// How deep it is at the least, mm.
    pub(crate) least_depth: f64,
    /// Where its back lies along the main run, from the anchor, and the way from it to its front.
    back: Linear,
    way: Point,
}

impl ReturnRun {
    /// How far from its back, toward its front, a place lies that is so far from the anchor.
    pub(crate) fn off_back(&self, offset: &LinearPoint) -> Linear {
        offset.along(self.way).plus(&self.back, -1.0)
    }
}

impl Pose {
    /// The return at the end of the main run on this side; `None` where that end is free.
    pub(crate) fn return_at(&self, side: Point) -> Option<ReturnRun> {
        let _ = self.hand?;
        if self.along().dot(side) < 0.0 {
            let own = self.piece.return_depth.unwrap_or(self.piece.depth);
            return Some(ReturnRun {
                length: self.return_length()?,
                depth: self.deep_return(),
                least_depth: own.least,
                back: Linear::default(),
                way: self.along(),
            });
        }
        Some(ReturnRun {
            length: self.second_return()?,
            depth: self.depth(),
            least_depth: self.piece.depth.least,
            // Counted from the far end of the main run, back toward the anchor.
            back: Linear::default().plus(&self.width(), -1.0),
            way: -self.along(),
        })
    }
}
