//! What a search found.

use std::collections::BTreeMap;

use super::tally::Tally;
use super::tolerance::{PLAN_PROVEN_SHARE, PLAN_PROVEN_WITHIN, PROVEN_WITHIN};
use crate::composition::TermCost;
use crate::layout::Layout;
use crate::program::Row;
use crate::rules::comfort::EASED;
use crate::rules::{Cause, CostSlot, Variables};

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
    /// What was eased, as the rules ask for it.
    pub eased: Vec<Cause>,
    /// What else was taken at a cost, and the cost.
    pub paid: Vec<(Cause, f64)>,
    /// What each term of a plan costs, what costs most first; empty where no plan was sought.
    pub composition: Vec<TermCost>,
}

impl Found {
    /// What the plan pays for easing rules.
    pub(crate) fn paid_for_easing(&self, variables: &Variables) -> f64 {
        let lacking = variables.pieces.iter().map(|piece| self.value(piece.terms[CostSlot::Eased]));
        EASED * self.eased.len() as f64 + lacking.sum::<f64>()
    }

    /// A variable at the layout.
    pub(crate) fn value(&self, variable: usize) -> f64 {
        self.values.get(variable).copied().unwrap_or(0.0).max(0.0)
    }

    /// No plan of the arrangement is better by more than what no eye tells apart; `cost` is what this one costs.
    #[must_use]
    pub fn is_proven_plan(&self, cost: f64) -> bool {
        self.bound - self.objective <= PLAN_PROVEN_WITHIN.max(PLAN_PROVEN_SHARE * cost)
    }

    /// Whether a layout can have so much and the bound still hold, but for what a proof leaves open. One that was not found by
    /// the search may have more, where the search keeps to more than the result is held to: its bound says nothing then.
    #[must_use]
    pub(crate) fn may_be(&self, objective: f64) -> bool {
        objective - self.bound <= PROVEN_WITHIN * objective.abs()
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
