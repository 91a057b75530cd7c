//! Corners cut to a mitre where edges move out, and shapes grown so.

use elbowroom_model::Point;

use super::Convex;
use super::tolerance::TURNS_BACK;

/// Where the corner at `at` goes when both edges that meet there move by `by` along their unit normals. Edges that turn back
/// on each other have no mitre and move with the first; one of no length has no normal (zero) and moves with the other.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::mitre;
/// let (at, south, east) = (Point::new(4000.0, 0.0), Point::new(0.0, -1.0), Point::new(1.0, 0.0));
/// assert_eq!(mitre(at, [south, east], 10.0), Point::new(4010.0, -10.0));
/// assert_eq!(mitre(at, [south, south], 10.0), Point::new(4000.0, -10.0));
/// assert_eq!(mitre(at, [Point::default(), south], 10.0), Point::new(4000.0, -10.0));
/// ```
#[must_use]
pub fn mitre(at: Point, normals: [Point; 2], by: f64) -> Point {
    let [first, second] = normals;
    let (sum, normal) = (first + second, if first == Point::default() { second } else { first });
    let reach = sum.dot(normal);
    if reach.abs() < TURNS_BACK {
        return at + normal * by;
    }
    at + sum * (by / reach)
}

impl Convex {
    /// The polygon with every edge moved outward by `by` mm, its corners mitred.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// let pillar = [(0.0, 0.0), (300.0, 0.0), (300.0, 300.0), (0.0, 300.0)].map(|(x, y)| Point::new(x, y));
    /// let grown = Convex::counter_clockwise(pillar).grown(10.0);
    /// assert_eq!(grown.area(), 320.0 * 320.0);
    /// ```
    #[must_use]
    pub fn grown(&self, by: f64) -> Self {
        let ring = self.corners();
        let count = ring.len();
        let normal = |i: usize| (ring[(i + 1) % count] - ring[i % count]).right().unit().unwrap_or_default();
        let corner = |i: usize| mitre(ring[i], [normal(i + count - 1), normal(i)], by);
        Self::counter_clockwise((0..count).map(corner))
    }
}
