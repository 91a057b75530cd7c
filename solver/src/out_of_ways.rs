//! Pieces out of the ways: what the search cannot weigh, since lines that are walked and floor that is walked to are no linear
//! rows. A lamp or side table that stands where one walks from door to door, what a main way runs through the group beside, and
//! what cuts floor off is tried in every other place that it may have, all else as planned.

use elbowroom_model::{PieceId, Term};

use crate::arrangement::Arrangement;
use crate::composition::TermCost;
use crate::criteria::Walkers;
use crate::rules::With;
use crate::search::{ArrangementContext, Elsewhere, Found, Rest, Searched};

/// What costs less is left as it is: it would be moved for a few centimetres.
const WORTH_MOVING: f64 = 50.0;

/// The plan with each such piece where walkers and plan together are the better for it; `None` where none is, or where rules
/// are eased, which counts for more. `walked` says what walkers make of a plan; `searched` takes the work.
pub(crate) fn out_of_ways(
    context: &ArrangementContext<'_>,
    plan: &Found,
    walkers: &Walkers,
    walked: &dyn Fn(&Found) -> Walkers,
    searched: &mut Searched,
) -> Option<Found> {
    if !plan.eased.is_empty() {
        return None;
    }
    let mut best: Option<Found> = None;
    let mut cost = walkers.cost();
    for InTheWay { piece, saved, is_small } in in_the_way(&walkers.terms, context.arrangement) {
        let from = best.as_ref().unwrap_or(plan).clone();
        let to_beat = from.objective - saved;
        let Some(elsewhere) = Elsewhere::of(context, context.arrangement, &from, piece, to_beat) else { continue };
        // All else stays where it is, or, where that helps nothing, slides for what is small.
        let rests = if is_small { &[Rest::Still, Rest::Slides][..] } else { &[Rest::Still] };
        let moved = rests.iter().find_map(|rest| {
            let tried = elsewhere.by_stands(*rest);
            best_of(tried, from.objective - cost, walked, searched)
        });
        if let Some((found, costs)) = moved {
            best = Some(found);
            cost = costs;
        }
    }
    best
}

/// Of what was found the best for plan and walkers together, with what walkers make of it; `None` where none is better than
/// `total` by enough to tell.
fn best_of(
    tried: Vec<Searched>,
    mut total: f64,
    walked: &dyn Fn(&Found) -> Walkers,
    searched: &mut Searched,
) -> Option<(Found, f64)> {
    let mut best = None;
    for more in tried {
        searched.take_work_of(&more);
        let Some(found) = more.found else { continue };
        let costs = walked(&found).cost();
        if found.objective - costs > total + 1.0 {
            total = found.objective - costs;
            best = Some((found, costs));
        }
    }
    best
}

/// What stands in a way.
struct InTheWay {
    piece: PieceId,
    /// What it would save at most to have it elsewhere.
    saved: f64,
    /// A lamp or side table, which has its place by others.
    is_small: bool,
}

/// What stands in a way, dearest first; not the main seat, which the arrangement is about.
fn in_the_way(terms: &[TermCost], arrangement: &Arrangement) -> Vec<InTheWay> {
    let mut found: Vec<InTheWay> = Vec::new();
    for told in terms.iter().filter(|told| told.cost > WORTH_MOVING) {
        let other = if let With::Piece(other) = told.with { Some(other) } else { None };
        for piece in std::iter::once(told.piece).chain(other).filter(|piece| *piece != arrangement.main_seat) {
            let is_small = told.term == Term::SmallByWay;
            match found.iter_mut().find(|known| known.piece == piece) {
                Some(known) => (known.saved, known.is_small) = (known.saved + told.cost, known.is_small || is_small),
                None => found.push(InTheWay { piece, saved: told.cost, is_small }),
            }
        }
    }
    found.sort_by(|one, other| other.saved.total_cmp(&one.saved));
    found
}
