//! Where a ray meets a segment.

use elbowroom_model::Point;

use super::Segment;
use super::crossing::{is_on, of_lines};

/// From a place on in one direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ray {
    /// Where it starts.
    pub from: Point,
    /// Which way it goes; what is told of it is told in lengths of this vector.
    pub way: Point,
}

/// Where a ray meets a segment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Met {
    /// How far on, in lengths of the ray's vector.
    pub reach: f64,
    /// Where on the segment, as a share of its length.
    pub share: f64,
}

impl Ray {
    /// Where it meets a segment, the segment's ends included; `None` where that lies behind, or the ray runs along it.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::{Ray, Segment};
    /// let wall = Segment::new(Point::new(0.0, 3000.0), Point::new(4000.0, 3000.0));
    /// let ahead = Ray { from: Point::new(1000.0, 0.0), way: Point::new(0.0, 1.0) };
    /// assert!(ahead.meets(wall).is_some_and(|met| met.reach == 3000.0 && met.share == 0.25));
    /// let back = Ray { way: Point::new(0.0, -1.0), ..ahead };
    /// assert_eq!(back.meets(wall), None);
    /// ```
    #[must_use]
    pub fn meets(self, segment: Segment) -> Option<Met> {
        let crossing = of_lines(segment.start - self.from, self.way, segment.vector())?;
        let (reach, share) = (crossing.of_first, crossing.of_second);
        (reach > 0.0 && is_on(share)).then_some(Met { reach, share })
    }
}
