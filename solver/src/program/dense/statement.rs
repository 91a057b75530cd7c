//! The program as it was written: objective, bounds and rows, and what can be proved from them alone.

use std::sync::Arc;

use super::line::{self, Line};
use crate::program::row::Row;
use crate::program::tolerance;

/// Rows flat, one after the other, so that a clone is a few copies; what no row changes is shared.
#[derive(Debug)]
pub(super) struct Statement {
    pub(super) objective: Arc<[f64]>,
    pub(super) lower: Arc<[f64]>,
    pub(super) upper: Arc<[f64]>,
    /// All terms of all rows: variable and coefficient.
    terms: Vec<(usize, f64)>,
    /// End of each row in `terms`.
    ends: Vec<usize>,
    /// Right-hand side of each row.
    most: Vec<f64>,
}

impl Clone for Statement {
    fn clone(&self) -> Self {
        Self {
            objective: Arc::clone(&self.objective),
            lower: Arc::clone(&self.lower),
            upper: Arc::clone(&self.upper),
            terms: self.terms.clone(),
            ends: self.ends.clone(),
            most: self.most.clone(),
        }
    }

    fn clone_from(&mut self, source: &Self) {
        self.objective.clone_from(&source.objective);
        self.lower.clone_from(&source.lower);
        self.upper.clone_from(&source.upper);
        self.terms.clone_from(&source.terms);
        self.ends.clone_from(&source.ends);
        self.most.clone_from(&source.most);
    }
}

impl Statement {
    pub(super) fn new(objective: &[f64], bounds: &[(f64, f64)]) -> Self {
        let mut objective = objective.to_vec();
        objective.resize(bounds.len(), 0.0);
        Self {
            objective: objective.into(),
            lower: bounds.iter().map(|(lower, _)| *lower).collect(),
            upper: bounds.iter().map(|(_, upper)| *upper).collect(),
            terms: Vec::new(),
            ends: Vec::new(),
            most: Vec::new(),
        }
    }

    pub(super) fn variables(&self) -> usize {
        self.lower.len()
    }

    pub(super) fn rows(&self) -> usize {
        self.most.len()
    }

    pub(super) fn push(&mut self, row: &Row) {
        self.terms.extend_from_slice(&row.terms);
        self.ends.push(self.terms.len());
        self.most.push(row.most);
    }

    pub(super) fn terms(&self, row: usize) -> &[(usize, f64)] {
        let start = if row == 0 { 0 } else { self.ends[row - 1] };
        &self.terms[start..self.ends[row]]
    }

    /// How far inside the row the point is; negative where it breaks it.
    pub(super) fn slack(&self, row: usize, point: &[f64]) -> f64 {
        self.most[row]
            - self.terms(row).iter().map(|(variable, coefficient)| coefficient * point[*variable]).sum::<f64>()
    }

    /// How far inside each row the point is, less the rows that `tight` marks.
    pub(super) fn each_slack(&self, point: &[f64], tight: &[bool], mut visit: impl FnMut(usize, f64)) {
        let mut start = 0;
        for (row, ((end, most), tight)) in self.ends.iter().zip(&self.most).zip(tight).enumerate() {
            if !*tight {
                let terms = self.terms[start..*end].iter();
                visit(row, most - terms.map(|(variable, coefficient)| coefficient * point[*variable]).sum::<f64>());
            }
            start = *end;
        }
    }

    /// The bound at which a variable counts most; the lower where it is all the same.
    pub(super) fn better(&self, variable: usize) -> f64 {
        if self.is_better_high(variable) { self.upper[variable] } else { self.lower[variable] }
    }

    /// Whether that is the upper one.
    pub(super) fn is_better_high(&self, variable: usize) -> bool {
        self.objective[variable] > 0.0
    }

    /// Distance between a variable's bounds.
    pub(super) fn room(&self, variable: usize) -> f64 {
        self.upper[variable] - self.lower[variable]
    }

    /// Some variable's bounds leave it no value.
    pub(super) fn crossed(&self) -> bool {
        self.lower.iter().zip(self.upper.iter()).any(|(lower, upper)| lower > upper)
    }

    /// Objective at a point.
    pub(super) fn worth(&self, point: &[f64]) -> f64 {
        self.objective.iter().zip(point).map(|(weight, value)| weight * value).sum()
    }

    /// Size of the figures that make up the objective, for judging rounding.
    pub(super) fn scale(&self) -> f64 {
        let reach = self.lower.iter().zip(self.upper.iter()).map(|(lower, upper)| lower.abs().max(upper.abs()));
        self.objective.iter().zip(reach).map(|(weight, reach)| weight.abs() * reach).sum()
    }

    /// The point moved into the bounds, and onto those that it all but touches.
    pub(super) fn cleaned(&self, point: &[f64]) -> Line<f64> {
        let bounds = self.lower.iter().zip(self.upper.iter());
        point
            .iter()
            .zip(bounds)
            .map(|(value, (lower, upper))| {
                if *value <= lower + tolerance::SNAP {
                    *lower
                } else if *value >= upper - tolerance::SNAP {
                    *upper
                } else {
                    *value
                }
            })
            .collect()
    }

    /// By how much the point breaks the row that it breaks most; zero or less where it keeps them all.
    pub(super) fn worst_excess(&self, point: &[f64]) -> f64 {
        let (mut worst, mut start) = (0.0f64, 0);
        for (end, most) in self.ends.iter().zip(&self.most) {
            let terms = self.terms[start..*end].iter();
            worst = worst.max(terms.map(|(variable, coefficient)| coefficient * point[*variable]).sum::<f64>() - most);
            start = *end;
        }
        worst
    }

    /// No point that keeps the rows and bounds has more of `objective` than this: weak duality, true for any weights that
    /// are not negative.
    pub(super) fn bound(&self, objective: &[f64], weights: &[(usize, f64)]) -> f64 {
        let mut rest = Line::from_slice(objective);
        let mut bound = 0.0;
        for (row, weight) in weights {
            bound += weight * self.most[*row];
            for (variable, coefficient) in self.terms(*row) {
                rest[*variable] -= weight * coefficient;
            }
        }
        let bounds = self.lower.iter().zip(self.upper.iter());
        bound + rest.iter().zip(bounds).map(|(rest, (lower, upper))| (rest * lower).max(rest * upper)).sum::<f64>()
    }

    /// The rows so weighted cannot all hold within the bounds (Farkas).
    pub(super) fn excludes(&self, weights: &[(usize, f64)]) -> bool {
        self.bound(&line::zeros(self.variables()), weights) < -tolerance::MISS
    }
}
