//! Programs that are solved a single time, written down with `good_lp`: nothing is kept warm.

use super::row::Row;
use good_lp::{Expression, ProblemVariables, Solution, SolverModel, Variable, microlp, variable};

/// The most that `objective` can be within the bounds and rows, and a point that has it. None where no point keeps
/// them all, where the bounds leave it without end, or where a figure is not a number. Bounds may be infinite.
#[must_use]
pub fn maximise(objective: &[f64], bounds: &[(f64, f64)], rows: &[Row]) -> Option<(f64, Vec<f64>)> {
    let readable = objective.len() == bounds.len()
        && objective.iter().all(|weight| weight.is_finite())
        && bounds.iter().all(|(lower, upper)| lower <= upper && *lower < f64::INFINITY && *upper > f64::NEG_INFINITY)
        && rows.iter().all(|row| row.is_finite() && row.fits(bounds.len()));
    if !readable {
        return None;
    }
    let mut program = ProblemVariables::new();
    let variables: Vec<Variable> =
        bounds.iter().map(|(lower, upper)| program.add(variable().min(*lower).max(*upper))).collect();
    let aim = sum(&variables, objective.iter().copied().enumerate());
    let mut model = program.maximise(aim).using(microlp);
    for row in rows {
        model.add_constraint(sum(&variables, row.terms.iter().copied()).leq(row.most));
    }
    let solution = model.solve().ok()?;
    let point: Vec<f64> = variables.iter().map(|variable| solution.value(*variable)).collect();
    let worth = objective.iter().zip(&point).map(|(weight, value)| weight * value).sum();
    Some((worth, point))
}

/// A point that keeps the bounds and rows, if there is one.
#[must_use]
pub fn feasible(bounds: &[(f64, f64)], rows: &[Row]) -> Option<Vec<f64>> {
    maximise(&vec![0.0; bounds.len()], bounds, rows).map(|(_, point)| point)
}

fn sum(variables: &[Variable], terms: impl Iterator<Item = (usize, f64)>) -> Expression {
    let known = terms.filter_map(|(index, coefficient)| Some((*variables.get(index)?, coefficient)));
    known.fold(Expression::with_capacity(variables.len()), |sum, (variable, coefficient)| sum + coefficient * variable)
}
