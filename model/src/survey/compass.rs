//! The compass rule of surveying: what fails to close is spread over the legs in proportion to their lengths.

use crate::point::Point;

/// Up to this share of the girth is spread; beyond it something was mismeasured.
pub const MOST_SPREAD: f64 = 0.01;

/// A traverse as closed.
#[derive(Debug, Clone, PartialEq)]
pub struct Closed {
    /// The legs as corrected; they add up to nothing.
    pub legs: Vec<Point>,
    /// End minus start of the legs as measured.
    pub misclosure: Point,
    /// Sum of the legs' lengths as measured.
    pub girth: f64,
}

/// Closes the legs: each takes the part of the misclosure that its length is of the girth.
///
/// ```
/// use elbowroom_model::{Point, survey::compass::close};
/// let closed = close(&[Point::new(3.0, 0.0), Point::new(0.0, -1.0), Point::new(-2.92, 0.0), Point::new(0.0, 1.0)]);
/// assert!((closed.misclosure.x - 0.08).abs() < 1e-12);
/// ```
#[must_use]
pub fn close(legs: &[Point]) -> Closed {
    let misclosure = legs.iter().fold(Point::default(), |sum, leg| sum + *leg);
    let girth: f64 = legs.iter().map(|leg| leg.norm()).sum();
    let share = |leg: &Point| if girth > 0.0 { leg.norm() / girth } else { 0.0 };
    let legs = legs.iter().map(|leg| *leg - misclosure * share(leg)).collect();
    Closed { legs, misclosure, girth }
}

impl Closed {
    /// How much of the girth the misclosure is.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        if self.girth > 0.0 { self.misclosure.norm() / self.girth } else { 0.0 }
    }

    /// Leg by leg, the length of the vector that closing added to it; `measured` are the legs as measured.
    #[must_use]
    pub fn corrections(&self, measured: &[Point]) -> Vec<f64> {
        self.legs.iter().zip(measured).map(|(closed, leg)| (*closed - *leg).norm()).collect()
    }
}
