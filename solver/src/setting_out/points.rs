//! What a tape can start from: the corners of the room, and the jambs of its doorways.

use elbowroom_model::{ItemId, ItemKind, Point, Room, WallId};

use super::tolerance::STRAIGHT_WITHIN;

/// A place that is there before any furniture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FixedPoint {
    /// Where, plan coordinates.
    pub place: Point,
    /// What it is.
    pub mark: Mark,
}

/// What a fixed point is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mark {
    /// The corner at the right-hand end of one wall and the left-hand end of the next.
    Corner {
        /// The wall that ends there, as one faces it.
        ends: WallId,
        /// The wall that starts there.
        starts: WallId,
    },
    /// A jamb of a doorway, as one faces it from inside.
    Jamb {
        /// The door or opening.
        item: ItemId,
        /// The left one.
        left: bool,
        /// The wall that it is in.
        wall: WallId,
        /// From that wall's left-hand end, mm.
        along: f64,
    },
}

/// All points of a room, and which of them are used.
#[derive(Debug)]
pub(super) struct Points {
    all: Vec<(FixedPoint, Option<WallId>)>,
    corners: usize,
    /// Jambs that are used, in the order of their first use; `all` by place.
    used: Vec<usize>,
    straight: Vec<bool>,
}

impl Points {
    /// Of a room.
    pub(super) fn of(room: &Room) -> Self {
        let count = room.walls.len();
        let corner = |place: usize| {
            let mark = Mark::Corner { ends: WallId((place + count - 1) % count), starts: WallId(place) };
            (FixedPoint { place: room.walls[place].start, mark }, None)
        };
        let mut all: Vec<_> = (0..count).map(corner).collect();
        let is_doorway = |kind: &ItemKind| matches!(kind, ItemKind::Door(_) | ItemKind::Opening(_));
        for (id, item) in room.items().filter(|(_, item)| is_doorway(&item.kind)) {
            let Some((left, right)) = room.ends(item) else { continue };
            for (place, left, along) in [(left, true, item.at), (right, false, item.at + item.width)] {
                let mark = Mark::Jamb { item: id, left, wall: item.wall, along };
                all.push((FixedPoint { place, mark }, Some(item.wall)));
            }
        }
        let turn = |place: usize| {
            let (before, after) = (room.walls[(place + count - 1) % count].along(), room.walls[place].along());
            before.turn_to(after).abs().to_degrees()
        };
        let straight = (0..count).map(|place| turn(place) < STRAIGHT_WITHIN).collect();
        Self { all, corners: count, used: Vec::new(), straight }
    }

    /// Every point that a tape can find, by its place in the whole list.
    pub(super) fn findable(&self) -> impl Iterator<Item = (usize, &FixedPoint)> {
        let points = self.all.iter().enumerate().map(|(place, (point, _))| (place, point));
        points.filter(|(place, _)| !self.straight.get(*place).copied().unwrap_or(false))
    }

    /// The nearest corners that a tape can find at the left and at the right end of the straight run that a wall is part of.
    pub(super) fn ends_of_run(&self, wall: WallId) -> [usize; 2] {
        let count = self.corners;
        let is_straight = |corner: usize| self.straight[corner % count];
        let left = (0..count).map(|back| (wall.0 + count - back) % count).find(|corner| !is_straight(*corner));
        let right = (1..=count).map(|on| (wall.0 + on) % count).find(|corner| !is_straight(*corner));
        [left.unwrap_or(wall.0), right.unwrap_or((wall.0 + 1) % count)]
    }

    /// A point by its place in the whole list.
    pub(super) fn at(&self, place: usize) -> Option<Point> {
        self.all.get(place).map(|(point, _)| point.place)
    }

    /// The walls that a point lies on.
    pub(super) fn walls_of(&self, place: usize) -> Vec<WallId> {
        match self.all.get(place) {
            Some((_, Some(wall))) => vec![*wall],
            Some((_, None)) => vec![WallId((place + self.corners - 1) % self.corners), WallId(place)],
            None => Vec::new(),
        }
    }

    /// Notes that a point is used, and says its place among those that are told.
    pub(super) fn told(&mut self, place: usize) -> usize {
        if place < self.corners {
            return place;
        }
        let known = self.used.iter().position(|used| *used == place);
        self.corners
            + known.unwrap_or_else(|| {
                self.used.push(place);
                self.used.len() - 1
            })
    }

    /// The points that are told: every corner, then the jambs that are used.
    pub(super) fn into_used(self) -> Vec<FixedPoint> {
        let all = (0..self.corners).chain(self.used);
        all.filter_map(|place| self.all.get(place).map(|(point, _)| *point)).collect()
    }
}
