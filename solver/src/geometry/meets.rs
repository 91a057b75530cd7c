//! Whether two convex shapes have a place in common, and how far they reach into each other.

use geo::{Coord, Intersects, Line};

use super::Convex;

/// Whether two convex shapes touch or overlap; decided by `geo`, whose predicates are exact.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, meets};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// assert!(meets(&block(0.0, 0.0, 900.0, 900.0), &block(900.0, 500.0, 500.0, 500.0)));
/// assert!(!meets(&block(0.0, 0.0, 900.0, 900.0), &block(900.1, 500.0, 500.0, 500.0)));
/// ```
#[must_use]
pub fn meets(first: &Convex, second: &Convex) -> bool {
    match (flat(first), flat(second)) {
        (None, None) => first.to_geo().intersects(&second.to_geo()),
        (Some(line), None) => second.to_geo().intersects(&line),
        (None, Some(line)) => first.to_geo().intersects(&line),
        (Some(line), Some(other)) => line.intersects(&other),
    }
}

/// How far one must be moved, in the best direction, to leave the other, mm; 0 where they do not overlap.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, overlap_depth};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// assert_eq!(overlap_depth(&block(0.0, 0.0, 900.0, 900.0), &block(880.0, 500.0, 500.0, 500.0)), 20.0);
/// assert_eq!(overlap_depth(&block(0.0, 0.0, 900.0, 900.0), &block(950.0, 500.0, 500.0, 500.0)), 0.0);
/// ```
#[must_use]
pub fn overlap_depth(first: &Convex, second: &Convex) -> f64 {
    let past = |shape: &Convex, other: &Convex| {
        let depths = shape.half_planes().into_iter().map(|side| side.support + other.support(-side.normal));
        depths.fold(f64::INFINITY, f64::min)
    };
    let depth = past(first, second).min(past(second, first));
    if depth.is_finite() { depth.max(0.0) } else { 0.0 }
}

/// The segment that a shape with fewer than three corners is; `None` for a polygon.
pub(super) fn flat(shape: &Convex) -> Option<Line<f64>> {
    let corners = shape.corners();
    let (first, last) = (corners.first()?, corners.last()?);
    let place = |corner: &elbowroom_model::Point| Coord { x: corner.x, y: corner.y };
    (corners.len() < 3).then(|| Line::new(place(first), place(last)))
}
