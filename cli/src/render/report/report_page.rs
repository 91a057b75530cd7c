//! What a report is made from.

use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, Family, RankedOption};

/// All that a report is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ReportPage<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// How many options are drawn and told at length.
    pub limits: Limits,
    /// The scenario file's name, for whoever wants to go on.
    pub file: &'a str,
}

impl<'a> ReportPage<'a> {
    /// All that the order lists: families by their best, or options one by one.
    pub(super) fn listed(&self) -> Vec<Family<'a>> {
        self.answer.listed(&self.limits)
    }

    /// The options that are drawn.
    pub(super) fn drawn(&self) -> Vec<&'a RankedOption> {
        self.listed().into_iter().take(self.limits.shown).map(|family| family.best).collect()
    }
}
