//! A dense dual simplex for programs whose variables are all bounded.
//!
//! Each variable starts at its better bound, so the start is dual feasible and there is no first phase: a new row can only
//! make the point break it, never make the basis useless. What is held is small: a line for each variable that is strictly
//! inside its bounds, which is never more lines than there are variables or tight rows, and a column for each variable that a
//! row can move. Rows that are not tight are kept as they were written and weighed on demand, so they carry no accumulated
//! error at all.
//!
//! Nothing is answered on the tableau's word: an optimum is certified by a bound from the rows as written, an infeasible
//! program by a weighted sum of them that no point within the bounds can meet. Where the certificate fails, the program is
//! solved again from its start; where that fails too, the answer is `Interrupted`.

mod dual;
mod line;
mod ratio;
mod statement;
mod tableau;

use self::dual::{End, Pricing};
use self::statement::Statement;
use self::tableau::{Place, Tableau};
use super::row::{Engine, Row, Status};
use super::tolerance;

/// Engine on a dense bounded dual simplex. A clone copies a dozen flat vectors; `clone_from` into one that is done with
/// asks for no memory.
#[derive(Debug)]
pub struct Dense {
    statement: Statement,
    tableau: Tableau,
    /// The last optimum, cleaned to the bounds.
    point: Vec<f64>,
    objective: f64,
    /// Every figure so far was finite and every variable known.
    sound: bool,
    solved: usize,
}

impl Clone for Dense {
    fn clone(&self) -> Self {
        Self { statement: self.statement.clone(), tableau: self.tableau.clone(), point: self.point.clone(), ..*self }
    }

    fn clone_from(&mut self, source: &Self) {
        self.statement.clone_from(&source.statement);
        self.tableau.clone_from(&source.tableau);
        self.point.clone_from(&source.point);
        (self.objective, self.sound, self.solved) = (source.objective, source.sound, source.solved);
    }
}

impl Dense {
    /// Solves from the present basis; once more from the start, by the slow and safe rule, where that went wrong. Gives up
    /// where the optimum is not above `to_beat`.
    fn solve(&mut self, to_beat: f64) -> Status {
        self.solved += 1;
        if !self.sound {
            return Status::Interrupted;
        }
        if self.statement.crossed() {
            return Status::Infeasible;
        }
        for pricing in [Pricing::Largest, Pricing::SmallestIndex] {
            match dual::run(&self.statement, &mut self.tableau, pricing, to_beat) {
                End::Optimal if self.publish() => return Status::Optimal,
                End::Beaten(bound) => {
                    self.objective = bound;
                    return Status::Beaten;
                }
                End::Infeasible(weights) if self.statement.excludes(&weights) => return Status::Infeasible,
                End::Optimal | End::Infeasible(_) | End::Exhausted => {
                    self.tableau = Tableau::start(&self.statement);
                }
            }
        }
        Status::Interrupted
    }

    /// Takes the tableau's point over if it is an optimum of the rows as written.
    fn publish(&mut self) -> bool {
        let point = self.statement.cleaned(&self.tableau.values);
        let objective = self.statement.worth(&point);
        let bound = self.statement.bound(&self.statement.objective, &self.tableau.row_weights());
        let certified = self.statement.worst_excess(&point) <= tolerance::FEASIBLE
            && bound - objective <= tolerance::GAP + tolerance::GAP_SHARE * self.statement.scale();
        if certified {
            self.point.copy_from_slice(&point);
            self.objective = objective;
        }
        certified
    }
}

impl Engine for Dense {
    fn start(objective: &[f64], bounds: &[(f64, f64)]) -> Self {
        let sound = objective.len() == bounds.len()
            && objective.iter().all(|weight| weight.is_finite())
            && bounds.iter().all(|(lower, upper)| lower.is_finite() && upper.is_finite());
        let statement = Statement::new(objective, bounds);
        let tableau = Tableau::start(&statement);
        let point = tableau.values.clone();
        let objective = statement.worth(&point);
        Self { statement, tableau, point, objective, sound, solved: 0 }
    }

    fn hold(&mut self, rows: &[Row]) {
        let variables = self.statement.variables();
        self.sound &= rows.iter().all(|row| row.is_finite() && row.fits(variables));
        if self.sound {
            for row in rows {
                self.statement.push(row);
                self.tableau.take(&self.statement, self.statement.rows() - 1);
            }
        }
    }

    fn add_to_beat(&mut self, rows: &[Row], to_beat: f64) -> Status {
        self.hold(rows);
        self.solve(to_beat)
    }

    fn probe(&self, row: &Row) -> f64 {
        if !self.sound || !row.is_finite() || !row.fits(self.statement.variables()) {
            return self.objective;
        }
        let broken = row.excess(&self.tableau.values);
        if broken <= tolerance::FEASIBLE {
            return self.objective;
        }
        let mut gradient = line::zeros(self.tableau.columns.len());
        self.tableau.gradient_of(&row.terms, &mut gradient);
        let is_apart = |(variable, _): &&(usize, f64)| self.tableau.place[*variable] == Place::Apart;
        let apart = row.terms.iter().filter(is_apart).copied();
        let loss = ratio::least_loss(&self.statement, &self.tableau, &gradient, apart, broken);
        self.objective - (loss - tolerance::GAP).max(0.0)
    }

    fn aim(&mut self, objective: &[f64]) -> Status {
        self.sound &=
            objective.len() == self.statement.variables() && objective.iter().all(|weight| weight.is_finite());
        if self.sound {
            self.statement.objective = objective.into();
            self.tableau = Tableau::start(&self.statement);
        }
        self.solve(f64::NEG_INFINITY)
    }

    fn values(&self) -> &[f64] {
        &self.point
    }

    fn objective(&self) -> f64 {
        self.objective
    }

    fn solved(&self) -> usize {
        self.solved
    }
}
