//! A convex shape grown by a radius.

use elbowroom_model::Point;

use crate::geometry::Segment;
use crate::verify::tolerance::ON_ARC;

/// All places nearer than `radius` to a convex shape.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Rounded {
    pub(super) arcs: Vec<Arc>,
    pub(super) lines: Vec<Segment>,
    /// Bounds: least, greatest.
    pub(super) x: (f64, f64),
    pub(super) y: (f64, f64),
}

/// The stretch of circle about a corner, between the edges that meet there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Arc {
    pub(super) centre: Point,
    pub(super) radius: f64,
    /// Directions of the edge that comes in and of the edge that goes out; `None` about a lone point.
    edges: Option<(Point, Point)>,
}

impl Arc {
    /// Whether a place on the circle lies on the stretch that bounds the shape.
    pub(super) fn holds(&self, place: Point) -> bool {
        let from = place - self.centre;
        self.edges.is_none_or(|(comes, goes)| from.dot(comes) >= -ON_ARC && from.dot(goes) <= ON_ARC)
    }
}

impl Rounded {
    /// The shape with these corners, counter-clockwise (one is a point, two a segment), grown by `radius`; 0 leaves it sharp.
    pub(super) fn new(corners: &[Point], radius: f64) -> Self {
        let count = corners.len();
        let edge = |i: usize| (corners[(i + 1) % count] - corners[i]).unit();
        let mut shape = Self {
            arcs: Vec::with_capacity(count),
            lines: Vec::with_capacity(count),
            x: (f64::INFINITY, f64::NEG_INFINITY),
            y: (f64::INFINITY, f64::NEG_INFINITY),
        };
        for (i, &corner) in corners.iter().enumerate() {
            shape.x = (shape.x.0.min(corner.x - radius), shape.x.1.max(corner.x + radius));
            shape.y = (shape.y.0.min(corner.y - radius), shape.y.1.max(corner.y + radius));
            if radius > 0.0 {
                let edges = edge((i + count - 1) % count).zip(edge(i));
                shape.arcs.push(Arc { centre: corner, radius, edges });
            }
            if let Some(along) = edge(i) {
                let out = along.right() * radius;
                shape.lines.push(Segment::new(corner + out, corners[(i + 1) % count] + out));
            }
        }
        shape
    }

    /// From where to where a vertical line lies in it.
    pub(super) fn chord(&self, x: f64) -> Option<(f64, f64)> {
        if x <= self.x.0 || x >= self.x.1 {
            return None;
        }
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for arc in &self.arcs {
            let across = x - arc.centre.x;
            let squared = arc.radius * arc.radius - across * across;
            if squared > 0.0 {
                let half = squared.sqrt();
                low = low.min(arc.centre.y - half);
                high = high.max(arc.centre.y + half);
            }
        }
        for Segment { start, end } in &self.lines {
            let share = (x - start.x) / (end.x - start.x);
            if (0.0..=1.0).contains(&share) {
                let y = start.y + (end.y - start.y) * share;
                low = low.min(y);
                high = high.max(y);
            }
        }
        (low < high).then_some((low, high))
    }

    /// Whether the place lies inside it by more than `hair`.
    pub(super) fn covers(&self, place: Point, hair: f64) -> bool {
        place.y > self.y.0
            && place.y < self.y.1
            && self.chord(place.x).is_some_and(|(low, high)| place.y > low + hair && place.y < high - hair)
    }

    /// Whether the bounds of two have a place in common.
    pub(super) fn near(&self, other: &Self) -> bool {
        self.x.0 <= other.x.1 && other.x.0 <= self.x.1 && self.y.0 <= other.y.1 && other.y.0 <= self.y.1
    }
}
