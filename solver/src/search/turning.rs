//! Arrangements with the chairs that may be turned held square, or turned by one angle.

use crate::arrangement::{Arrangement, Stand, Standing};
use crate::layout::Layout;

/// The arrangement with every chair square that may be square or turned; `None` where there is none.
pub(super) fn square(arrangement: &Arrangement) -> Option<Arrangement> {
    if !arrangement.standings.iter().any(may_be_either) {
        return None;
    }
    let mut square = arrangement.clone();
    for standing in square.standings.iter_mut().filter(|standing| may_be_either(standing)) {
        standing.stands.retain(|stand| stand.turn.is_none());
    }
    Some(square)
}

/// Whether it may stand square as well as turned.
fn may_be_either(standing: &Standing) -> bool {
    let any_is = |turned: bool| standing.stands.iter().any(|stand| stand.turn.is_some() == turned);
    any_is(true) && any_is(false)
}

/// `held` with every chair that stands and may be turned so far turned, to either side.
pub(super) fn turned(mut held: Arrangement, arrangement: &Arrangement, degrees: f64) -> Arrangement {
    for (held, all) in held.standings.iter_mut().zip(&arrangement.standings) {
        let is_so = |stand: &&Stand| stand.turn.is_some_and(|turn| turn.degrees == degrees);
        let turned: Vec<Stand> = all.stands.iter().filter(is_so).copied().collect();
        if !turned.is_empty() {
            held.stands = turned;
        }
    }
    held
}

/// Whether a chair that may be turned does not stand in `layout`.
pub(super) fn lacks_a_chair(arrangement: &Arrangement, layout: &Layout) -> bool {
    let may_turn = |standing: &&Standing| standing.stands.iter().any(|stand| stand.turn.is_some());
    arrangement.standings.iter().filter(may_turn).any(|standing| layout.of(standing.piece).is_none())
}
