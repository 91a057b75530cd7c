//! The floor before a fixed thing that people use: a sink, a counter, a wardrobe.

use crate::point::Point;
use crate::ring;
use crate::room::{FixedId, Room};

/// How far out of an edge one looks whether floor is there, mm: a hand's breadth.
const JUST_OUT: f64 = 100.0;

/// The floor before the longest free edge of a fixed thing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsedFloor {
    /// One end of the edge, plan coordinates, mm.
    pub from: Point,
    /// Its other end.
    pub to: Point,
    /// Unit vector away from the thing.
    pub out: Point,
    /// How deep the floor is that stays clear, mm.
    pub depth: f64,
}

impl UsedFloor {
    /// The same before an edge that lies further out, mm: a thing that is measured within so much may reach so far.
    #[must_use]
    pub fn moved_out(self, by: f64) -> Self {
        let shift = self.out * by;
        Self { from: self.from + shift, to: self.to + shift, ..self }
    }

    /// Its corners.
    #[must_use]
    pub fn corners(&self) -> [Point; 4] {
        let out = self.out * self.depth;
        [self.from, self.to, self.to + out, self.from + out]
    }
}

impl Room {
    /// The floor that stays clear before a fixed thing; `None` where nobody uses it, or no edge of it is free.
    #[must_use]
    pub fn used_floor(&self, id: FixedId) -> Option<UsedFloor> {
        let thing = self.fixed.get(id.0)?;
        let depth = thing.use_depth.filter(|depth| *depth > 0.0)?;
        let ends = thing.corners.iter().zip(thing.corners.iter().cycle().skip(1));
        let edge = |(from, to): (&Point, &Point)| {
            let out = (*to - *from).unit()?.right();
            let at = (*from + *to) * 0.5 + out * JUST_OUT;
            self.is_floor(at, id).then_some(UsedFloor { from: *from, to: *to, out, depth })
        };
        let length = |floor: &UsedFloor| (floor.to - floor.from).norm();
        // Of edges that are as long the first.
        let longest = |best: UsedFloor, next: UsedFloor| if length(&next) > length(&best) { next } else { best };
        ends.filter_map(edge).reduce(longest)
    }

    /// The fixed things that people use, each with the floor before it, in the file's order.
    pub fn used_floors(&self) -> impl Iterator<Item = (FixedId, UsedFloor)> {
        (0..self.fixed.len()).map(FixedId).filter_map(|id| Some((id, self.used_floor(id)?)))
    }

    /// Whether a place lies in the room and in no other fixed thing than `but`.
    fn is_floor(&self, at: Point, but: FixedId) -> bool {
        let outline: Vec<Point> = self.walls.iter().map(|wall| wall.start).collect();
        let others = self.fixed.iter().enumerate().filter(|(place, _)| *place != but.0);
        ring::holds(&outline, at) && !others.into_iter().any(|(_, other)| ring::holds(&other.corners, at))
    }
}
