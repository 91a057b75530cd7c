//! Where something stands on a wall.

use elbowroom_model::Point;

use crate::geometry::Convex;

/// Where an item stands on its wall as moved in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WallPlace {
    /// Its left end as one faces it from inside.
    pub left: Point,
    /// Its right end.
    pub right: Point,
    /// Unit vector into the room.
    pub inward: Point,
}

impl WallPlace {
    /// The floor so deep before it.
    pub(super) fn before(self, depth: f64) -> Convex {
        let Self { left, right, inward } = self;
        let out = inward * depth;
        Convex::counter_clockwise([left, right, right + out, left + out])
    }

    /// The same, reaching so much further past one of its ends.
    pub(super) fn longer(self, hinge_is_left: bool, by: f64) -> Self {
        let past = (self.right - self.left).unit().unwrap_or_default() * by;
        if hinge_is_left { Self { right: self.right + past, ..self } } else { Self { left: self.left - past, ..self } }
    }
}
