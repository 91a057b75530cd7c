//! A stretch of edge, and how far ahead of it something lies.

use elbowroom_model::{Brief, Point, WallItem};

use crate::geometry::Convex;
use crate::verify::tolerance::{COMFORT, SLACK};

/// A stretch of edge that one looks out from: a front, a back, a doorway.
#[derive(Debug, Clone, Copy)]
pub(super) struct Edge {
    pub(super) middle: Point,
    /// Unit vector along it.
    pub(super) along: Point,
    /// Unit vector out of it.
    pub(super) out: Point,
    /// Its length, mm.
    pub(super) length: f64,
}

/// From where to where something reaches, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Reach {
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Reach {
    /// How near to 0 it comes.
    pub(super) fn nearest(self) -> f64 {
        self.from.max(-self.to).max(0.0)
    }

    pub(super) fn length(self) -> f64 {
        self.to - self.from
    }
}

impl Edge {
    /// Between two ends, looking toward `out`.
    pub(super) fn between(first: Point, second: Point, out: Point) -> Self {
        let along = out.left();
        Self { middle: (first + second) * 0.5, along, out, length: (second - first).dot(along).abs() }
    }

    /// What an item takes up of its wall as moved in, looking into the room.
    pub(super) fn of_item(brief: &Brief, item: &WallItem) -> Option<Self> {
        let wall = brief.room.wall(item.wall)?;
        let in_by = wall.inward() * brief.room.measured_within;
        let at = |along: f64| wall.point_at(along) + in_by;
        Some(Self::between(at(item.at), at(item.at + item.width), wall.inward()))
    }

    /// The same less `by` at each end; `None` where nothing is left.
    pub(super) fn less(self, by: f64) -> Option<Self> {
        let length = self.length - 2.0 * by;
        (length > 0.0).then_some(Self { length, ..self })
    }

    /// The floor so deep before it.
    pub(super) fn floor(&self, depth: f64) -> Convex {
        let (half, out) = (self.along * (self.length / 2.0), self.out * depth);
        let [first, second] = [self.middle - half, self.middle + half];
        Convex::counter_clockwise([first, second, second + out, first + out])
    }

    /// How far ahead of it a place lies.
    pub(super) fn ahead(&self, place: Point) -> f64 {
        (place - self.middle).dot(self.out)
    }

    /// How far along it from its middle a place lies.
    pub(super) fn aside(&self, place: Point) -> f64 {
        (place - self.middle).dot(self.along)
    }

    /// The nearest that a shape comes ahead of it over its length, mm; `None` where it lies beside it or behind it.
    pub(super) fn nearest_ahead(&self, shape: &Convex) -> Option<f64> {
        let within = self.strip(shape, Reach { from: -COMFORT, to: f64::INFINITY });
        let nearest = within.iter().map(|place| self.ahead(*place)).min_by(f64::total_cmp);
        nearest.map(|clear| clear.max(0.0))
    }

    /// The nearest that any of the shapes comes.
    pub(super) fn nearest_of<'s>(&self, shapes: impl IntoIterator<Item = &'s Convex>) -> Option<f64> {
        shapes.into_iter().filter_map(|shape| self.nearest_ahead(shape)).min_by(f64::total_cmp)
    }

    /// From where to where along it a shape reaches that lies so far ahead of it, over its length.
    pub(super) fn covered(&self, shape: &Convex, ahead: Reach) -> Option<Reach> {
        let asides = self.strip(shape, ahead).into_iter().map(|place| self.aside(place));
        let none = Reach { from: f64::INFINITY, to: f64::NEG_INFINITY };
        let all = asides.fold(none, |all, aside| Reach { from: all.from.min(aside), to: all.to.max(aside) });
        (all.from <= all.to).then_some(all)
    }

    /// The corners of the part of a shape that lies so far ahead of it, over its length less the slack.
    fn strip(&self, shape: &Convex, ahead: Reach) -> Vec<Point> {
        let (half, middle) = (self.length / 2.0 - SLACK, self.middle);
        let line = |normal: Point, by: f64| Line { normal, support: middle.dot(normal) + by };
        let mut part = shape.corners().to_vec();
        for line in [line(self.along, half), line(-self.along, half), line(-self.out, -ahead.from)] {
            part = line.cut(&part);
        }
        if ahead.to.is_finite() { line(self.out, ahead.to).cut(&part) } else { part }
    }
}

/// All that lies on one side of a line.
struct Line {
    normal: Point,
    support: f64,
}

impl Line {
    /// The part of a ring of corners on this side (two corners are a segment there and back).
    fn cut(&self, ring: &[Point]) -> Vec<Point> {
        let past = |place: Point| self.normal.dot(place) - self.support;
        let mut part = Vec::new();
        for (i, &start) in ring.iter().enumerate() {
            let end = ring[(i + 1) % ring.len()];
            let (from, to) = (past(start), past(end));
            if from <= 0.0 {
                part.push(start);
            }
            if (from < 0.0 && to > 0.0) || (from > 0.0 && to < 0.0) {
                part.push(start + (end - start) * (from / (from - to)));
            }
        }
        part
    }
}

#[cfg(test)]
mod tests {
    use super::{Edge, Reach};
    use crate::geometry::Convex;
    use elbowroom_model::Point;

    #[test]
    fn what_lies_ahead_of_an_edge_is_measured_over_its_length_alone() {
        let at = Point::new;
        let edge = Edge::between(at(0.0, 0.0), at(1000.0, 0.0), at(0.0, -1.0));
        let block = |x: f64, y: f64| {
            Convex::counter_clockwise([at(x, y), at(x + 400.0, y), at(x + 400.0, y - 400.0), at(x, y - 400.0)])
        };
        assert_eq!(edge.nearest_ahead(&block(300.0, -350.0)), Some(350.0));
        assert_eq!(edge.nearest_ahead(&block(1000.0, -350.0)), None, "beside it");
        assert_eq!(edge.nearest_ahead(&block(300.0, 900.0)), None, "behind it");
        // A wall that runs off obliquely comes nearest where the edge ends.
        let wall = Convex::counter_clockwise([at(-1000.0, -1000.0), at(2000.0, -1300.0)]);
        let nearest = edge.nearest_ahead(&wall).unwrap();
        assert!((nearest - 1100.05).abs() < 1e-6, "{nearest}");
        let covered = edge.covered(&block(300.0, -350.0), Reach { from: 0.0, to: 350.5 });
        assert_eq!(covered, Some(Reach { from: -200.0, to: 200.0 }));
        assert_eq!(edge.covered(&block(300.0, -351.0), Reach { from: 0.0, to: 350.5 }), None);
    }
}
