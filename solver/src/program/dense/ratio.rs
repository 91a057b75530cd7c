//! Which column gives way to the one that leaves: the dual ratio test, flipping bounds on the way.

use super::line::Line;
use super::statement::Statement;
use super::tableau::Tableau;
use crate::program::tolerance;

/// A column that can help to mend what is broken.
struct Candidate {
    column: usize,
    /// Variable or slack, for ties.
    index: usize,
    /// Dual step at which the column's reduced cost is used up.
    ratio: f64,
    /// How fast it mends.
    pace: f64,
    /// How far it can go.
    room: f64,
}

/// What the test found.
pub(super) enum Entry {
    /// This column enters, after a dual step of this length.
    Column(usize, f64),
    /// All columns at their far limits would not mend it.
    None,
}

/// Finds the column that enters. `broken` is by how much the one that leaves breaks its limit. Columns whose whole room does
/// not mend it are flipped to their other bound on the way (noted in `flips`), as long as `flipping` is allowed.
pub(super) fn test(
    statement: &Statement,
    tableau: &Tableau,
    gradient: &[f64],
    broken: f64,
    flipping: bool,
    flips: &mut Line<usize>,
) -> Entry {
    flips.clear();
    let mut candidates = candidates(statement, tableau, gradient);
    let reach: f64 = candidates.iter().map(|candidate| candidate.pace * candidate.room).sum();
    if reach < broken - tolerance::WORKING || candidates.is_empty() {
        return Entry::None;
    }
    let mut left = broken;
    loop {
        let best = next(&candidates, flipping);
        let candidate = candidates.swap_remove(best);
        left -= candidate.pace * candidate.room;
        if left <= 0.0 || candidates.is_empty() || !flipping {
            return Entry::Column(candidate.column, candidate.ratio);
        }
        flips.push(candidate.column);
    }
}

/// What the objective loses at least when something broken by `broken` is mended: what the first dual step costs. Infinite
/// where all columns at their far limits would not mend it. `apart` are the terms of what is broken whose variables have no
/// column yet.
pub(super) fn least_loss(
    statement: &Statement,
    tableau: &Tableau,
    gradient: &[f64],
    apart: impl Iterator<Item = (usize, f64)>,
    broken: f64,
) -> f64 {
    let mut candidates = candidates(statement, tableau, gradient);
    // A variable that no row could move so far helps from the column that it would be given.
    candidates.extend(apart.zip(tableau.columns.len()..).filter_map(|((variable, coefficient), column)| {
        let stands = Stands { column, index: variable, high: statement.is_better_high(variable) };
        stands.helping(-coefficient, statement.objective[variable], || statement.room(variable))
    }));
    let reach: f64 = candidates.iter().map(|candidate| candidate.pace * candidate.room).sum();
    if reach < broken - tolerance::FEASIBLE {
        return f64::INFINITY;
    }
    let (mut loss, mut passed, mut left) = (0.0, 0.0, broken);
    while left > 0.0 && !candidates.is_empty() {
        let candidate = candidates.swap_remove(next(&candidates, true));
        loss += (candidate.ratio - passed).max(0.0) * left;
        passed = candidate.ratio.max(passed);
        left -= candidate.pace * candidate.room;
    }
    loss
}

fn candidates(statement: &Statement, tableau: &Tableau, gradient: &[f64]) -> Line<Candidate> {
    let mut candidates = Line::new();
    for (column, entry) in gradient.iter().enumerate() {
        let stands = Stands { column, index: tableau.columns[column], high: tableau.high[column] };
        candidates.extend(stands.helping(*entry, tableau.reduced[column], || tableau.room(statement, column)));
    }
    candidates
}

/// What stands at a bound, and in which column.
struct Stands {
    column: usize,
    /// Variable or slack.
    index: usize,
    /// At the upper bound.
    high: bool,
}

impl Stands {
    /// It as a candidate, where it can help: what is broken moves with it by `entry`, the objective by `reduced`.
    fn helping(self, entry: f64, reduced: f64, room: impl FnOnce() -> f64) -> Option<Candidate> {
        let toward = if self.high { -1.0 } else { 1.0 };
        let pace = entry * toward;
        if pace <= tolerance::PIVOT {
            return None;
        }
        let (ratio, room) = ((-reduced * toward / pace).max(0.0), room());
        (room > 0.0).then_some(Candidate { column: self.column, index: self.index, ratio, pace, room })
    }
}

/// The candidate with the least ratio; of a tie the fastest where `fast` (it is the safest pivot), then the smallest index.
fn next(candidates: &[Candidate], fast: bool) -> usize {
    let least = candidates.iter().map(|candidate| candidate.ratio).fold(f64::INFINITY, f64::min);
    let tie = if fast { tolerance::RATIO_TIE } else { tolerance::STEP };
    let mut best = 0;
    let mut chosen: Option<&Candidate> = None;
    for (position, candidate) in candidates.iter().enumerate() {
        if candidate.ratio > least + tie {
            continue;
        }
        let better = chosen.is_none_or(|chosen| {
            if fast && candidate.pace != chosen.pace {
                candidate.pace > chosen.pace
            } else {
                candidate.index < chosen.index
            }
        });
        if better {
            best = position;
            chosen = Some(candidate);
        }
    }
    best
}
