//! A mouth as the disc meets it, and the doorstep before it.

use elbowroom_model::Point;

use crate::geometry::Convex;
use crate::verify::tolerance::{ON_LINE, PAST};

/// A stretch of straight edge that is entered from before.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::verify) struct Gate {
    /// Its two ends.
    pub(in crate::verify) ends: [Point; 2],
    /// Unit vector out of its front.
    pub(in crate::verify) out: Point,
}

impl Gate {
    pub(in crate::verify) fn length(&self) -> f64 {
        (self.ends[1] - self.ends[0]).norm()
    }

    /// A place on it, as a share of the way between its ends, `before` it.
    pub(super) fn place(&self, share: f64, before: f64) -> Point {
        self.ends[0] + (self.ends[1] - self.ends[0]) * share + self.out * before
    }

    /// The stretch itself: it stops whoever comes from behind.
    pub(super) fn stretch(&self) -> Vec<Point> {
        self.ends.to_vec()
    }

    /// Where the centre of a disc stands straight before the mouth and near enough to touch its line.
    pub(super) fn doorstep(&self, radius: f64) -> Convex {
        let out = self.out * (radius + PAST);
        let [first, second] = self.ends;
        Convex::counter_clockwise([first, second, second + out, first + out])
    }

    /// The part of a convex shape that lies before the mouth's line; `None` where nothing does.
    pub(super) fn part_before(&self, corners: &[Point]) -> Option<Vec<Point>> {
        let depth = |corner: Point| (corner - self.ends[0]).dot(self.out);
        if corners.iter().all(|&corner| depth(corner) <= ON_LINE) {
            return None;
        }
        let mut part = Vec::with_capacity(corners.len() + 1);
        for (i, &corner) in corners.iter().enumerate() {
            let next = corners[(i + 1) % corners.len()];
            let (from, to) = (depth(corner), depth(next));
            if from >= 0.0 {
                part.push(corner);
            }
            // A segment is walked there and back: its one crossing is taken on the way there.
            let back = corners.len() == 2 && i == 1;
            if from * to < 0.0 && !back {
                part.push(corner + (next - corner) * (from / (from - to)));
            }
        }
        Some(part)
    }
}
