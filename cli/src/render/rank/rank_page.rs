//! What the page of a result is made from.

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::Answer;

use crate::words::lengths::taped;

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct RankPage<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// What it was ranked by, and how many options are told at some length.
    pub limits: Limits,
    /// All of it is told, and not only what one screen holds.
    pub full: bool,
    /// The first option is sketched too.
    pub sketch: bool,
}

impl<'a> RankPage<'a> {
    /// What was solved.
    pub(super) const fn brief(&self) -> &'a Brief {
        &self.answer.brief
    }

    /// The unit that lengths are told in.
    pub(super) const fn units(&self) -> Unit {
        self.answer.brief.units
    }

    /// A length as a tape reads it.
    pub(super) fn tape(&self, length: f64) -> String {
        taped(self.units(), length)
    }
}
