//! Rows of a program and what an engine must do with them.

use smallvec::SmallVec;

/// Variables, each with its coefficient. Nearly every row concerns two pieces square to each other, which takes eight at
/// most: those need no memory of their own.
pub type Terms = SmallVec<[(usize, f64); 8]>;

/// `sum of coefficient x variable <= most`. A variable stands in it once at most.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Row {
    /// Variable and coefficient, by growing variable, no zero coefficients.
    pub terms: Terms,
    /// Right-hand side.
    pub most: f64,
}

impl Row {
    /// A row from terms in any order; terms of one variable are added up, zeros dropped.
    #[must_use]
    pub fn at_most(terms: impl IntoIterator<Item = (usize, f64)>, most: f64) -> Self {
        let mut terms: Terms = terms.into_iter().collect();
        terms.sort_by_key(|(variable, _)| *variable);
        terms.dedup_by(|later, earlier| {
            let same = later.0 == earlier.0;
            earlier.1 += if same { later.1 } else { 0.0 };
            same
        });
        terms.retain(|(_, coefficient)| *coefficient != 0.0);
        Self { terms, most }
    }

    /// `sum >= least`, written as a row.
    #[must_use]
    pub fn at_least(terms: impl IntoIterator<Item = (usize, f64)>, least: f64) -> Self {
        Self::at_most(terms.into_iter().map(|(variable, coefficient)| (variable, -coefficient)), -least)
    }

    /// No coefficient and no right-hand side is infinite or not a number.
    #[must_use]
    pub fn is_finite(&self) -> bool {
        self.most.is_finite() && self.terms.iter().all(|(_, coefficient)| coefficient.is_finite())
    }

    /// Every variable that it names is among the first `variables`.
    #[must_use]
    pub fn fits(&self, variables: usize) -> bool {
        self.terms.iter().all(|(variable, _)| *variable < variables)
    }

    /// Left-hand side less right-hand side at `values`: positive where the row is broken.
    #[must_use]
    pub fn excess(&self, values: &[f64]) -> f64 {
        self.terms.iter().map(|(variable, coefficient)| coefficient * values[*variable]).sum::<f64>() - self.most
    }
}

/// How solving ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// At an optimum.
    Optimal,
    /// No point keeps every row.
    Infeasible,
    /// No point has more than was asked to be beaten: given up before the optimum was found.
    Beaten,
    /// A work limit was hit, or a coefficient was not finite: nothing is known.
    Interrupted,
}

/// A linear program that maximises, held at an optimum of its rows so far. Cloning it is how a search branches.
pub trait Engine: Clone + Send + Sync {
    /// A program with no rows: each variable has a finite lower and upper bound (lower <= upper).
    fn start(objective: &[f64], bounds: &[(f64, f64)]) -> Self;

    /// Adds rows and solves again by the dual simplex from the present basis.
    fn add(&mut self, rows: &[Row]) -> Status {
        self.add_to_beat(rows, f64::NEG_INFINITY)
    }

    /// Adds rows; an engine may leave the solving to what is added next.
    fn hold(&mut self, rows: &[Row]) {
        self.add(rows);
    }

    /// The same as [`Engine::add`] where only an optimum above `to_beat` is worth finding.
    fn add_to_beat(&mut self, rows: &[Row], to_beat: f64) -> Status;

    /// No point that keeps `row` besides has more than this, as far as a first look can tell; negative infinity where none
    /// keeps it. Nothing is solved and nothing changes; the last status must have been optimal, and no row been held since.
    fn probe(&self, _row: &Row) -> f64 {
        self.objective()
    }

    /// Replaces the objective and solves again.
    fn aim(&mut self, objective: &[f64]) -> Status;

    /// The present point, one value a variable (within its bounds); what stood before where the last status was not optimal.
    fn values(&self) -> &[f64];

    /// Objective at the present point; after [`Status::Beaten`] what no point has more than.
    fn objective(&self) -> f64;

    /// Programs solved so far by this engine and what it was cloned from.
    fn solved(&self) -> usize;
}
