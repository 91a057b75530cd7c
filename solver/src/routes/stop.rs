//! What stops a disc.

use elbowroom_model::Point;

use super::ShapeId;
use crate::geometry::{Bounds, Convex};

/// One convex thing that a disc cannot pass through.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// What it belongs to.
    pub id: ShapeId,
    /// Its plan: a polygon, a stretch of wall, or a point.
    pub shape: Convex,
    /// The box round it.
    pub(super) bounds: Bounds,
    /// The place in it that every path through it touches.
    pub(super) heart: Point,
}

impl Stop {
    /// What stops a disc at `shape`.
    #[must_use]
    pub fn new(id: ShapeId, shape: Convex) -> Self {
        let (bounds, heart) = (Bounds::of(&shape), shape.middle());
        Self { id, shape, bounds, heart }
    }

    /// A straight stretch of wall.
    #[must_use]
    pub fn stretch(id: ShapeId, start: Point, end: Point) -> Self {
        Self::new(id, Convex::counter_clockwise([start, end]))
    }

    /// A single place.
    #[must_use]
    pub fn point(id: ShapeId, at: Point) -> Self {
        Self::new(id, Convex::counter_clockwise([at]))
    }
}
