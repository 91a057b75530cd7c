//! The dual simplex: while the point breaks something, mend what it breaks most.

use super::line::{self, Line};
use super::ratio::{self, Entry};
use super::statement::Statement;
use super::tableau::{Leaving, Tableau};
use crate::program::tolerance;

/// How the one that leaves is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Pricing {
    /// What is broken most; the smallest index after a stall, until there is progress again.
    Largest,
    /// The smallest index throughout (Bland's rule).
    SmallestIndex,
}

/// How the iterations ended.
pub(super) enum End {
    /// Nothing is broken.
    Optimal,
    /// These weights of rows show that nothing keeps them all.
    Infeasible(Vec<(usize, f64)>),
    /// No point has more than this, which is not above what was to be beaten.
    Beaten(f64),
    /// Too many steps.
    Exhausted,
}

/// Something that is broken.
#[derive(Debug, Clone, Copy)]
struct Broken {
    leaving: Leaving,
    /// Variable or slack, for ties.
    index: usize,
    by: f64,
}

/// Runs to an end from the present basis, or until no point can have more than `to_beat`.
pub(super) fn run(statement: &Statement, tableau: &mut Tableau, pricing: Pricing, to_beat: f64) -> End {
    let mut gradient = line::zeros(tableau.columns.len());
    let mut flips = Line::new();
    let mut stalled = 0;
    let mut refined = false;
    for _ in 0..tolerance::STEPS_EACH * (statement.variables() + statement.rows() + 1) {
        let careful = pricing == Pricing::SmallestIndex || stalled > tolerance::STALL;
        let Some(broken) = choose(statement, tableau, careful) else {
            if !refined && tableau.drift(statement) > tolerance::DRIFT {
                tableau.refine(statement);
                refined = true;
                continue;
            }
            return End::Optimal;
        };
        tableau.gradient(statement, broken.leaving, &mut gradient);
        match ratio::test(statement, tableau, &gradient, broken.by, !careful, &mut flips) {
            Entry::None => return End::Infeasible(against(tableau, broken.leaving, &gradient).into_vec()),
            Entry::Column(column, length) => {
                stalled = if length > tolerance::STEP { 0 } else { stalled + 1 };
                step(statement, tableau, broken.leaving, column, &gradient, &flips);
                if let Some(bound) = beaten(statement, tableau, to_beat) {
                    return End::Beaten(bound);
                }
            }
        }
    }
    End::Exhausted
}

/// What no point has more than, where that is not above `to_beat`: the objective only falls from step to step.
fn beaten(statement: &Statement, tableau: &Tableau, to_beat: f64) -> Option<f64> {
    if to_beat == f64::NEG_INFINITY || statement.worth(&tableau.values) > to_beat {
        return None;
    }
    let bound = statement.bound(&statement.objective, &tableau.row_weights());
    (bound <= to_beat).then_some(bound)
}

/// What is broken most, or (`careful`) what is broken and has the smallest index.
fn choose(statement: &Statement, tableau: &Tableau, careful: bool) -> Option<Broken> {
    let mut worst: Option<Broken> = None;
    let mut weigh = |broken: Broken| {
        let better = worst.is_none_or(|worst| {
            if careful || broken.by == worst.by { broken.index < worst.index } else { broken.by > worst.by }
        });
        if broken.by > tolerance::WORKING && better {
            worst = Some(broken);
        }
    };
    for (line, variable) in tableau.lines.iter().enumerate() {
        let value = tableau.values[*variable];
        let (below, above) = (statement.lower[*variable] - value, value - statement.upper[*variable]);
        weigh(Broken { leaving: Leaving::Line(line, above > below), index: *variable, by: below.max(above) });
    }
    statement.each_slack(&tableau.values, &tableau.tight, |row, slack| {
        weigh(Broken { leaving: Leaving::Row(row), index: statement.variables() + row, by: -slack });
    });
    worst
}

/// Flips the bounds passed on the way, moves the one that leaves to its limit, and exchanges it for the one that enters.
fn step(
    statement: &Statement,
    tableau: &mut Tableau,
    leaving: Leaving,
    column: usize,
    gradient: &[f64],
    flips: &[usize],
) {
    for flip in flips {
        tableau.flip(statement, *flip);
    }
    let left = match leaving {
        Leaving::Line(line, high) => {
            let variable = tableau.lines[line];
            let value = tableau.values[variable];
            if high { value - statement.upper[variable] } else { statement.lower[variable] - value }
        }
        Leaving::Row(row) => -statement.slack(row, &tableau.values),
    };
    tableau.shift(column, left / gradient[column]);
    tableau.pivot(statement, leaving, column, gradient);
}

/// The weights of rows that show that the one that leaves cannot be mended.
fn against(tableau: &Tableau, leaving: Leaving, gradient: &[f64]) -> Line<(usize, f64)> {
    let mut weights = tableau.weigh(gradient.iter().copied());
    if let Leaving::Row(row) = leaving {
        weights.push((row, 1.0));
    }
    weights
}
