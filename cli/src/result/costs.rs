//! What a set costs beside others, as JSON.

use elbowroom_model::Dimension;
use elbowroom_model::listing::Money;
use elbowroom_solver::shop::Costs;
use serde::Serialize;

use crate::words::shop::Names;

/// What a set costs beside others.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct CostsResult<'a> {
    /// The cheapest set of those solved that costs more and scores a point more at least.
    better: Option<BetterResult>,
    /// What the next smaller piece in place of the dearest would save.
    saving: Option<SavingResult<'a>>,
}

/// A better set.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct BetterResult {
    price: Money,
    score: f64,
}

/// What a smaller piece would save.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct SavingResult<'a> {
    /// The dearest piece of the set.
    dearest: &'a str,
    /// The next smaller one that costs less.
    smaller: &'a str,
    /// The dimension in which it is smaller by most.
    dimension: Dimension,
    /// By so much, mm.
    less: f64,
    /// What it saves, all of the row.
    saves: Money,
}

impl<'a> CostsResult<'a> {
    /// The same, by the names of the list.
    pub(crate) fn of(names: Names<'a>, found: &Costs) -> Self {
        Self {
            better: found.better.as_ref().map(|better| BetterResult { price: better.price, score: better.score }),
            saving: found.saving.map(|saving| SavingResult {
                dearest: names.candidate(saving.dearest),
                smaller: names.candidate(saving.smaller),
                dimension: saving.dimension,
                less: saving.less,
                saves: saving.saves,
            }),
        }
    }
}
