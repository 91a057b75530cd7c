//! Whether a tape can be pulled straight from one place to another in the empty room.

use elbowroom_model::{ItemKind, Point, Room, Wall, ring};

use super::tolerance::BRUSHED;
use crate::geometry::{Convex, Crossing, Segment};

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
        let fixed = room
            .fixed
            .iter()
            .filter(|fixed| fixed.step().is_none())
            .map(|fixed| Convex::counter_clockwise(fixed.corners.clone()));
        Self { room, bodies: on_walls.chain(fixed).collect() }
    }

    /// Nothing stands between the two, walls and fixed things alike.
    pub(super) fn is_clear(&self, from: Point, to: Point) -> bool {
        self.is_inside(from, to) && !self.bodies.iter().any(|body| Segment::new(from, to).length_inside(body) > BRUSHED)
    }

    /// The straight line between the two leaves the room nowhere, whatever stands in it.
    pub(super) fn is_inside(&self, from: Point, to: Point) -> bool {
        let Some(along) = (to - from).unit() else { return true };
        if (to - from).norm() <= 2.0 * BRUSHED {
            return true;
        }
        let (from, to) = (from + along * BRUSHED, to - along * BRUSHED);
        let way = Segment::new(from, to);
        let crosses = |wall: &Wall| way.crossing(wall.into()).is_some_and(Crossing::is_proper);
        let crossed = self.room.walls.iter().any(crosses);
        !crossed && self.holds((from + to) * 0.5)
    }

    /// The place is in the room, or on a wall.
    fn holds(&self, at: Point) -> bool {
        let near = |wall: &Wall| Segment::from(wall).distance_to(at) <= BRUSHED;
        self.room.walls.iter().any(near) || ring::holds(&self.room.outline(), at)
    }
}
