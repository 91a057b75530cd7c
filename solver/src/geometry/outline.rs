//! The outline of a room: a polygon that need not be convex.

use elbowroom_model::Point;
use geo::{Contains, Coord, Distance, Euclidean, Intersects, LineString, Polygon};

use super::Convex;

/// A simple polygon, corners in order round it.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    polygon: Polygon<f64>,
}

impl Outline {
    /// The outline with these corners.
    #[must_use]
    pub fn within(corners: &[Point]) -> Self {
        let ring: LineString<f64> = corners.iter().map(|p| Coord { x: p.x, y: p.y }).collect();
        Self { polygon: Polygon::new(ring, Vec::new()) }
    }

    /// Whether the convex polygon lies within it, clear of its edges.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::{Convex, Outline};
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let corners = [(0.0, 0.0), (4000.0, 0.0), (4000.0, 3000.0), (0.0, 3000.0)].map(|(x, y)| Point::new(x, y));
    /// let room = Outline::within(&corners);
    /// assert!(room.covers(&block(10.0, 10.0, 900.0, 900.0)));
    /// assert!(!room.covers(&block(3500.0, 10.0, 900.0, 900.0)));
    /// assert_eq!(room.overshoot(&block(3500.0, 10.0, 900.0, 900.0)), 400.0);
    /// ```
    #[must_use]
    pub fn covers(&self, shape: &Convex) -> bool {
        let Some(corner) = shape.corners().first() else { return true };
        self.polygon.contains(&geo::Point::new(corner.x, corner.y))
            && !self.polygon.exterior().intersects(&shape.to_geo())
    }

    /// How far the convex polygon reaches beyond the edge: the farthest of its corners that lies outside, or of the
    /// floor's own corners that lies inside it, mm.
    #[must_use]
    pub fn overshoot(&self, shape: &Convex) -> f64 {
        let outside = shape
            .corners()
            .iter()
            .map(|corner| Euclidean.distance(&geo::Point::new(corner.x, corner.y), &self.polygon));
        let inside = self.polygon.exterior().coords().map(|c| shape.depth_of(Point::new(c.x, c.y)));
        outside.chain(inside).fold(0.0, f64::max)
    }
}
