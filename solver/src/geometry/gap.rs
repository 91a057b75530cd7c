//! How far two convex shapes are apart, and where.

use elbowroom_model::Point;

use super::Convex;

/// The least distance of two shapes and the places where it is met.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// Clear distance, mm; 0 where they touch or overlap.
    pub clear: f64,
    /// Nearest place on the first, nearest place on the second. Where they overlap: twice a place in both.
    pub at: [Point; 2],
}

/// The gap of two convex shapes (points and segments included).
#[must_use]
pub fn gap(first: &Convex, second: &Convex) -> Gap {
    if let Some(place) = place_in_both(first, second) {
        return Gap { clear: 0.0, at: [place, place] };
    }
    let mut best = Gap { clear: f64::INFINITY, at: [first.middle(), second.middle()] };
    for &corner in first.corners() {
        let near = nearest_on(second, corner);
        keep_nearer(&mut best, corner, near);
    }
    for &corner in second.corners() {
        let near = nearest_on(first, corner);
        keep_nearer(&mut best, near, corner);
    }
    best
}

/// The gap of a convex shape and a segment.
#[must_use]
pub fn gap_to_segment(shape: &Convex, start: Point, end: Point) -> Gap {
    gap(shape, &Convex::counter_clockwise(vec![start, end]))
}

/// The place on the segment that lies nearest to `point`.
#[must_use]
pub fn nearest_on_segment(start: Point, end: Point, point: Point) -> Point {
    let along = end - start;
    let squared = along.dot(along);
    if squared <= 0.0 {
        return start;
    }
    start + along * ((point - start).dot(along) / squared).clamp(0.0, 1.0)
}

fn keep_nearer(best: &mut Gap, on_first: Point, on_second: Point) {
    let clear = (on_second - on_first).norm();
    if clear < best.clear {
        *best = Gap { clear, at: [on_first, on_second] };
    }
}

fn nearest_on(shape: &Convex, point: Point) -> Point {
    let Some(&only) = shape.corners().first() else { return point };
    let mut best = (only, (only - point).norm());
    for (start, end) in shape.edges() {
        let near = nearest_on_segment(start, end, point);
        let distance = (near - point).norm();
        if distance < best.1 {
            best = (near, distance);
        }
    }
    best.0
}

/// A place that lies in both shapes, where there is one.
fn place_in_both(first: &Convex, second: &Convex) -> Option<Point> {
    for (shape, other) in [(first, second), (second, first)] {
        if shape.corners().len() >= 3 {
            let inside = other.corners().iter().find(|corner| shape.depth_of(**corner) >= 0.0);
            if let Some(&place) = inside {
                return Some(place);
            }
        }
    }
    let crossing = |edge| second.edges().find_map(|other| segments_cross(edge, other));
    first.edges().find_map(crossing)
}

/// Where two segments meet, where they do and are not parallel.
fn segments_cross((a, b): (Point, Point), (c, d): (Point, Point)) -> Option<Point> {
    let (along, other) = (b - a, d - c);
    let turn = along.cross(other);
    if turn == 0.0 {
        return None;
    }
    let t = (c - a).cross(other) / turn;
    let s = (c - a).cross(along) / turn;
    ((0.0..=1.0).contains(&t) && (0.0..=1.0).contains(&s)).then(|| a + along * t)
}
