//! What a search is asked for, and what it found.

use std::collections::BTreeMap;

use elbowroom_model::Rule;

use super::aim::Aim;
use super::tally::Tally;
use super::tolerance::PROVEN_WITHIN;
use crate::layout::Layout;
use crate::program::Row;
use crate::rules::Cause;

/// How far a search goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort<'a> {
    /// What is made as large as it can be.
    pub aim: Aim<'a>,
    /// Layouts count that are better than this.
    pub to_beat: f64,
    /// Nodes at most.
    pub nodes: usize,
    /// A rule that is left aside.
    pub without: Option<Rule>,
}

/// What a search found.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// The layout.
    pub layout: Layout,
    /// What was made as large as it can be, less the small terms that settle ties.
    pub objective: f64,
    /// No layout of the arrangement has more.
    pub bound: f64,
    /// Variables of the program at the layout.
    pub values: Vec<f64>,
    /// Rows in force at the layout.
    pub rows: Vec<(Row, Cause)>,
}

impl Found {
    /// No layout of the arrangement is better by more than a thousandth.
    #[must_use]
    pub fn is_proven(&self) -> bool {
        self.bound - self.objective <= PROVEN_WITHIN * self.objective.abs()
    }
}

/// How a search ended.
#[derive(Debug, Clone, PartialEq)]
pub struct Searched {
    /// The best layout; `None` where there is none.
    pub found: Option<Found>,
    /// Every alternative was covered.
    pub is_complete: bool,
    /// No layout that was not looked at has more than this.
    pub unexplored: f64,
    /// What left no place, and how often.
    pub blame: BTreeMap<Cause, usize>,
    /// Linear programs solved.
    pub programs: usize,
    /// What else was done.
    pub tally: Tally,
}

impl Searched {
    /// Counts the work of another search of the same arrangement as its own.
    pub(super) fn take_work_of(&mut self, other: &Self) {
        self.programs += other.programs;
        self.tally = std::mem::take(&mut self.tally).plus(&other.tally);
    }
}
