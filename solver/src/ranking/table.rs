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
    /// The table of options that are all judged by the same criteria.
    pub(super) fn of(scores: &[Vec<(Criterion, f64)>]) -> Self {
        let criteria: Vec<Criterion> = scores.first().into_iter().flatten().map(|(criterion, _)| *criterion).collect();
        let score = |row: &[(Criterion, f64)], wanted: Criterion| {
            row.iter().find(|(criterion, _)| *criterion == wanted).map_or(0.0, |(_, score)| *score)
        };
        let rows = scores.iter().map(|row| criteria.iter().map(|criterion| score(row, *criterion)).collect()).collect();
        Self { criteria, rows }
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
