//! What a report is made from.

use elbowroom_solver::answer::Answer;

/// All that a report is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ReportPage<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// Options that are drawn and told at length.
    pub shown: usize,
    /// The scenario file's name, for whoever wants to go on.
    pub file: &'a str,
}
