//! A whole arrangement put to HiGHS as one mixed-integer program, as it is stated: every alternative a binary, every row of it
//! switched by the least constant that switches it off within the bounds.

use elbowroom_solver::program::Row;
use elbowroom_solver::search::Stated;
use highs::{Col, HighsModelStatus, RowProblem, Sense, SolvedModel};

/// Values judged by HiGHS to be whole may be this far off; times a switch of 1e4 mm that is a hundredth of a micron.
const WHOLE: f64 = 1e-9;

/// Most seconds for one program, so that a run ends.
pub(crate) const LIMIT: f64 = 300.0;

/// The best size value of `stated` that is not below `least`, proven by HiGHS; none where nothing is.
///
/// # Panics
///
/// Where HiGHS neither proves an optimum nor that there is none.
pub(crate) fn best(stated: &Stated, least: f64) -> Option<f64> {
    let mut program = RowProblem::default();
    let columns = stated.objective.iter().zip(&stated.bounds);
    let columns: Vec<Col> = columns.map(|(weight, (low, high))| program.add_column(*weight, *low..=*high)).collect();
    if least > f64::NEG_INFINITY {
        let worth: Vec<(Col, f64)> = columns.iter().copied().zip(stated.objective.iter().copied()).collect();
        program.add_row(least - stated.constant.., worth);
    }
    for row in &stated.always {
        program.add_row(..=row.most, terms(&columns, row));
    }
    let states = stated.ways.iter().flatten().max().map_or(0, |last| last + 1);
    let stands: Vec<Col> = (0..states).map(|_| program.add_integer_column(0.0, 0.0..=1.0)).collect();
    for ways in &stated.ways {
        program.add_row(1.0..=1.0, ways.iter().map(|state| (stands[*state], 1.0)).collect::<Vec<_>>());
    }
    for choice in &stated.choices {
        let picks: Vec<Col> = choice.costs.iter().map(|cost| program.add_integer_column(-cost, 0.0..=1.0)).collect();
        for (pick, alternative) in picks.iter().zip(&choice.alternatives) {
            for row in alternative {
                let off = most_excess(row, &stated.bounds).max(0.0);
                let mut terms = terms(&columns, row);
                terms.push((*pick, off));
                program.add_row(..=row.most + off, terms);
            }
        }
        // One of them, unless a piece stands elsewhere.
        let others = choice.when.iter().map(|state| (stands[*state], -1.0));
        let terms: Vec<_> = picks.iter().map(|pick| (*pick, 1.0)).chain(others).collect();
        program.add_row(1.0 - choice.when.len() as f64.., terms);
    }
    let mut model = program.optimise(Sense::Maximise);
    model.make_quiet();
    model.set_option("threads", 1);
    model.set_option("parallel", "off");
    model.set_option("mip_allow_restart", false);
    model.set_option("mip_rel_gap", 1e-9);
    model.set_option("mip_abs_gap", 1e-9);
    model.set_option("mip_feasibility_tolerance", WHOLE);
    model.set_option("primal_feasibility_tolerance", 1e-9);
    model.set_option("time_limit", LIMIT);
    // The picks come after all others, in the order of the choices.
    let costs = stated.choices.iter().flat_map(|choice| choice.costs.iter().map(|cost| -cost));
    let weights: Vec<f64> = stated.objective.iter().copied().chain(vec![0.0; states]).chain(costs).collect();
    answer(&model.solve(), &weights).map(|value| stated.constant + value)
}

/// What the columns of an optimum are worth; none where it is proven that there is none.
///
/// # Panics
///
/// Where HiGHS proves neither.
pub(crate) fn answer(solved: &SolvedModel, weights: &[f64]) -> Option<f64> {
    match solved.status() {
        HighsModelStatus::Optimal => {
            let solution = solved.get_solution();
            Some(weights.iter().zip(solution.columns()).map(|(weight, value)| weight * value).sum())
        }
        HighsModelStatus::Infeasible | HighsModelStatus::UnboundedOrInfeasible => None,
        other => panic!("HiGHS ended with {other:?}"),
    }
}

fn terms(columns: &[Col], row: &Row) -> Vec<(Col, f64)> {
    row.terms.iter().map(|(variable, coefficient)| (columns[*variable], *coefficient)).collect()
}

/// By how much the row can be broken within the bounds.
fn most_excess(row: &Row, bounds: &[(f64, f64)]) -> f64 {
    let most = |(variable, coefficient): &(usize, f64)| {
        let (low, high) = bounds[*variable];
        (coefficient * low).max(coefficient * high)
    };
    row.terms.iter().map(most).sum::<f64>() - row.most
}
