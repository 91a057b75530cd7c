//! The scores as a table, one row an option and one column a criterion, and the weights of the columns.

use elbowroom_model::{Criterion, Wishes};

/// Scores of the options in the criteria that apply to the room.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Table {
    pub(super) criteria: Vec<Criterion>,
    /// One row an option, one score a criterion.
    pub(super) rows: Vec<Vec<f64>>,
}

impl Table {
    /// The table of options in the criteria that all of them are judged by, in the order of the first: what one option has
    /// no score in says nothing of how it compares, least of all that it is worth nothing there.
    pub(super) fn of(scores: &[Vec<(Criterion, f64)>]) -> Self {
        let first = scores.first().into_iter().flatten().map(|(criterion, _)| *criterion);
        let judges_all = |criterion: &Criterion| scores.iter().all(|row| score_of(row, *criterion).is_some());
        let criteria: Vec<Criterion> = first.filter(judges_all).collect();
        let row = |row: &Vec<_>| criteria.iter().filter_map(|criterion| score_of(row, *criterion)).collect();
        Self { rows: scores.iter().map(row).collect(), criteria }
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
