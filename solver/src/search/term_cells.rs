//! What the terms of a plan ask about the heart of a group, kept while an arrangement is searched: each search asks again, and
//! most of what it asks is the same.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::cell::Cell;
use super::cells::{Scope, StandId};

/// What was asked so far. All of it follows from its key alone.
#[derive(Debug, Default)]
pub(super) struct TermCells(RefCell<BTreeMap<TermKey, Rc<Cell>>>);

/// What a cell of terms hangs on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct TermKey {
    /// Main seat, screen and table where the group stands about them.
    pub(super) heart: [Option<StandId>; 3],
    pub(super) first: StandId,
    /// The other piece, where it is about two.
    pub(super) with: Option<StandId>,
    pub(super) is_plan: bool,
    pub(super) scope: Scope,
}

impl TermCells {
    /// The cell of a key, worked out where nobody asked for it before; one without a key is not kept.
    pub(super) fn cell(&self, key: Option<TermKey>, work_out: impl FnOnce() -> Cell) -> Rc<Cell> {
        let Some(key) = key else { return Rc::new(work_out()) };
        let known = self.0.borrow().get(&key).map(Rc::clone);
        known.unwrap_or_else(|| {
            let found = Rc::new(work_out());
            self.0.borrow_mut().insert(key, Rc::clone(&found));
            found
        })
    }
}
