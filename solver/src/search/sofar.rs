//! The plan of an arrangement so far, and the work that it took.

use std::collections::BTreeMap;

use super::found::{Found, Searched};
use super::tally::Tally;
use crate::layout::Layout;

/// The plan so far.
pub(super) struct Sofar {
    pub(super) searched: Searched,
    /// What the plan had when all of it was last let slide.
    pub(super) slid: f64,
}

impl Sofar {
    pub(super) fn nothing() -> Self {
        let searched = Searched {
            found: None,
            is_complete: true,
            unexplored: f64::NEG_INFINITY,
            blame: BTreeMap::new(),
            programs: 0,
            tally: Tally::default(),
        };
        Self { searched, slid: f64::NEG_INFINITY }
    }

    pub(super) const fn layout(&self) -> Option<&Layout> {
        match &self.searched.found {
            Some(found) => Some(&found.layout),
            None => None,
        }
    }

    pub(super) fn values(&self) -> Vec<f64> {
        self.searched.found.as_ref().map_or_else(Vec::new, |found| found.values.clone())
    }

    pub(super) fn value(&self) -> f64 {
        self.searched.found.as_ref().map_or(f64::NEG_INFINITY, |found| found.objective)
    }

    /// Takes what is found elsewhere where it is better, and says whether it is.
    pub(super) fn take_better(&mut self, more: Searched) -> bool {
        self.searched.take_work_of(&more);
        let is_better = |found: &Found| found.objective > self.value();
        let better = more.found.filter(is_better);
        let is_better = better.is_some();
        self.searched.found = better.or_else(|| self.searched.found.take());
        is_better
    }

    pub(super) fn take(&mut self, more: Searched) -> bool {
        self.searched.take_work_of(&more);
        self.searched.is_complete = more.is_complete;
        self.searched.unexplored = more.unexplored;
        for (cause, count) in more.blame {
            *self.searched.blame.entry(cause).or_default() += count;
        }
        let is_better = more.found.is_some();
        if is_better {
            self.searched.found = more.found;
        }
        is_better
    }
}
