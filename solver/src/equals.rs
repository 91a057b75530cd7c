//! Between places that cost alike, the one that is judged best. Tall storage at one end of a wall may hide the window that it
//! leaves free at the other, which no term of the plan tells apart; so it is tried in every other place that costs no more than
//! what no eye tells apart, all else as planned.

use elbowroom_model::{Brief, PieceId};

use crate::arrangement::{Arrangement, Role};
use crate::criteria::seat_places::SITTING_EYE;
use crate::criteria::{Judgement, Walkers};
use crate::search::{ArrangementContext, Elsewhere, Found, Rest, Searched};

/// Plans whose costs differ by less are equals: what a proof allows.
const EQUALS: f64 = 25.0;

/// A plan is judged better from so much of a point on.
const BETTER: f64 = 0.1;

/// What becomes of a plan when all is judged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Worth {
    /// The mean of its scores, whatever the wishes: a plan does not hang on those, so that other wishes need no other plan.
    pub(crate) score: f64,
    /// What walkers make of it costs so much.
    pub(crate) walkers: f64,
}

impl Worth {
    /// What becomes of a plan that was judged so.
    pub(crate) fn of(judgements: &[Judgement], walkers: &Walkers) -> Self {
        let sum: f64 = judgements.iter().map(|judgement| judgement.score).sum();
        Self { score: sum / judgements.len().max(1) as f64, walkers: walkers.cost() }
    }
}

/// The plan, which is worth so much now, with each such piece where it is judged best; `None` where none is better elsewhere,
/// or where rules are eased.
pub(crate) fn best_of_equals(
    context: &ArrangementContext<'_>,
    plan: &Found,
    mut now: Worth,
    worth: &dyn Fn(&Found) -> Worth,
    searched: &mut Searched,
) -> Option<Found> {
    let tall = tall_storage(context.room.brief, context.arrangement, plan);
    if !plan.eased.is_empty() || tall.is_empty() {
        return None;
    }
    let mut best: Option<Found> = None;
    let least = plan.objective - now.walkers - EQUALS;
    for piece in tall {
        let from = best.as_ref().unwrap_or(plan).clone();
        let Some(elsewhere) = Elsewhere::of(context, context.arrangement, &from, piece, least) else { continue };
        for more in elsewhere.along_walls(Rest::of(context.room.brief)) {
            searched.take_work_of(&more);
            let Some(found) = more.found else { continue };
            let its = worth(&found);
            if found.objective - its.walkers >= least && its.score > now.score + BETTER {
                now = its;
                best = Some(found);
            }
        }
    }
    best
}

/// What stands at a wall, belongs to no seat and is over the eye of one who sits.
fn tall_storage(brief: &Brief, arrangement: &Arrangement, plan: &Found) -> Vec<PieceId> {
    let is_other = |piece: PieceId| {
        arrangement.standings.iter().any(|standing| standing.piece == piece && standing.role == Role::Other)
    };
    let is_tall =
        |piece: PieceId| brief.piece(piece).is_some_and(|piece| piece.kind.is_storage() && piece.height > SITTING_EYE);
    let placed = plan.layout.placed.iter().filter(|placed| placed.at_wall.is_some());
    placed.map(|placed| placed.piece).filter(|piece| is_other(*piece) && is_tall(*piece)).collect()
}
