//! What a comparison is made from.

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::{Answer, RankedOption};

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Compared<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// Two options or three, as they were named.
    pub options: &'a [&'a RankedOption],
}

impl<'a> Compared<'a> {
    /// What was solved.
    pub(super) const fn brief(&self) -> &'a Brief {
        &self.answer.brief
    }

    pub(super) const fn units(&self) -> Unit {
        self.answer.brief.units
    }
}
