//! Programs of any size, written down with `good_lp` and solved by `microlp`; a variable can be fixed in a solved one, which
//! starts from where that one stood.

use super::row::Row;
use super::tolerance::FEASIBLE;
use good_lp::{Expression, ProblemVariables, ResolutionError, SolverModel, Variable, microlp, variable};
use microlp::{ComparisonOp, Error, Solution, SolveOutcome};

/// Why there is no optimum.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Without {
    /// No point keeps all bounds and rows: this is proven.
    Feasible,
    /// Nothing is known: a figure is not a number, the optimum is without end, or the solver gave up.
    Answer,
}

/// A solved program.
#[derive(Debug, Clone)]
pub struct Relaxation {
    solution: Solution,
    point: Vec<f64>,
}

impl Relaxation {
    /// Makes `objective` as large as it can be within the bounds, which may be infinite, and the rows.
    ///
    /// # Errors
    ///
    /// Why there is no optimum.
    pub fn of(objective: &[f64], bounds: &[(f64, f64)], rows: &[Row]) -> Result<Self, Without> {
        let readable = objective.len() == bounds.len()
            && objective.iter().all(|weight| weight.is_finite())
            && bounds
                .iter()
                .all(|(lower, upper)| lower <= upper && *lower < f64::INFINITY && *upper > f64::NEG_INFINITY)
            && rows.iter().all(|row| row.is_finite() && row.fits(bounds.len()));
        if !readable {
            return Err(Without::Answer);
        }
        let mut program = ProblemVariables::new();
        let variables: Vec<Variable> =
            bounds.iter().map(|(lower, upper)| program.add(variable().min(*lower).max(*upper))).collect();
        let aim = sum(&variables, objective.iter().copied().enumerate());
        let mut model = program.maximise(aim).using(microlp);
        for row in rows {
            model.add_constraint(sum(&variables, row.terms.iter().copied()).leq(row.most));
        }
        match model.solve() {
            Ok(solution) => Ok(Self::holding(solution.into_inner())),
            Err(ResolutionError::Infeasible) => Err(Without::Feasible),
            Err(_) => Err(Without::Answer),
        }
    }

    /// The same with one more variable fixed, within its bounds.
    ///
    /// A variable that has the value already is held there by a row: `microlp` can call that infeasible where it only finds
    /// nothing to change.
    ///
    /// # Errors
    ///
    /// Why there is no optimum.
    pub fn fixed(&self, variable: usize, value: f64) -> Result<Self, Without> {
        let (column, at) = self.solution.iter().nth(variable).ok_or(Without::Answer)?;
        let solution = self.solution.clone();
        let outcome = if (at - value).abs() <= FEASIBLE {
            solution.add_constraint([(column, 1.0)], ComparisonOp::Eq, value)
        } else {
            solution.fix_var(column, value)
        };
        match outcome {
            Ok(SolveOutcome::Solution(solution)) => Ok(Self::holding(solution)),
            Err(Error::Infeasible) => Err(Without::Feasible),
            Ok(SolveOutcome::Interrupted(_)) | Err(_) => Err(Without::Answer),
        }
    }

    fn holding(solution: Solution) -> Self {
        let point = solution.iter().map(|(_, value)| value).collect();
        Self { solution, point }
    }

    /// Values of all variables, in their order.
    #[must_use]
    pub fn point(&self) -> &[f64] {
        &self.point
    }

    /// What the point is worth by `objective`.
    #[must_use]
    pub fn worth(&self, objective: &[f64]) -> f64 {
        objective.iter().zip(&self.point).map(|(weight, value)| weight * value).sum()
    }
}

fn sum(variables: &[Variable], terms: impl Iterator<Item = (usize, f64)>) -> Expression {
    let known = terms.filter_map(|(index, coefficient)| Some((*variables.get(index)?, coefficient)));
    known.fold(Expression::with_capacity(variables.len()), |sum, (variable, coefficient)| sum + coefficient * variable)
}
