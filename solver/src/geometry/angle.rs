//! The angle of a corner.

use elbowroom_model::Point;

/// The angle at `at` between the ways to `one` and to `other`, radians, 0 to pi.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::angle_at;
/// let (corner, ahead, aside) = (Point::new(500.0, 0.0), Point::new(900.0, 0.0), Point::new(500.0, 700.0));
/// assert_eq!(angle_at(corner, ahead, aside), std::f64::consts::FRAC_PI_2);
/// assert_eq!(angle_at(corner, aside, ahead), std::f64::consts::FRAC_PI_2);
/// ```
#[must_use]
pub fn angle_at(at: Point, one: Point, other: Point) -> f64 {
    (one - at).turn_to(other - at).abs()
}
