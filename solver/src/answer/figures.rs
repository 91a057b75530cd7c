//! Figures of an answer: to a thousandth, so that rounding of the programs is not told.

use elbowroom_model::Point;

use crate::geometry::Convex;
use crate::layout::Placed;

/// To a thousandth.
#[must_use]
pub fn thousandth(figure: f64) -> f64 {
    let told = (figure * 1e3).round() / 1e3;
    // A negative zero would be told as one.
    if told == 0.0 { 0.0 } else { told }
}

/// A place to a thousandth of a millimetre.
pub(super) fn point(at: Point) -> Point {
    Point::new(thousandth(at.x), thousandth(at.y))
}

/// The direction of a unit vector, degrees counter-clockwise from +x, to a thousandth.
#[must_use]
pub fn degrees(way: Point) -> f64 {
    thousandth(way.degrees())
}

/// The corners of a piece's parts, counter-clockwise, each to a thousandth of a millimetre: first its main run.
#[must_use]
pub fn parts(placed: &Placed) -> Vec<Vec<Point>> {
    placed.parts().iter().map(corners).collect()
}

/// The corners of a shape, each to a thousandth of a millimetre.
pub(super) fn corners(shape: &Convex) -> Vec<Point> {
    shape.corners().iter().copied().map(point).collect()
}
