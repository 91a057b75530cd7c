//! The upright box round a shape: a cheap first answer to "how far apart".

use elbowroom_model::Point;

use super::Convex;

/// The least upright box that holds a shape.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Its lower left corner.
    pub least: Point,
    /// Its upper right corner.
    pub most: Point,
}

impl Bounds {
    /// The box round `shape`.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::{Bounds, Convex};
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let bounds = Bounds::of(&block(100.0, 50.0, 900.0, 400.0));
    /// assert_eq!((bounds.least, bounds.most), (Point::new(100.0, 50.0), Point::new(1000.0, 450.0)));
    /// assert_eq!(bounds.squared_to(Point::new(1003.0, 454.0)), 25.0);
    /// assert!(bounds.apart_by(&Bounds::of(&block(1300.0, 850.0, 10.0, 10.0)), 500.0));
    /// ```
    #[must_use]
    pub fn of(shape: &Convex) -> Self {
        let empty = Self {
            least: Point::new(f64::INFINITY, f64::INFINITY),
            most: Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        };
        shape.corners().iter().fold(empty, |bounds, corner| Self {
            least: Point::new(bounds.least.x.min(corner.x), bounds.least.y.min(corner.y)),
            most: Point::new(bounds.most.x.max(corner.x), bounds.most.y.max(corner.y)),
        })
    }

    /// Square of how far `place` lies outside, mm2: what the box holds is no nearer to it.
    #[must_use]
    pub fn squared_to(&self, place: Point) -> f64 {
        let across = (self.least.x - place.x).max(place.x - self.most.x).max(0.0);
        let up = (self.least.y - place.y).max(place.y - self.most.y).max(0.0);
        across * across + up * up
    }

    /// Whether the two boxes are at least `distance` apart: then so is what they hold.
    #[must_use]
    pub fn apart_by(&self, other: &Self, distance: f64) -> bool {
        let across = (self.least.x - other.most.x).max(other.least.x - self.most.x).max(0.0);
        let up = (self.least.y - other.most.y).max(other.least.y - self.most.y).max(0.0);
        across * across + up * up >= distance * distance
    }
}
