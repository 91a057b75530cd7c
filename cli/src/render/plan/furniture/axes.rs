//! A rectangle of a piece with the way it faces: places in it by how far ahead of its back and how far left of its middle.

use elbowroom_model::Point;

/// A rectangle, seen by one who sits in it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Axes {
    back: Point,
    facing: Point,
    /// From side to side, mm.
    pub(super) width: f64,
    /// From back to front, mm.
    pub(super) depth: f64,
}

impl Axes {
    /// Of a ring (a rectangle, whichever corner comes first) that faces so.
    pub(super) fn of(ring: &[Point], facing: Point) -> Self {
        let left = facing.left();
        let reach = |way: Point| ring.iter().map(|at| at.dot(way)).fold(f64::NEG_INFINITY, f64::max);
        let (rear, front) = (-reach(-facing), reach(facing));
        let (low, high) = (-reach(-left), reach(left));
        let back = facing * rear + left * ((low + high) / 2.0);
        Self { back, facing, width: high - low, depth: front - rear }
    }

    /// The place so far left of the middle and so far ahead of the back.
    pub(super) fn at(&self, left: f64, ahead: f64) -> Point {
        self.back + self.facing.left() * left + self.facing * ahead
    }

    /// The rectangle between two places across and two ahead.
    pub(super) fn rectangle(&self, across: [f64; 2], ahead: [f64; 2]) -> [Point; 4] {
        let ([from, to], [rear, front]) = (across, ahead);
        [self.at(from, rear), self.at(to, rear), self.at(to, front), self.at(from, front)]
    }

    /// Its middle.
    pub(super) fn middle(&self) -> Point {
        self.at(0.0, self.depth / 2.0)
    }

    /// Whether a place lies within, or at most `by` outside.
    pub(super) fn holds(&self, place: Point, by: f64) -> bool {
        let off = place - self.back;
        let ahead = off.dot(self.facing);
        off.dot(self.facing.left()).abs() <= self.width / 2.0 + by && ahead >= -by && ahead <= self.depth + by
    }
}
