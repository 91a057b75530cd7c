//! The corners that a shortest walk can turn at.

use elbowroom_model::Point;

use super::stop::Stop;

/// Slack of the sides of a corner's cone, as a sine.
const SLACK: f64 = 1e-9;

/// A corner of a stop, and the directions from it in which it is the nearest place of its stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Corner {
    pub(super) at: Point,
    /// From the first counter-clockwise to the second, at most half a turn; `None`: all round.
    cone: Option<[Point; 2]>,
}

impl Corner {
    /// Whether it is the nearest place of its stop for what lies in this direction from it.
    pub(super) fn faces(&self, direction: Point) -> bool {
        let inside = |[from, to]: [Point; 2]| from.cross(direction) >= -SLACK && direction.cross(to) >= -SLACK;
        self.cone.is_none_or(inside)
    }
}

/// All corners of a stop.
pub(super) fn corners(stop: &Stop) -> Vec<Corner> {
    let ring = stop.shape.corners();
    match *ring {
        [] => Vec::new(),
        [at] => vec![Corner { at, cone: None }],
        [start, end] => {
            let Some(along) = (end - start).unit() else { return vec![Corner { at: start, cone: None }] };
            vec![
                Corner { at: start, cone: Some([along.left(), along.right()]) },
                Corner { at: end, cone: Some([along.right(), along.left()]) },
            ]
        }
        _ => {
            let count = ring.len();
            let normal = |i: usize| (ring[(i + 1) % count] - ring[i % count]).right().unit();
            let corner = |i: usize| Some(Corner { at: ring[i], cone: Some([normal(i + count - 1)?, normal(i)?]) });
            (0..count).filter_map(corner).collect()
        }
    }
}
