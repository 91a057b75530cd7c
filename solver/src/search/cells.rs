//! What the rules ask, kept for all arrangements of a room: most stands come back in many of them, and every aim asks again.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_model::{Hand, Point, WallId};

use super::cell::Cell;
use crate::arrangement::{Relation, Role};
use crate::rules::{Pose, RuleName};

/// What was asked so far. A cell follows from its key alone, so it is all the same who works it out and when.
#[derive(Debug, Default)]
pub(super) struct Cells(Mutex<BTreeMap<Key, Arc<Cell>>>);

/// What a cell hangs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Key {
    pub(super) first: StandKey,
    pub(super) with: Beside,
    pub(super) scope: Scope,
}

/// What else a cell is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Beside {
    /// Nothing: the first piece by itself, which has no other stand.
    Nothing,
    /// Nothing, and the first piece has other stands too.
    OtherStands,
    /// Another piece.
    Piece(StandKey),
}

/// Which rules are asked, and how.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Scope {
    /// A rule that is left aside.
    pub(super) without: Option<RuleName>,
    /// Round gaps are asked for as polygons.
    pub(super) plain: bool,
    /// What settles ties is asked for too.
    pub(super) ties: bool,
}

/// A piece under a stand, as far as a rule can tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct StandKey {
    piece: usize,
    role: Role,
    hand: Option<Hand>,
    at_wall: Option<WallId>,
    facing: [u64; 2],
    relation: Relation,
}

impl StandKey {
    pub(super) fn of(pose: &Pose<'_>) -> Self {
        let Point { x, y } = pose.stand.facing;
        Self {
            piece: pose.id,
            role: pose.role,
            hand: pose.hand,
            at_wall: pose.stand.at_wall,
            facing: [x.to_bits(), y.to_bits()],
            relation: pose.stand.relation,
        }
    }
}

impl Cells {
    /// The cell of a key, worked out where nobody asked for it before.
    pub(super) fn get(&self, key: Key, work_out: impl FnOnce() -> Cell) -> Arc<Cell> {
        // Nothing in here can panic while the lock is held.
        let known = |cells: &BTreeMap<Key, Arc<Cell>>| cells.get(&key).map(Arc::clone);
        if let Some(cell) = known(&self.0.lock().unwrap_or_else(PoisonError::into_inner)) {
            return cell;
        }
        let cell = Arc::new(work_out());
        let mut cells = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        Arc::clone(cells.entry(key).or_insert(cell))
    }
}
