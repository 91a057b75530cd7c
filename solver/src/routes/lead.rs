//! Walks of a disc that are under way: their last legs, which may be blocked, and those that wait to be looked at.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use elbowroom_model::Point;

use crate::geometry::Turn;

/// A corner, by its place among all, and the way that a cord goes round it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct About {
    pub corner: usize,
    pub turn: Turn,
}

/// A corner as a cord goes round it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Round {
    pub about: About,
    /// Unit vector from the corner to the place where the cord first touches its arc.
    pub contact: Point,
}

/// A walk that is not yet looked at: its last leg may be blocked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Lead {
    /// Length at the end of the leg with the straight way to the far mouth added.
    pub least: f64,
    pub length: f64,
    /// Where the leg starts: on the arc that the walk was on, or on the first mouth.
    pub earlier: Option<Round>,
    pub from: Point,
    pub to: Point,
    /// What the leg leads to; `None`: the far mouth.
    pub next: Option<Round>,
    /// The corner before, by its place among those reached.
    pub after: Option<usize>,
    /// Order of finding, so that equal leads are taken in one order.
    pub found: usize,
}

/// A corner that was reached, and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Reached {
    pub round: Round,
    pub length: f64,
    pub lead: Lead,
}

/// A walk as far as a corner.
#[derive(Clone, Copy)]
pub(super) struct Walked {
    pub round: Round,
    pub length: f64,
    /// The corner, by its place among those reached.
    pub place: usize,
}

/// Leads that are still open, the most promising on top.
#[derive(Debug, Default)]
pub(super) struct Leads {
    heap: BinaryHeap<Lead>,
    found: usize,
}

impl Leads {
    /// Adds a lead whose leg is not counted yet; `ahead`: the straight way from its end to the far mouth, mm.
    pub(super) fn push(&mut self, lead: Lead, ahead: f64) {
        let length = lead.length + (lead.to - lead.from).norm();
        self.found += 1;
        self.heap.push(Lead { length, least: length + ahead, found: self.found, ..lead });
    }

    /// The lead that promises the shortest walk.
    pub(super) fn pop(&mut self) -> Option<Lead> {
        self.heap.pop()
    }
}

impl Lead {
    /// One that leads nowhere yet.
    pub(super) fn start() -> Self {
        let origin = Point::default();
        Self { least: 0.0, length: 0.0, earlier: None, from: origin, to: origin, next: None, after: None, found: 0 }
    }
}

impl Eq for Lead {}

impl Ord for Lead {
    /// The greatest is the one that promises the shortest walk.
    fn cmp(&self, other: &Self) -> Ordering {
        other.least.total_cmp(&self.least).then(other.found.cmp(&self.found))
    }
}

impl PartialOrd for Lead {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
