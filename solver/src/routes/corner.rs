//! The corners that a shortest walk can turn at.

use elbowroom_model::Point;

use smallvec::SmallVec;

use super::ShapeId;
use super::stop::Stop;
use super::tolerance::{CONE, SAME_PLACE};

/// From the first direction counter-clockwise to the second, at most half a turn.
type Cone = [Point; 2];

/// A place where corners of stops lie, and the directions from it in which it is the nearest place of each of these stops.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Corner {
    pub(super) at: Point,
    /// The directions are in all of these; none: all round.
    cones: SmallVec<[Cone; 2]>,
    is_of_walls: bool,
}

impl Corner {
    /// Whether it is the nearest place of its stops for what lies in this direction from it.
    pub(super) fn faces(&self, direction: Point) -> bool {
        self.cones.iter().all(|[from, to]| from.cross(direction) >= -CONE && direction.cross(*to) >= -CONE)
    }
}

/// Every place that a cord can turn at among `stops`. Nobody turns at a corner at which the `walls` (clockwise) turn toward
/// the room.
pub(super) fn corners(walls: &[Stop], stops: &[Stop]) -> Vec<Corner> {
    let inner = inner_corners(walls);
    let mut found: Vec<Corner> = Vec::new();
    for stop in stops {
        let is_wall = matches!(stop.id, ShapeId::Wall(_));
        for (at, cone) in of_stop(stop) {
            // What else lies at one place may be cut in two there, and then does not always count.
            let here = |corner: &&mut Corner| {
                is_same(corner.at, at) && (is_wall && corner.is_of_walls || corner.cones.is_empty())
            };
            match found.iter_mut().find(here) {
                // A mouth's end stops whoever comes near, wherever from.
                Some(corner) if corner.cones.is_empty() => {}
                Some(corner) => corner.cones.extend(cone),
                None if is_wall && inner.iter().any(|inner| is_same(*inner, at)) => {}
                None => found.push(Corner { at, cones: cone.into_iter().collect(), is_of_walls: is_wall }),
            }
        }
    }
    found
}

fn is_same(one: Point, other: Point) -> bool {
    (one.x - other.x).abs() < SAME_PLACE && (one.y - other.y).abs() < SAME_PLACE
}

/// The corners at which the walls turn toward the room.
fn inner_corners(walls: &[Stop]) -> Vec<Point> {
    let inner = |(before, after): (&Stop, &Stop)| {
        let (&[start, at], &[next, end]) = (before.shape.corners(), after.shape.corners()) else { return None };
        (is_same(at, next) && (at - start).cross(end - next) < 0.0).then_some(at)
    };
    walls.iter().zip(walls.iter().cycle().skip(1)).filter_map(inner).collect()
}

/// All corners of a stop, each with the directions in which it is the stop's nearest place; `None`: all round.
fn of_stop(stop: &Stop) -> Vec<(Point, Option<Cone>)> {
    let ring = stop.shape.corners();
    match *ring {
        [] => Vec::new(),
        [at] => vec![(at, None)],
        [start, end] => {
            let Some(along) = (end - start).unit() else { return vec![(start, None)] };
            vec![(start, Some([along.left(), along.right()])), (end, Some([along.right(), along.left()]))]
        }
        _ => {
            let count = ring.len();
            let normal = |i: usize| (ring[(i + 1) % count] - ring[i % count]).right().unit();
            let corner = |i: usize| Some((ring[i], Some([normal(i + count - 1)?, normal(i)?])));
            (0..count).filter_map(corner).collect()
        }
    }
}
