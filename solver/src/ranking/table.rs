//! The scores as a table, one row an option and one column a criterion, and the weights of the columns.

use elbowroom_model::{Criterion, Wishes};

use super::tier::Entrant;

/// Scores of the options in the criteria that apply to the room.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Table {
    pub(super) criteria: Vec<Criterion>,
    /// One row an option, one score a criterion.
    pub(super) rows: Vec<Vec<f64>>,
    /// For each option and criterion the wish from which it is set aside; infinite where none is.
    pub(super) aside_from: Vec<Vec<f64>>,
}

impl Table {
    /// The table of options in the criteria that all of them are judged by, in the order of the first: what one option has
    /// no score in says nothing of how it compares, least of all that it is worth nothing there.
    pub(super) fn of(entrants: &[Entrant]) -> Self {
        let first = entrants.first().into_iter().flat_map(|entrant| &entrant.scores).map(|(criterion, _)| *criterion);
        let judges_all = |criterion: &Criterion| entrants.iter().all(|it| score_of(&it.scores, *criterion).is_some());
        let criteria: Vec<Criterion> = first.filter(judges_all).collect();
        let row = |it: &Entrant| criteria.iter().filter_map(|criterion| score_of(&it.scores, *criterion)).collect();
        let aside = |it: &Entrant| criteria.iter().map(|criterion| it.aside_from(*criterion)).collect();
        let (rows, aside_from) = entrants.iter().map(|entrant| (row(entrant), aside(entrant))).unzip();
        Self { rows, aside_from, criteria }
    }

    /// The table of some of its options.
    pub(super) fn only(&self, options: &[usize]) -> Self {
        let rows = options.iter().map(|option| self.rows[*option].clone()).collect();
        let aside_from = options.iter().map(|option| self.aside_from[*option].clone()).collect();
        Self { rows, aside_from, criteria: self.criteria.clone() }
    }

    /// The wish of each column.
    pub(super) fn wishes(&self, wishes: &Wishes) -> Vec<f64> {
        self.criteria.iter().map(|criterion| wishes.get(*criterion)).collect()
    }

    /// The weighted mean of each row.
    pub(super) fn scores(&self, wishes: &[f64]) -> Vec<f64> {
        let weights = weights(wishes);
        self.rows.iter().map(|row| dot(row, &weights)).collect()
    }
}

fn score_of(row: &[(Criterion, f64)], wanted: Criterion) -> Option<f64> {
    row.iter().find(|(criterion, _)| *criterion == wanted).map(|(_, score)| *score)
}

/// Weights that sum to 1 in the proportion of the wishes; no wish at all makes them equal.
pub(super) fn weights(wishes: &[f64]) -> Vec<f64> {
    let sum: f64 = wishes.iter().sum();
    if sum > 0.0 {
        wishes.iter().map(|wish| wish / sum).collect()
    } else {
        vec![1.0 / wishes.len().max(1) as f64; wishes.len()]
    }
}

pub(super) fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}
