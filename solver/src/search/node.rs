//! One node of the search: what has been decided, and the program that follows from it.

use std::cmp::Ordering;
use std::rc::Rc;

use crate::program::{Engine, Row, Status};
use crate::rules::{Arc, Cause};

/// What has been decided of one piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Decided {
    /// Nothing yet.
    Open,
    /// It stands so.
    Stands(usize),
    /// It is left out.
    Out,
}

/// Which requirement, so that it is chosen from once.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Chosen {
    /// Of the room.
    Room(usize),
    /// Of one state.
    Alone(usize, usize),
    /// Of two states, the lower first.
    Between(usize, usize, usize),
}

/// One node.
#[derive(Clone)]
pub(super) struct Node<E> {
    pub(super) engine: E,
    pub(super) decided: Vec<Decided>,
    pub(super) chosen: Vec<Chosen>,
    /// Round gaps that hold by their chords only.
    pub(super) arcs: Vec<(Arc, Cause)>,
    /// What the pieces that stand, or still may, count by standing.
    pub(super) presence: f64,
    pub(super) depth: usize,
    pub(super) trail: Option<Rc<Trail>>,
}

/// Rows in force, the last first.
pub(super) struct Trail {
    rows: Vec<(Row, Cause)>,
    before: Option<Rc<Trail>>,
}

impl<E: Engine> Node<E> {
    /// No layout under this node has more.
    pub(super) fn bound(&self) -> f64 {
        self.engine.objective() + self.presence
    }

    /// Adds rows and solves again.
    pub(super) fn add(&mut self, rows: Vec<(Row, Cause)>) -> Status {
        let plain: Vec<Row> = rows.iter().map(|(row, _)| row.clone()).collect();
        let status = self.engine.add(&plain);
        self.trail = Some(Rc::new(Trail { rows, before: self.trail.take() }));
        status
    }

    /// Every row in force, in the order they came.
    pub(super) fn rows(&self) -> Vec<(Row, Cause)> {
        let mut found = Vec::new();
        let mut trail = self.trail.as_ref();
        while let Some(entry) = trail {
            found.extend(entry.rows.iter().rev().cloned());
            trail = entry.before.as_ref();
        }
        found.reverse();
        found
    }
}

/// A node in the queue: best bound first, then the deepest, then the first made.
pub(super) struct Queued<E> {
    pub(super) node: Node<E>,
    /// Bound in millionths, so that rounding settles no order.
    bound: i64,
    made: usize,
}

impl<E: Engine> Queued<E> {
    pub(super) fn new(node: Node<E>, made: usize) -> Self {
        // A cast from float to integer saturates.
        let bound = (node.bound() * 1e6).round() as i64;
        Self { node, bound, made }
    }
}

impl<E> PartialEq for Queued<E> {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl<E> Eq for Queued<E> {}

impl<E> PartialOrd for Queued<E> {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl<E> Ord for Queued<E> {
    fn cmp(&self, other: &Self) -> Ordering {
        let depth = self.node.depth.cmp(&other.node.depth);
        self.bound.cmp(&other.bound).then(depth).then(other.made.cmp(&self.made))
    }
}
