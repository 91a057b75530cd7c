//! The same questions put to `microlp`, which edits a solved program one row at a time.
//!
//! What it does with odd input, and what is done about it here:
//!
//! | `microlp` | here |
//! | --- | --- |
//! | adding a row consumes the solution, even where the answer is "infeasible" | a clone is edited, the last optimum stays |
//! | a variable named twice in a row is an error | terms are merged first |
//! | NaN and infinity pass in silence | refused before it sees them |
//! | no limit on iterations, only one on time | none: time would make answers depend on the machine |

use super::row::{Engine, Row, Status};
use microlp::{ComparisonOp, Error, OptimizationDirection, Problem, Solution, SolveOutcome, Variable};

/// Engine on `microlp`: slower, and written by others, which is why the default engine is held against it.
#[derive(Debug, Clone)]
pub struct MicrolpEngine {
    objective: Vec<f64>,
    bounds: Vec<(f64, f64)>,
    rows: Vec<Row>,
    variables: Vec<Variable>,
    /// The last optimum as `microlp` holds it; none before the first solve.
    solution: Option<Solution>,
    point: Vec<f64>,
    /// What every later answer is, once one was not optimal: rows are only ever added.
    stuck: Option<Status>,
    solved: usize,
}

impl MicrolpEngine {
    /// States the whole program anew and solves it.
    fn restate(&mut self) -> Status {
        let mut problem = Problem::new(OptimizationDirection::Maximize);
        let columns = self.objective.iter().zip(&self.bounds);
        self.variables = columns.map(|(weight, bounds)| problem.add_var(*weight, *bounds)).collect();
        for row in &self.rows {
            problem.add_constraint(self.expression(row), ComparisonOp::Le, row.most);
        }
        let outcome = problem.solve();
        self.take(outcome)
    }

    /// Puts one more row to the solved program.
    fn edit(&mut self, row: Row) -> Status {
        let Some(solution) = self.solution.clone() else { return Status::Interrupted };
        let outcome = solution.add_constraint(self.expression(&row), ComparisonOp::Le, row.most);
        self.rows.push(row);
        self.take(outcome)
    }

    fn expression(&self, row: &Row) -> Vec<(Variable, f64)> {
        row.terms
            .iter()
            .filter_map(|(variable, coefficient)| Some((*self.variables.get(*variable)?, *coefficient)))
            .collect()
    }

    fn take(&mut self, outcome: Result<SolveOutcome, Error>) -> Status {
        match outcome {
            Ok(SolveOutcome::Solution(solution)) => {
                self.solution = Some(solution);
                Status::Optimal
            }
            Err(Error::Infeasible) => Status::Infeasible,
            Ok(SolveOutcome::Interrupted(_)) | Err(_) => Status::Interrupted,
        }
    }

    /// Notes how a solve ended: the point where it is an optimum, else that nothing better will come.
    fn close(&mut self, status: Status) -> Status {
        match (&self.solution, status) {
            (Some(solution), Status::Optimal) => {
                let values = self.variables.iter().map(|variable| solution.var_value_raw(*variable));
                self.point =
                    values.zip(&self.bounds).map(|(value, (lower, upper))| value.max(*lower).min(*upper)).collect();
            }
            _ => self.stuck = Some(status),
        }
        status
    }

    fn refuse(&mut self) -> Status {
        self.stuck = Some(Status::Interrupted);
        Status::Interrupted
    }
}

impl Engine for MicrolpEngine {
    fn start(objective: &[f64], bounds: &[(f64, f64)]) -> Self {
        let finite = objective.len() == bounds.len()
            && objective.iter().all(|weight| weight.is_finite())
            && bounds.iter().all(|(lower, upper)| lower.is_finite() && upper.is_finite());
        let stuck = if !finite {
            Some(Status::Interrupted)
        } else if bounds.iter().any(|(lower, upper)| lower > upper) {
            Some(Status::Infeasible)
        } else {
            None
        };
        let columns = objective.iter().zip(bounds);
        let point = columns.map(|(weight, (lower, upper))| if *weight > 0.0 { *upper } else { *lower }).collect();
        Self {
            objective: objective.to_vec(),
            bounds: bounds.to_vec(),
            rows: Vec::new(),
            variables: Vec::new(),
            solution: None,
            point,
            stuck,
            solved: 0,
        }
    }

    fn add_to_beat(&mut self, rows: &[Row], to_beat: f64) -> Status {
        self.solved += 1;
        if let Some(status) = self.stuck {
            return status;
        }
        if !rows.iter().all(|row| row.is_finite() && row.fits(self.bounds.len())) {
            return self.refuse();
        }
        let mut status = if self.solution.is_some() { Status::Optimal } else { self.restate() };
        for row in rows.iter().map(|row| Row::at_most(row.terms.iter().copied(), row.most)) {
            status = self.edit(row);
            if status != Status::Optimal {
                break;
            }
        }
        match self.close(status) {
            Status::Optimal if self.objective() <= to_beat => Status::Beaten,
            status => status,
        }
    }

    fn aim(&mut self, objective: &[f64]) -> Status {
        self.solved += 1;
        if let Some(status) = self.stuck {
            return status;
        }
        if objective.len() != self.bounds.len() || !objective.iter().all(|weight| weight.is_finite()) {
            return self.refuse();
        }
        self.objective = objective.to_vec();
        let status = self.restate();
        self.close(status)
    }

    fn values(&self) -> &[f64] {
        &self.point
    }

    fn objective(&self) -> f64 {
        self.objective.iter().zip(&self.point).map(|(weight, value)| weight * value).sum()
    }

    fn solved(&self) -> usize {
        self.solved
    }
}
