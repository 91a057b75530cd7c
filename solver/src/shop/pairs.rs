//! Which two candidates cannot stand in one set, whatever the others are.

use std::collections::BTreeMap;
use std::sync::Mutex;

use super::found::PairFound;
use super::sets_context::{Seat, SetsContext};
use super::trial::may_fit;
use crate::best_by;
use crate::{Limits, Unwatched, rank};

/// Pairs that are told, so that hostile lists end too.
const MOST_TOLD: usize = 12;

/// Pairs as far as they were looked at: whether they may go together.
#[derive(Debug, Default)]
pub(super) struct Pairs {
    known: Mutex<BTreeMap<(Seat, Seat), bool>>,
}

impl Pairs {
    /// Whether both may stand in one set, all other rows at the least of their candidates.
    pub(super) fn may_go(&self, context: &SetsContext<'_>, one: Seat, other: Seat) -> bool {
        let key = (one.min(other), one.max(other));
        if let Some(known) = self.known.lock().ok().and_then(|known| known.get(&key).copied()) {
            return known;
        }
        let may = may_fit(&context.brief_of(&[key.0, key.1]));
        if let Ok(mut known) = self.known.lock() {
            known.insert(key, may);
        }
        may
    }
}

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
