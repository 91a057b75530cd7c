//! Closed rings of corners: their area, their middle, and whether they hold a place.

use crate::point::Point;

/// Area of a simple ring by the shoelace rule, in its unit squared: positive where the corners run counter-clockwise.
///
/// ```
/// use elbowroom_model::{Point, ring};
/// let rug = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.5), (0.0, 1.5)].map(|(x, y)| Point::new(x, y));
/// assert_eq!(ring::signed_area(&rug), 3.0);
/// ```
#[must_use]
pub fn signed_area(ring: &[Point]) -> f64 {
    let Some(&first) = ring.first() else { return 0.0 };
    // Taken from the first corner, so that a far origin costs no digits.
    let fan = ring.windows(2).map(|pair| (pair[0] - first).cross(pair[1] - first));
    0.5 * fan.sum::<f64>()
}

/// Mean of the corners: of a convex ring a place inside it. The origin where there are none.
///
/// ```
/// use elbowroom_model::{Point, ring};
/// let rug = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.5), (0.0, 1.5)].map(|(x, y)| Point::new(x, y));
/// assert_eq!(ring::middle(&rug), Point::new(1.0, 0.75));
/// ```
#[must_use]
pub fn middle(ring: &[Point]) -> Point {
    let sum = ring.iter().fold(Point::default(), |sum, corner| sum + *corner);
    sum * (1.0 / ring.len().max(1) as f64)
}

/// Centre of area of a simple ring, whichever way its corners run; its first corner where it has no area.
///
/// ```
/// use elbowroom_model::{Point, ring};
/// let wedge = [(0.0, 0.0), (3.0, 0.0), (0.0, 3.0)].map(|(x, y)| Point::new(x, y));
/// assert_eq!(ring::centre_of_area(&wedge), Point::new(1.0, 1.0));
/// ```
#[must_use]
pub fn centre_of_area(ring: &[Point]) -> Point {
    let first = ring.first().copied().unwrap_or_default();
    let (mut sum, mut area) = (Point::default(), 0.0);
    for pair in ring.windows(2) {
        let (a, b) = (pair[0] - first, pair[1] - first);
        let twice = a.cross(b);
        area += twice;
        sum = sum + (a + b) * (twice / 3.0);
    }
    if area == 0.0 { first } else { first + sum * (1.0 / area) }
}

/// Whether the ring holds the place: a way from it level to the right crosses the ring an odd number of times.
///
/// ```
/// use elbowroom_model::{Point, ring};
/// let rug = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.5), (0.0, 1.5)].map(|(x, y)| Point::new(x, y));
/// assert!(ring::holds(&rug, Point::new(1.0, 1.0)));
/// assert!(!ring::holds(&rug, Point::new(-1.0, 1.0)));
/// ```
#[must_use]
pub fn holds(ring: &[Point], place: Point) -> bool {
    legs(ring).filter(|(from, to)| passes_right_of(place, *from, *to)).count() % 2 == 1
}

/// The stretches of a ring, each from one corner to the next, the last back to the first.
pub(crate) fn legs(ring: &[Point]) -> impl Iterator<Item = (Point, Point)> + Clone + '_ {
    ring.iter().copied().zip(ring.iter().copied().cycle().skip(1))
}

/// From a place to a stretch, mm.
pub(crate) fn distance(place: Point, from: Point, to: Point) -> f64 {
    let leg = to - from;
    let Some(along) = leg.unit() else { return (place - from).norm() };
    let at = (place - from).dot(along).max(0.0).min(leg.norm());
    (place - (from + along * at)).norm()
}

/// Whether a leg crosses the ray that runs from `place` level to the right. Half open in y, so that a path that touches the
/// ray's line at a bend is counted once.
#[must_use]
pub fn passes_right_of(place: Point, from: Point, to: Point) -> bool {
    if (from.y > place.y) == (to.y > place.y) {
        return false;
    }
    let (low, high) = if from.y < to.y { (from, to) } else { (to, from) };
    (high - low).cross(place - low) > 0.0
}
