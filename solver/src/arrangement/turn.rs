//! How far a chair is turned from a way square to the main seat, and to which side.

use elbowroom_model::{Point, TURNS};

/// A chair turned from a square-on way that it may stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// Unit vector that it would face square-on.
    pub square: Point,
    /// Unit vector, square to that, toward which it is turned.
    pub side: Point,
    /// By so much, degrees: one of [`TURNS`].
    pub degrees: f64,
}

impl Turn {
    /// The turns from `square` to each of two sides, the least first.
    pub(super) fn all(square: Point, sides: [Point; 2]) -> impl Iterator<Item = Self> {
        TURNS.into_iter().flat_map(move |degrees| sides.map(|side| Self { square, side, degrees }))
    }

    /// Unit vector that it faces.
    #[must_use]
    pub fn facing(&self) -> Point {
        self.at(self.degrees)
    }

    /// Unit vectors, square to the lines half way to the ways that lie next to its own, each on the side of its own: what lies
    /// on these sides is faced better than by another turn.
    pub fn better(&self) -> impl Iterator<Item = Point> {
        let next = |less: bool| {
            let others = std::iter::once(0.0).chain(TURNS).filter(|other| (*other < self.degrees) == less);
            let others = others.filter(|other| *other != self.degrees);
            others.min_by(|one, other| (one - self.degrees).abs().total_cmp(&(other - self.degrees).abs()))
        };
        let half_way = |other: f64| {
            let way = self.at(f64::midpoint(self.degrees, other));
            let across = if self.square.cross(self.side) > 0.0 { way.left() } else { way.right() };
            if other < self.degrees { across } else { -across }
        };
        [next(true), next(false)].into_iter().flatten().map(half_way)
    }

    /// How much it is turned counter-clockwise as seen from above, degrees.
    #[must_use]
    pub fn counter_clockwise(&self) -> f64 {
        if self.square.cross(self.side) > 0.0 { self.degrees } else { -self.degrees }
    }

    fn at(&self, degrees: f64) -> Point {
        let (sin, cos) = degrees.to_radians().sin_cos();
        self.square * cos + self.side * sin
    }
}
