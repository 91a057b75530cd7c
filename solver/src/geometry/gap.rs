//! How far two convex shapes are apart, and where.

use elbowroom_model::Point;

use super::tolerance::TOUCH;
use super::{Bounds, Convex, Segment};

/// The least distance of two shapes and the places where it is met.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// Clear distance, mm; 0 where they touch or overlap.
    pub clear: f64,
    /// Nearest place on the first, nearest place on the second. Where they overlap: twice a place in both.
    pub at: [Point; 2],
}

/// The gap of two convex shapes (points and segments included).
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, gap};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// let (sofa, table) = (block(0.0, 0.0, 900.0, 900.0), block(1200.0, 1300.0, 500.0, 500.0));
/// let between = gap(&sofa, &table);
/// assert_eq!(between.clear, 500.0);
/// assert_eq!(between.at, [Point::new(900.0, 900.0), Point::new(1200.0, 1300.0)]);
/// ```
#[must_use]
pub fn gap(first: &Convex, second: &Convex) -> Gap {
    let apart = is_separated(first, second) || is_separated(second, first);
    if !apart && let Some(place) = place_in_both(first, second) {
        return Gap { clear: 0.0, at: [place, place] };
    }
    let mut best = Nearest { squared: f64::INFINITY, at: [first.middle(), second.middle()] };
    // A corner further from the other's box than what was found has nothing nearer.
    let boxes = [Bounds::of(first), Bounds::of(second)];
    let may_be_nearer = |best: &Nearest, other: usize, corner: Point| boxes[other].squared_to(corner) < best.squared;
    for &corner in first.corners() {
        if may_be_nearer(&best, 1, corner) {
            best.keep(corner, nearest_on(second, corner));
        }
    }
    for &corner in second.corners() {
        if may_be_nearer(&best, 0, corner) {
            best.keep(nearest_on(first, corner), corner);
        }
    }
    let clear = best.squared.sqrt();
    if clear < TOUCH {
        return Gap { clear: 0.0, at: [best.at[0], best.at[0]] };
    }
    Gap { clear, at: best.at }
}

/// The gap of a convex shape and a segment.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, Segment, gap_to_segment};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// let wall = Segment::new(Point::new(0.0, 1000.0), Point::new(4000.0, 1000.0));
/// assert_eq!(gap_to_segment(&block(0.0, 0.0, 900.0, 900.0), wall).clear, 100.0);
/// ```
#[must_use]
pub fn gap_to_segment(shape: &Convex, segment: Segment) -> Gap {
    gap(shape, &segment.shape())
}

struct Nearest {
    squared: f64,
    at: [Point; 2],
}

impl Nearest {
    fn keep(&mut self, on_first: Point, on_second: Point) {
        let apart = on_second - on_first;
        let squared = apart.dot(apart);
        if squared < self.squared {
            *self = Self { squared, at: [on_first, on_second] };
        }
    }
}

fn nearest_on(shape: &Convex, point: Point) -> Point {
    let Some(&only) = shape.corners().first() else { return point };
    let mut best = Nearest { squared: f64::INFINITY, at: [point, only] };
    // Of a polygon only those edges count that have the point on their outer side, where any has.
    let polygon = shape.corners().len() >= 3;
    for edge in shape.edges() {
        if !polygon || edge.vector().cross(point - edge.start) < 0.0 {
            best.keep(point, edge.nearest_to(point));
        }
    }
    if best.squared.is_infinite() {
        best.keep(point, only);
        for edge in shape.edges() {
            best.keep(point, edge.nearest_to(point));
        }
    }
    best.at[1]
}

/// Whether an edge of `first` has all of `second` clear on its outer side. A segment has two outer sides.
fn is_separated(first: &Convex, second: &Convex) -> bool {
    let segment = first.corners().len() == 2;
    first.edges().any(|edge| {
        let along = edge.vector();
        let clear = TOUCH * along.dot(along).sqrt();
        let outside = |corner: &Point| along.cross(*corner - edge.start) < -clear;
        let beyond = |corner: &Point| along.cross(*corner - edge.start) > clear;
        second.corners().iter().all(outside) || (segment && second.corners().iter().all(beyond))
    })
}

/// A place that lies in both shapes, where there is one.
fn place_in_both(first: &Convex, second: &Convex) -> Option<Point> {
    for (shape, other) in [(first, second), (second, first)] {
        let inside = other.corners().iter().find(|corner| holds(shape, **corner));
        if let Some(&place) = inside {
            return Some(place);
        }
    }
    let crossing = |edge: Segment| {
        let met = second.edges().filter_map(|other| edge.crossing(other)).find(|crossing| crossing.is_on_both())?;
        Some(edge.at(met.of_first))
    };
    first.edges().find_map(crossing)
}

/// Whether a polygon holds the point, its edges included.
fn holds(shape: &Convex, point: Point) -> bool {
    shape.corners().len() >= 3 && shape.edges().all(|edge| edge.vector().cross(point - edge.start) >= 0.0)
}
