//! The two ends of a route: a stretch of straight edge that one steps through or up to.

use elbowroom_model::Point;

use super::stop::Stop;
use super::tolerance::{BACK_BEHIND, MEETS_LINE, ON_LINE, START_BEHIND};
use super::{End, ShapeId};
use crate::geometry::{Convex, cross_section};

/// What carries a mouth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Owner {
    /// A doorway or a window in a wall.
    Wall,
    /// The front of a shape: a seat, a storage piece, a radiator under a window.
    Shape(ShapeId),
}

/// A stretch of straight edge that one can step through or up to.
#[derive(Debug, Clone, PartialEq)]
pub struct Mouth {
    /// Whose it is.
    pub end: End,
    /// Its two ends as measured.
    pub at: [Point; 2],
    /// Its two ends as widened to the rule of the route, on the same line and the same way round.
    pub stretch: [Point; 2],
    /// Unit vector from its line toward where the walker is.
    pub before: Point,
    /// What carries it.
    pub owner: Owner,
}

/// Where a place lies, seen from a mouth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct FromMouth {
    /// Along its stretch, from the first end, mm.
    pub(super) along: f64,
    /// Before its line, mm.
    pub(super) before: f64,
}

/// Where a shape lies, seen from a mouth's line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    /// On the walker's side.
    Before,
    /// On the other side.
    Behind,
    /// In the line itself.
    InLine,
    /// On both sides.
    Astride,
}

impl Mouth {
    /// A mouth that is not widened.
    #[must_use]
    pub fn new(end: End, at: [Point; 2], before: Point, owner: Owner) -> Self {
        Self { end, at, stretch: at, before, owner }
    }

    /// Its width after widening, mm.
    #[must_use]
    pub fn width(&self) -> f64 {
        (self.stretch[1] - self.stretch[0]).norm()
    }

    /// Unit vector from its first to its second end.
    #[must_use]
    pub fn along(&self) -> Point {
        let (left, right) = (self.before.left(), self.before.right());
        if left.dot(self.at[1] - self.at[0]) > 0.0 { left } else { right }
    }

    /// Middle of the mouth as measured.
    #[must_use]
    pub fn middle(&self) -> Point {
        (self.at[0] + self.at[1]) * 0.5
    }

    /// Where a route starts: a hair behind the middle.
    pub(super) fn start(&self) -> Point {
        self.middle() - self.before * START_BEHIND
    }

    /// The mouth's stretch seen from behind, with its heart behind the start.
    pub(super) fn back(&self) -> Stop {
        let behind = self.before * BACK_BEHIND;
        let mut back = Stop::stretch(ShapeId::Mouth(self.end), self.stretch[0] - behind, self.stretch[1] - behind);
        back.heart = self.middle() - behind;
        back
    }

    /// Where a place lies from it; `along` is its own.
    pub(super) fn place(&self, along: Point, at: Point) -> FromMouth {
        let off = at - self.stretch[0];
        FromMouth { along: along.dot(off), before: self.before.dot(off) }
    }

    /// Where a shape lies, seen from the line.
    pub(super) fn side(&self, shape: &Convex) -> Side {
        let ahead = shape.corners().iter().map(|corner| self.before.dot(*corner - self.stretch[0]));
        let (least, most) =
            ahead.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), ahead| (least.min(ahead), most.max(ahead)));
        match (least < -ON_LINE, most > ON_LINE) {
            (true, true) => Side::Astride,
            (true, false) => Side::Behind,
            (false, true) => Side::Before,
            (false, false) => Side::InLine,
        }
    }

    /// The two mouths of a route, each widened along its line to `rule`, evenly, never past a corner, a wall, one of
    /// `also` (the other parts of its own piece) or the middle between two mouths in one wall; the end that is free
    /// takes up what the other lacks.
    #[must_use]
    pub fn widened_pair(mouths: [Self; 2], rule: f64, walls: &[Stop], also: [&[Stop]; 2]) -> [Self; 2] {
        let mut rooms = [0, 1].map(|i| mouths[i].room(walls.iter().chain(also[i])));
        share_wall(&mouths, &mut rooms);
        let [first, second] = mouths;
        [first.widened_within(rule, rooms[0]), second.widened_within(rule, rooms[1])]
    }

    /// The mouth of a route that ends on open floor, widened along its line to `rule`, never past one of `also`.
    #[must_use]
    pub fn widened(self, rule: f64, walls: &[Stop], also: &[Stop]) -> Self {
        let room = self.room(walls.iter().chain(also));
        self.widened_within(rule, room)
    }

    /// How far the line runs free beyond each end, mm.
    pub(super) fn room<'a>(&self, stops: impl Iterator<Item = &'a Stop>) -> [f64; 2] {
        let (middle, along) = (self.middle(), self.along());
        let half = (self.at[1] - self.at[0]).norm() / 2.0;
        let mut reach = [f64::INFINITY; 2];
        for stop in stops {
            let Some((from, to)) = cross_section(&stop.shape, middle, along, MEETS_LINE) else { continue };
            if self.runs_along(stop) {
                continue;
            }
            if from >= 0.0 {
                reach[1] = reach[1].min(from);
            }
            if to <= 0.0 {
                reach[0] = reach[0].min(-to);
            }
        }
        reach.map(|reach| (reach - half).max(0.0))
    }

    /// Widened to `rule` where `room` is what its line has beyond each end.
    pub(super) fn widened_within(mut self, rule: f64, room: [f64; 2]) -> Self {
        let lacks = rule - (self.at[1] - self.at[0]).norm();
        if lacks <= 0.0 {
            return self;
        }
        let half = lacks / 2.0;
        let first = half.max(lacks - room[1]).min(room[0]);
        let second = half.max(lacks - room[0]).min(room[1]);
        let along = self.along();
        self.stretch = [self.at[0] - along * first, self.at[1] + along * second];
        self
    }

    /// A wall that lies in the mouth's own line does not stop its widening; the corners at its ends do.
    fn runs_along(&self, stop: &Stop) -> bool {
        let corners = stop.shape.corners();
        corners.len() == 2 && corners.iter().all(|corner| self.before.dot(*corner - self.at[0]).abs() <= MEETS_LINE)
    }
}

/// Two mouths in one wall are not widened past the middle between them: takes that off the room beyond their ends.
fn share_wall(mouths: &[Mouth; 2], rooms: &mut [[f64; 2]; 2]) {
    let off = |mouth: &Mouth, end: Point| mouth.before.dot(end - mouth.at[0]).abs();
    let in_walls = mouths.iter().all(|mouth| mouth.owner == Owner::Wall);
    let in_line = mouths[1].at.iter().all(|end| off(&mouths[0], *end) <= ON_LINE);
    if !in_walls || !in_line || mouths[0].before.dot(mouths[1].before) <= 0.0 {
        return;
    }
    for (own, other) in [(0, 1), (1, 0)] {
        let (mouth, other) = (&mouths[own], &mouths[other]);
        let along = mouth.along();
        let ends = other.at.map(|end| along.dot(end - mouth.at[0]));
        let (from, to) = (ends[0].min(ends[1]), ends[0].max(ends[1]));
        let width = (mouth.at[1] - mouth.at[0]).norm();
        if from >= width - MEETS_LINE {
            rooms[own][1] = rooms[own][1].min(((from - width) / 2.0).max(0.0));
        }
        if to <= MEETS_LINE {
            rooms[own][0] = rooms[own][0].min((-to / 2.0).max(0.0));
        }
    }
}
