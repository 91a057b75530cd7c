//! Lamps and side tables out of the ways: what the search cannot weigh, since lines that are walked are no linear rows. A small
//! piece that stands where one walks from door to door is tried in every other place that it may have, all else as planned.

use elbowroom_model::{PieceId, Term};

use crate::arrangement::Arrangement;
use crate::composition::TermCost;
use crate::criteria::Walkers;
use crate::routes::Floor;
use crate::search::{Elsewhere, Found, RoomContext, Searched};

/// What costs less is left as it is: it would be moved for a few centimetres.
const WORTH_MOVING: f64 = 50.0;

/// The plan with each such piece where walkers and plan together are the better for it; `None` where none is, or where rules
/// are eased, which counts for more. `walked` says what walkers make of a plan; `searched` takes the work.
pub(crate) fn out_of_ways(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
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
    for (piece, saved) in in_the_way(&walkers.terms) {
        let from = best.as_ref().unwrap_or(plan).clone();
        let mut total = from.objective - cost;
        let to_beat = from.objective - saved;
        let Some(elsewhere) = Elsewhere::of(room, floor, arrangement, &from, piece, to_beat) else { continue };
        for more in elsewhere.by_stands() {
            searched.take_work_of(&more);
            let Some(found) = more.found else { continue };
            let costs = walked(&found).cost();
            if found.objective - costs > total + 1.0 {
                (total, cost) = (found.objective - costs, costs);
                best = Some(found);
            }
        }
    }
    best
}

/// The small pieces that stand in a way and what that costs, dearest first.
fn in_the_way(terms: &[TermCost]) -> Vec<(PieceId, f64)> {
    let costly = terms.iter().filter(|told| told.term == Term::SmallByWay && told.cost > WORTH_MOVING);
    let mut found: Vec<(PieceId, f64)> = costly.map(|told| (told.piece, told.cost)).collect();
    found.sort_by(|(_, one), (_, other)| other.total_cmp(one));
    found
}
