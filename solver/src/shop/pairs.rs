//! Which two candidates cannot stand in one set, whatever the others are.

use super::found::PairFound;
use super::sets_context::{Seat, SetsContext};
use super::trial::may_fit;
use crate::best_by;
use crate::{Limits, Unwatched, rank};

/// Pairs that are told, so that hostile lists end too.
const MOST_TOLD: usize = 12;

/// Pairs out of two of `rows` that do not go together, all else as the room asks for it, with what fails in the
/// arrangement that misses least.
pub(super) fn at_fault(context: &SetsContext<'_>, rows: &[Vec<Seat>]) -> Vec<PairFound> {
    let mut found = Vec::new();
    for (place, others) in rows.iter().enumerate() {
        for one in rows.iter().take(place).flatten() {
            for other in others {
                if found.len() < MOST_TOLD && !may_fit(&context.brief_as_asked(&[*one, *other])) {
                    found.push(told(context, *one, *other));
                }
            }
        }
    }
    found
}

fn told(context: &SetsContext<'_>, one: Seat, other: Seat) -> PairFound {
    let answer = rank(&context.brief_as_asked(&[one, other]), &Limits { shown: 0, ..Limits::default() }, &Unwatched);
    let nearest = best_by(&answer.refused, |refused| -refused.short_by().unwrap_or(f64::INFINITY));
    PairFound { between: [one.1, other.1], nearest: nearest.cloned() }
}
