//! A convex polygon.

use elbowroom_model::{Point, ring};
use geo::{Area, BooleanOps, Coord, LineString, Polygon};
use smallvec::SmallVec;

use super::{HalfPlane, Segment};

/// A convex polygon, corners counter-clockwise. One corner is a point, two are a segment.
#[derive(Debug, Clone, PartialEq)]
pub struct Convex {
    corners: SmallVec<[Point; 4]>,
}

impl Convex {
    /// The convex polygon with these corners in order round it, turned counter-clockwise where they run clockwise.
    #[must_use]
    pub fn counter_clockwise(corners: impl IntoIterator<Item = Point>) -> Self {
        let mut corners: SmallVec<[Point; 4]> = corners.into_iter().collect();
        if ring::signed_area(&corners) < 0.0 {
            corners.reverse();
        }
        Self { corners }
    }

    /// Corners, counter-clockwise.
    #[must_use]
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }

    /// Edges, counter-clockwise; a point has none, a segment has one.
    pub fn edges(&self) -> impl Iterator<Item = Segment> + '_ {
        let count = match self.corners.len() {
            0 | 1 => 0,
            2 => 1,
            corners => corners,
        };
        (0..count).map(|i| Segment::new(self.corners[i], self.corners[(i + 1) % self.corners.len()]))
    }

    /// The half-planes that its edges bound: it is what they have in common.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let planes = block(0.0, 0.0, 900.0, 500.0).half_planes();
    /// assert_eq!((planes[1].normal, planes[1].support), (Point::new(1.0, 0.0), 900.0));
    /// assert_eq!(planes[1].outside(Point::new(930.0, 100.0)), 30.0);
    /// ```
    #[must_use]
    pub fn half_planes(&self) -> Vec<HalfPlane> {
        let edge = |edge: Segment| {
            let normal = edge.vector().right().unit()?;
            Some(HalfPlane { normal, support: normal.dot(edge.start) })
        };
        self.edges().filter_map(edge).collect()
    }

    /// The furthest that it reaches in `direction`.
    #[must_use]
    pub fn support(&self, direction: Point) -> f64 {
        self.corners.iter().map(|corner| corner.dot(direction)).fold(f64::NEG_INFINITY, f64::max)
    }

    /// Area, mm2.
    #[must_use]
    pub fn area(&self) -> f64 {
        ring::signed_area(&self.corners).abs()
    }

    /// Mean of its corners: a place inside it.
    #[must_use]
    pub fn middle(&self) -> Point {
        ring::middle(&self.corners)
    }

    /// How far `point` lies inside every edge (negative: outside by at least that much), mm.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let rug = block(0.0, 0.0, 900.0, 500.0);
    /// assert_eq!((rug.depth_of(Point::new(100.0, 250.0)), rug.depth_of(Point::new(-20.0, 250.0))), (100.0, -20.0));
    /// ```
    #[must_use]
    pub fn depth_of(&self, point: Point) -> f64 {
        self.half_planes().iter().map(|side| -side.outside(point)).fold(f64::INFINITY, f64::min)
    }

    /// The part of it with `normal . p <= support`; `None` where nothing is left.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let (rug, east) = (block(0.0, 0.0, 900.0, 500.0), Point::new(1.0, 0.0));
    /// assert!(rug.clipped(east, 300.0).is_some_and(|part| part.area() == 300.0 * 500.0));
    /// assert_eq!(rug.clipped(east, -10.0), None);
    /// ```
    #[must_use]
    pub fn clipped(&self, normal: Point, support: f64) -> Option<Self> {
        let mut corners = SmallVec::new();
        let outside = |corner: Point| normal.dot(corner) - support;
        for (i, &start) in self.corners.iter().enumerate() {
            let end = self.corners[(i + 1) % self.corners.len()];
            let (from, to) = (outside(start), outside(end));
            if from <= 0.0 {
                corners.push(start);
            }
            if (from < 0.0 && to > 0.0) || (from > 0.0 && to < 0.0) {
                corners.push(start + (end - start) * (from / (from - to)));
            }
        }
        (corners.len() >= 3).then_some(Self { corners })
    }

    /// Area that two convex polygons have in common, mm2; with `geo`.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// assert_eq!(block(0.0, 0.0, 900.0, 500.0).common_area(&block(600.0, 400.0, 900.0, 500.0)), 300.0 * 100.0);
    /// ```
    #[must_use]
    pub fn common_area(&self, other: &Self) -> f64 {
        if self.corners.len() < 3 || other.corners.len() < 3 {
            return 0.0;
        }
        self.to_geo().intersection(&other.to_geo()).unsigned_area()
    }

    /// The same polygon in the geometry library's own type.
    pub(super) fn to_geo(&self) -> Polygon<f64> {
        let ring: LineString<f64> = self.corners.iter().map(|p| Coord { x: p.x, y: p.y }).collect();
        Polygon::new(ring, Vec::new())
    }
}

impl From<Point> for Convex {
    /// A single place.
    fn from(place: Point) -> Self {
        Self::counter_clockwise([place])
    }
}

impl Segment {
    /// The segment as a shape; a single place where it has no length.
    #[must_use]
    pub fn shape(self) -> Convex {
        if self.start == self.end { self.start.into() } else { Convex::counter_clockwise([self.start, self.end]) }
    }
}
