//! Where a convex shape meets an endless line.

use elbowroom_model::Point;

use super::Convex;

/// The stretch of the line through `origin` along the unit vector `along` that lies in `shape` or within `slack` of it
/// (measured square to the line), as distances from `origin`; `None` where the shape keeps clear of the line.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, cross_section};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// let (origin, east) = (Point::new(0.0, 200.0), Point::new(1.0, 0.0));
/// assert_eq!(cross_section(&block(100.0, 0.0, 900.0, 400.0), origin, east, 0.0), Some((100.0, 1000.0)));
/// assert_eq!(cross_section(&block(100.0, 300.0, 900.0, 400.0), origin, east, 0.0), None);
/// ```
#[must_use]
pub fn cross_section(shape: &Convex, origin: Point, along: Point, slack: f64) -> Option<(f64, f64)> {
    let place = |corner: Point| (along.dot(corner - origin), along.cross(corner - origin));
    let mut found: Option<(f64, f64)> = None;
    let mut take = |at: f64| found = Some(found.map_or((at, at), |(from, to)| (from.min(at), to.max(at))));
    for &corner in shape.corners() {
        let (at, off) = place(corner);
        if off.abs() <= slack {
            take(at);
        }
    }
    for edge in shape.edges() {
        let ((from, before), (to, after)) = (place(edge.start), place(edge.end));
        if before * after < 0.0 {
            take(from + (to - from) * (before / (before - after)));
        }
    }
    found
}
