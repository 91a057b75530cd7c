//! Walls drawn one after another from their lengths and inside angles.

use crate::point::Point;
use crate::survey::tolerance::QUARTER;

/// The vector of each wall, clockwise. The first runs toward +x; `corners[i]` is the inside angle, in degrees, at the
/// right-hand end of wall `i`, where the way turns to the right by what is left to 180.
///
/// ```
/// use elbowroom_model::{Point, survey::trace::vectors};
/// let square = vectors(&[2.0, 2.0, 2.0, 2.0], &[90.0; 4]);
/// assert_eq!(square[1], Point::new(0.0, -2.0));
/// ```
#[must_use]
pub fn vectors(lengths: &[f64], corners: &[f64]) -> Vec<Point> {
    let mut heading = 0.0;
    let mut drawn = Vec::with_capacity(lengths.len());
    for (length, corner) in lengths.iter().zip(corners) {
        drawn.push(direction(heading) * *length);
        heading -= 180.0 - corner;
    }
    drawn
}

/// What the inside angles of a closed outline with so many corners add up to, degrees.
#[must_use]
pub fn corner_sum(count: usize) -> f64 {
    180.0 * (count as f64 - 2.0)
}

/// The corners one after another, from the origin along the vectors; as many as there are vectors.
#[must_use]
pub fn corners(vectors: &[Point]) -> Vec<Point> {
    let place = |at: &mut Point, vector: &Point| {
        let here = *at;
        *at = *at + *vector;
        Some(here)
    };
    vectors.iter().scan(Point::default(), place).collect()
}

/// Unit vector at so many degrees counter-clockwise from +x; exact at quarter turns, where rooms mostly are.
fn direction(degrees: f64) -> Point {
    let degrees = degrees.rem_euclid(360.0);
    let quarter = |at: f64| (degrees - at).abs() < QUARTER;
    match () {
        () if quarter(0.0) || quarter(360.0) => Point::new(1.0, 0.0),
        () if quarter(90.0) => Point::new(0.0, 1.0),
        () if quarter(180.0) => Point::new(-1.0, 0.0),
        () if quarter(270.0) => Point::new(0.0, -1.0),
        () => Point::new(degrees.to_radians().cos(), degrees.to_radians().sin()),
    }
}
