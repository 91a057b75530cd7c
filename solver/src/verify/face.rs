//! The stretch of wall that an item takes up, as a re-check sees it.

use elbowroom_model::{Hinge, Point, Wall, WallItem};

use crate::geometry::Convex;

/// The stretch of moved-in wall that an item takes up, and the way into the room.
#[derive(Clone, Copy)]
pub(super) struct Face {
    /// Its left end.
    pub(super) left: Point,
    /// Its right end.
    pub(super) right: Point,
    /// Unit vector into the room.
    pub(super) inward: Point,
}

impl Face {
    /// Of an item on a wall that is moved in by `by`.
    pub(super) fn of(wall: &Wall, item: &WallItem, by: f64) -> Self {
        let inward = wall.inward();
        let at = |along: f64| wall.start + wall.along() * along + inward * by;
        Self { left: at(item.at), right: at(item.at + item.width), inward }
    }

    /// Between two distances from its left end, no further than its right.
    pub(super) fn part(self, from: f64, to: f64) -> Self {
        let whole = self.right - self.left;
        let at = |off: f64| self.left + whole * (off / whole.norm().max(f64::MIN_POSITIVE)).min(1.0);
        Self { left: at(from), right: at(to), ..self }
    }

    /// Longer by so much at the end across from a hinge.
    pub(super) fn longer(self, hinge: Hinge, by: f64) -> Self {
        let along = (self.right - self.left).unit().unwrap_or_default() * by;
        match hinge {
            Hinge::Left => Self { right: self.right + along, ..self },
            Hinge::Right => Self { left: self.left - along, ..self },
        }
    }

    /// As far out from the wall.
    pub(super) fn moved(self, by: f64) -> Self {
        Self { left: self.left + self.inward * by, right: self.right + self.inward * by, ..self }
    }

    /// What lies before it, from `near` to `far`.
    pub(super) fn strip(self, near: f64, far: f64) -> Convex {
        let (near, far) = (self.moved(near), self.moved(far));
        Convex::counter_clockwise([near.left, near.right, far.right, far.left])
    }
}
