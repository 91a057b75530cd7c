//! What doors take of the floor: what a leaf sweeps, where it rests, what folds into the room.

use std::f64::consts::FRAC_PI_2;

use elbowroom_model::{Door, Hinge, ItemId, Point, Swings};

use super::wall_place::WallPlace;
use crate::geometry::Convex;

/// How thick a leaf is, mm; 35 to 45 are usual. Common practice, no source. It lies on the side away from the doorway, so
/// that what is clear of the doorway is what was measured.
const LEAF: f64 = 40.0;

/// A leaf that opens to this or more lies at its wall and stops nobody, degrees.
const AT_ITS_WALL: f64 = 175.0;

/// What a leaf sweeps, or a part of it: a sector of a disc, of a quarter turn at most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swing {
    /// The door.
    pub item: ItemId,
    /// The hinge, on the wall as moved in.
    pub hinge: Point,
    /// Unit vector from the hinge along the leaf where the sector begins; of the first quarter, along the closed leaf.
    pub along: Point,
    /// Unit vector square to that, the way the leaf turns.
    pub inward: Point,
    /// Width of the leaf, mm.
    pub radius: f64,
    /// How far it turns, radians; a quarter turn at most.
    pub turn: f64,
    /// It follows on the first quarter of the same leaf.
    pub goes_on: bool,
}

impl Swing {
    /// Unit vector along the leaf where the sector ends.
    #[must_use]
    pub fn end(&self) -> Point {
        self.after(self.turn)
    }

    /// Unit vector along the leaf after a turn, radians.
    #[must_use]
    pub fn after(&self, turn: f64) -> Point {
        if turn == FRAC_PI_2 {
            return self.inward;
        }
        let (sine, cosine) = turn.sin_cos();
        self.along * cosine + self.inward * sine
    }

    /// Outward unit normal of the side on which the sector ends.
    #[must_use]
    pub fn past_end(&self) -> Point {
        if self.turn == FRAC_PI_2 {
            return -self.along;
        }
        let (sine, cosine) = self.turn.sin_cos();
        self.inward * cosine - self.along * sine
    }
}

/// What a door takes that folds into the room.
#[derive(Debug, Clone, PartialEq)]
pub struct Fold {
    /// The door.
    pub item: ItemId,
    /// Its width by half of it.
    pub zone: Convex,
}

/// A leaf where it rests: nobody walks through it.
#[derive(Debug, Clone, PartialEq)]
pub struct Leaf {
    /// The door.
    pub item: ItemId,
    /// Its plan.
    pub shape: Convex,
}

/// What a leaf sweeps: a quarter disc, and where it opens further the rest of it.
pub(super) fn swings(item: ItemId, door: &Door, place: WallPlace) -> Vec<Swing> {
    let (Swings::In, Some(hinge)) = (door.swings, door.hinge) else { return Vec::new() };
    let first = first_quarter(item, hinge, place);
    let further = (door.opens_to() - 90.0).to_radians();
    let rest = Swing { along: first.inward, inward: -first.along, turn: further, goes_on: true, ..first };
    std::iter::once(first).chain((further > 0.0).then_some(rest)).collect()
}

/// The leaf where the file says that it rests; none where it lies at its wall.
pub(super) fn leaf(item: ItemId, door: &Door, place: WallPlace) -> Option<Leaf> {
    let (Swings::In, Some(hinge), Some(rests_at)) = (door.swings, door.hinge, door.opens_to) else { return None };
    if rests_at >= AT_ITS_WALL {
        return None;
    }
    let swing = first_quarter(item, hinge, place);
    let turn = rests_at.to_radians();
    let (along, away) = (swing.after(turn) * swing.radius, Swing { turn, ..swing }.past_end() * LEAF);
    let at = swing.hinge;
    Some(Leaf { item, shape: Convex::counter_clockwise([at, at + along, at + along + away, at + away]) })
}

fn first_quarter(item: ItemId, hinge: Hinge, WallPlace { left, right, inward }: WallPlace) -> Swing {
    let radius = (right - left).norm();
    let (hinge, other) = match hinge {
        Hinge::Left => (left, right),
        Hinge::Right => (right, left),
    };
    let along = (other - hinge).unit().unwrap_or(inward.left());
    Swing { item, hinge, along, inward, radius, turn: FRAC_PI_2, goes_on: false }
}
