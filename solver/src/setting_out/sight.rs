//! Whether a tape can be pulled straight from one place to another in the empty room.

use elbowroom_model::{ItemKind, Point, Room};

use crate::geometry::Convex;

/// What a tape may brush against without being bent, mm.
const BRUSHED: f64 = 2.0;

/// The empty room: its walls, and what stands in it for good.
#[derive(Debug)]
pub(super) struct Sight<'a> {
    room: &'a Room,
    bodies: Vec<Convex>,
}

impl<'a> Sight<'a> {
    /// Of a room.
    pub(super) fn of(room: &'a Room) -> Self {
        let on_walls = room.items.iter().filter_map(|item| {
            let depth = match &item.kind {
                ItemKind::Radiator(radiator) => radiator.depth,
                ItemKind::Fireplace(fire) => fire.depth,
                _ => return None,
            };
            let (left, right) = room.ends(item)?;
            let out = room.wall(item.wall)?.inward() * depth;
            Some(Convex::counter_clockwise([left, right, right + out, left + out]))
        });
        let fixed = room.fixed.iter().map(|fixed| Convex::counter_clockwise(fixed.corners.clone()));
        Self { room, bodies: on_walls.chain(fixed).collect() }
    }

    /// Nothing stands between the two, walls and fixed things alike.
    pub(super) fn is_clear(&self, from: Point, to: Point) -> bool {
        self.is_inside(from, to) && !self.bodies.iter().any(|body| inside(body, from, to) > BRUSHED)
    }

    /// The straight line between the two leaves the room nowhere, whatever stands in it.
    pub(super) fn is_inside(&self, from: Point, to: Point) -> bool {
        let Some(along) = (to - from).unit() else { return true };
        if (to - from).norm() <= 2.0 * BRUSHED {
            return true;
        }
        let (from, to) = (from + along * BRUSHED, to - along * BRUSHED);
        let crossed = self.room.walls.iter().any(|wall| crosses((from, to), (wall.start, wall.end)));
        !crossed && self.holds((from + to) * 0.5)
    }

    /// The place is in the room, or on a wall.
    fn holds(&self, at: Point) -> bool {
        let near = |wall: &elbowroom_model::Wall| {
            let along = (at - wall.start).dot(wall.along()).clamp(0.0, wall.length());
            (wall.point_at(along) - at).norm() <= BRUSHED
        };
        let above = |point: Point| point.y > at.y;
        let crossing = |wall: &&elbowroom_model::Wall| {
            let (start, end) = (wall.start, wall.end);
            above(start) != above(end) && at.x < start.x + (at.y - start.y) / (end.y - start.y) * (end.x - start.x)
        };
        self.room.walls.iter().any(near) || self.room.walls.iter().filter(crossing).count() % 2 == 1
    }
}

/// Whether two stretches cross, each with an end well on either side of the other.
fn crosses((a, b): (Point, Point), (c, d): (Point, Point)) -> bool {
    let sides = |one: Point, other: Point, at: Point| (other - one).unit().map_or(0.0, |along| along.cross(at - one));
    let apart = |one: f64, other: f64| one.min(other) < -1e-6 && one.max(other) > 1e-6;
    apart(sides(a, b, c), sides(a, b, d)) && apart(sides(c, d, a), sides(c, d, b))
}

/// How much of a stretch lies within a body, mm.
fn inside(body: &Convex, from: Point, to: Point) -> f64 {
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    for (normal, support) in body.half_planes() {
        let (start, end) = (normal.dot(from) - support, normal.dot(to) - support);
        if start > 0.0 && end > 0.0 {
            return 0.0;
        }
        if start > 0.0 {
            enters = enters.max(start / (start - end));
        } else if end > 0.0 {
            leaves = leaves.min(start / (start - end));
        }
    }
    (leaves - enters).max(0.0) * (to - from).norm()
}
