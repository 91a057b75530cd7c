//! A room as it stands at one moment.

use std::sync::Arc;

use elbowroom_model::{Brief, Fault, Unit};

use super::solved::Solved;
use super::work::Stage;

/// A room as it stands at one moment.
#[derive(Clone)]
pub(in crate::page) struct Seen {
    /// Its text.
    pub(in crate::page) text: String,
    /// The step that the text is of.
    pub(in crate::page) step: u64,
    /// What the text says, or what is wrong with it.
    pub(in crate::page) read: Result<Arc<Brief>, Arc<Vec<Fault>>>,
    /// What came of this text or, where that is not known yet, of an earlier one.
    pub(in crate::page) solved: Option<Arc<Solved>>,
    /// Whether there is something to take back, and to take again.
    pub(in crate::page) can: [bool; 2],
    /// How the work on it stands.
    pub(in crate::page) stage: Stage,
}

impl Seen {
    /// The same with its lengths told in another unit.
    pub(in crate::page) fn told_in(&self, units: Option<Unit>) -> Self {
        let Some(units) = units else { return self.clone() };
        let told = |brief: &Arc<Brief>| match brief.units == units {
            true => Arc::clone(brief),
            false => Arc::new(Brief { units, ..(**brief).clone() }),
        };
        let read = self.read.as_ref().map(told).map_err(Arc::clone);
        Self { read, solved: self.solved.as_ref().map(|solved| Solved::told_in(solved, units)), ..self.clone() }
    }
}
