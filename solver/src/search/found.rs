//! What a search is asked for, and what it found.

use std::collections::BTreeMap;

use elbowroom_model::Rule;

use super::aim::Aim;
use super::easing::Easing;
use super::tally::Tally;
use super::tolerance::{PLAN_PROVEN_SHARE, PLAN_PROVEN_WITHIN, PROVEN_WITHIN};
use crate::composition::TermCost;
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
    /// What is done about rules of comfort.
    pub easing: Easing<'a>,
}

impl<'a> Effort<'a> {
    /// All that can be had of an aim within so many nodes, every rule kept.
    #[must_use]
    pub const fn of(aim: Aim<'a>, nodes: usize) -> Self {
        Self { aim, to_beat: f64::NEG_INFINITY, nodes, without: None, easing: Easing::Kept }
    }
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
    /// What each term of a plan costs, what costs most first; empty where no plan was sought.
    pub composition: Vec<TermCost>,
}

impl Found {
    /// A variable at the layout.
    pub(crate) fn value(&self, variable: usize) -> f64 {
        self.values.get(variable).copied().unwrap_or(0.0).max(0.0)
    }

    /// No plan of the arrangement is better by more than what no eye tells apart.
    #[must_use]
    pub fn is_proven_plan(&self) -> bool {
        self.bound - self.objective <= PLAN_PROVEN_WITHIN.max(PLAN_PROVEN_SHARE * self.objective.abs())
    }

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
    pub(crate) fn take_work_of(&mut self, other: &Self) {
        self.programs += other.programs;
        self.tally = std::mem::take(&mut self.tally).plus(&other.tally);
    }
}
