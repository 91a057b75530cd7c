//! Ranges of variables, narrowed by rows until no more is gained: known as bound propagation (Savelsbergh 1994,
//! "Preprocessing and probing techniques for mixed integer programming problems", from memory).

use elbowroom_solver::program::Row;

/// Rounds over all rows at most.
const ROUNDS: usize = 12;

/// A range that narrows by less is left, mm.
const GAIN: f64 = 0.01;

/// Rounding, mm: a row broken by less is kept, and a range that rows give is left wider by it.
const ROUNDING: f64 = 1e-7;

/// The least and the most of each variable.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Ranges(pub(crate) Vec<(f64, f64)>);

impl Ranges {
    /// Least and most of the left-hand side.
    pub(crate) fn of(&self, row: &Row) -> (f64, f64) {
        row.terms.iter().fold((0.0, 0.0), |(low, high), (variable, coefficient)| {
            let (a, b) = (coefficient * self.0[*variable].0, coefficient * self.0[*variable].1);
            (low + a.min(b), high + a.max(b))
        })
    }

    /// By how much the row can be broken.
    pub(crate) fn most_excess(&self, row: &Row) -> f64 {
        (self.of(row).1 - row.most).max(0.0)
    }

    /// No point breaks the row.
    pub(crate) fn keep(&self, row: &Row) -> bool {
        self.of(row).1 <= row.most + ROUNDING
    }

    /// Narrows all by rows that hold; false where no point is left.
    pub(crate) fn narrow<'r>(&mut self, rows: impl Iterator<Item = &'r Row> + Clone) -> bool {
        for _ in 0..ROUNDS {
            let mut gains = false;
            for row in rows.clone() {
                let Some(gain) = self.narrow_by(row) else { return false };
                gains |= gain;
            }
            if !gains {
                break;
            }
        }
        true
    }

    /// Whether one row gained anything; none where no point keeps it.
    fn narrow_by(&mut self, row: &Row) -> Option<bool> {
        let (least, most) = self.of(row);
        if least > row.most + ROUNDING {
            return None;
        }
        if most <= row.most {
            return Some(false);
        }
        let mut gains = false;
        for (variable, coefficient) in &row.terms {
            let (low, high) = self.0[*variable];
            let own = (coefficient * low).min(coefficient * high);
            let reach = (row.most - (least - own)) / coefficient;
            if *coefficient > 0.0 && reach < high - GAIN {
                self.0[*variable].1 = (reach + ROUNDING).max(low);
                gains = true;
            } else if *coefficient < 0.0 && reach > low + GAIN {
                self.0[*variable].0 = (reach - ROUNDING).min(high);
                gains = true;
            }
        }
        Some(gains)
    }

    /// What lies in both; none where a variable has nothing in both.
    pub(crate) fn within(&self, other: &Self) -> Option<Self> {
        let both = self.0.iter().zip(&other.0).map(|(a, b)| {
            let (low, high) = (a.0.max(b.0), a.1.min(b.1));
            (low <= high + ROUNDING).then_some((low, high.max(low)))
        });
        both.collect::<Option<_>>().map(Self)
    }

    /// The least ranges about all of these; none about nothing.
    pub(crate) fn about(all: impl IntoIterator<Item = Self>) -> Option<Self> {
        let wider = |a: Self, b: Self| Self(a.0.iter().zip(&b.0).map(|(a, b)| (a.0.min(b.0), a.1.max(b.1))).collect());
        all.into_iter().reduce(wider)
    }
}
