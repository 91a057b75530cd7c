//! A straight stretch between two places, and the nearest place on it.

use elbowroom_model::{Point, Wall};

/// A straight stretch between two places.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// Where it starts.
    pub start: Point,
    /// Where it ends.
    pub end: Point,
}

impl Segment {
    /// The segment from `start` to `end`.
    #[must_use]
    pub const fn new(start: Point, end: Point) -> Self {
        Self { start, end }
    }

    /// From its start to its end.
    #[must_use]
    pub fn vector(self) -> Point {
        self.end - self.start
    }

    /// Its length, mm.
    #[must_use]
    pub fn length(self) -> f64 {
        self.vector().norm()
    }

    /// The place at this share of its length, 0 at its start.
    #[must_use]
    pub fn at(self, share: f64) -> Point {
        self.start + self.vector() * share
    }

    /// The place on it that lies nearest to `point`.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Segment;
    /// let shelf = Segment::new(Point::new(0.0, 0.0), Point::new(900.0, 0.0));
    /// assert_eq!(shelf.nearest_to(Point::new(300.0, 500.0)), Point::new(300.0, 0.0));
    /// assert_eq!(shelf.nearest_to(Point::new(1200.0, 400.0)), Point::new(900.0, 0.0));
    /// assert_eq!(shelf.distance_to(Point::new(1200.0, 400.0)), 500.0);
    /// ```
    #[must_use]
    pub fn nearest_to(self, point: Point) -> Point {
        let along = self.vector();
        let squared = along.dot(along);
        if squared <= 0.0 {
            return self.start;
        }
        self.start + along * ((point - self.start).dot(along) / squared).clamp(0.0, 1.0)
    }

    /// How far `point` is from it, mm.
    #[must_use]
    pub fn distance_to(self, point: Point) -> f64 {
        (self.nearest_to(point) - point).norm()
    }
}

impl From<&Wall> for Segment {
    fn from(wall: &Wall) -> Self {
        Self { start: wall.start, end: wall.end }
    }
}
