//! Pieces under their stands and what the rules ask of them, kept for all arrangements of a room: most stands come back in
//! many of them, and every aim asks again.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_model::{Hand, PieceId, Point, Rule, WallId};

use super::cell::Cell;
use crate::arrangement::{Relation, Role, Stand, Standing};
use crate::rules::Pose;

/// What was asked so far. All of it follows from its key alone, so it is all the same who works it out and when.
#[derive(Debug, Default)]
pub(super) struct Cells {
    posed: Kept<StandKey, Posed>,
    cells: Kept<Key, Cell>,
}

type Kept<K, T> = Mutex<BTreeMap<K, Arc<T>>>;

/// Bounds of a pose's place: across, then out.
pub(super) type Place = [(usize, (f64, f64)); 2];

/// A piece under a stand.
#[derive(Debug)]
pub(super) struct Posed {
    pub(super) id: StandId,
    pub(super) pose: Pose,
    pub(super) place: Place,
}

/// A short name for a piece under a stand, given when it is first posed: whichever it is, it stands for one [`StandKey`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct StandId(usize);

/// What a cell hangs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Key {
    pub(super) first: StandId,
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
    Piece(StandId),
}

/// Which rules are asked, and how.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Scope {
    /// A rule that is left aside.
    pub(super) without: Option<Rule>,
    /// Round gaps are asked for as polygons.
    pub(super) plain: bool,
    /// What settles ties is asked for too.
    pub(super) ties: bool,
    /// What the screen does in the arrangement.
    pub(super) screen: Option<Role>,
    /// What is done about rules of comfort.
    pub(super) comfort: Comfort,
}

/// What is done about rules of comfort, as far as a cell that is kept can tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Comfort {
    /// All are kept.
    Kept,
    /// Each may be eased.
    MayBeEased,
    /// None is asked.
    Ignored,
}

/// A piece under a stand, as far as a rule can tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct StandKey {
    piece: PieceId,
    role: Role,
    hand: Option<Hand>,
    at_wall: Option<WallId>,
    facing: [u64; 2],
    relation: Relation,
    /// The square-on way from which it is turned: half of a right angle is reached from two.
    square: Option<[u64; 2]>,
}

impl StandKey {
    pub(super) fn of(standing: &Standing, stand: &Stand) -> Self {
        let Standing { piece, role, hand, .. } = *standing;
        let Stand { at_wall, facing, relation, turn } = *stand;
        let bits = |Point { x, y }: Point| [x.to_bits(), y.to_bits()];
        let square = turn.map(|turn| bits(turn.square));
        Self { piece, role, hand, at_wall, facing: bits(facing), relation, square }
    }

    /// How the piece stands, whichever it is, in an order of its own.
    pub(super) fn stand(&self) -> impl Ord {
        (self.at_wall, self.facing, self.relation, self.square)
    }
}

impl Cells {
    /// The piece under the stand of a key, posed where nobody asked for it before.
    pub(super) fn posed(&self, key: StandKey, pose: impl FnOnce() -> (Pose, Place)) -> Arc<Posed> {
        kept(&self.posed, key, pose, |count, (pose, place)| Posed { id: StandId(count), pose, place })
    }

    /// The cell of a key, worked out where nobody asked for it before.
    pub(super) fn cell(&self, key: Key, work_out: impl FnOnce() -> Cell) -> Arc<Cell> {
        kept(&self.cells, key, work_out, |_, cell| cell)
    }
}

/// What is kept under a key; what is worked out is kept knowing how much was kept before.
fn kept<K: Ord, W, T>(
    all: &Kept<K, T>,
    key: K,
    work_out: impl FnOnce() -> W,
    keep: impl FnOnce(usize, W) -> T,
) -> Arc<T> {
    // Nothing can panic while the lock is held.
    let lock = || all.lock().unwrap_or_else(PoisonError::into_inner);
    let known = lock().get(&key).map(Arc::clone);
    known.unwrap_or_else(|| {
        let found = work_out();
        let mut all = lock();
        let count = all.len();
        Arc::clone(all.entry(key).or_insert_with(|| Arc::new(keep(count, found))))
    })
}
