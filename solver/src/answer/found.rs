//! From a candidate and its place in the order to an option of the answer.

use elbowroom_model::{Brief, Dimension, PieceId};

use super::option::{Largest, PlanValue, RankedOption, TurningCircle, TurnsIf};
use super::rounded::rounded;
use super::size::{DimensionRange, PieceSizes};
use crate::Limits;
use crate::candidate::{Candidate, Planned, Walked};
use crate::composition::Aims;
use crate::gaps::gaps;
use crate::layout::{Layout, Placed};
use crate::ranking::{Rating, family};
use crate::routes::Floor;
use crate::search::{Easing, RoomContext};
use crate::sizes::{self, AloneAsked};

/// What all options of a room share.
pub(crate) struct AnswerContext<'a> {
    pub(crate) room: &'a RoomContext<'a>,
    pub(crate) floor: &'a Floor,
    pub(crate) limits: &'a Limits,
    /// For each option, best first, the place of the first of its family.
    pub(crate) families: &'a [usize],
}

impl AnswerContext<'_> {
    /// Whether the option at `place`, from 0, gets the figures of those that are shown.
    pub(crate) fn is_shown(&self, place: usize) -> bool {
        family::is_shown(self.families, place, self.limits)
    }
}

/// The option that is `which` of the candidates, with the sizes of its pieces.
pub(crate) fn option(
    context: &AnswerContext<'_>,
    (candidates, order): (&[Candidate<'_>], &[usize]),
    rating: &Rating,
    which: usize,
    sizes: Vec<PieceSizes>,
) -> RankedOption {
    let key = |which: usize| candidates[which].planned.arrangement.key.clone();
    let Candidate { planned, largest: Walked { found: largest, routes: largest_routes } } = &candidates[which];
    let Planned { arrangement, plan, routes, eased, refund, judgements } = planned;
    let brief = context.room.brief;
    let place = order.iter().position(|other| *other == which).unwrap_or(order.len());
    let family = context.families.get(place).and_then(|first| order.get(*first)).map_or(which, |first| *first);
    rounded(RankedOption {
        rank: place + 1,
        key: arrangement.key.clone(),
        main_seat: arrangement.main_seat,
        choices: arrangement.choices.clone(),
        layout: plan.layout.clone(),
        sizes,
        family: key(family),
        score: rating.score,
        first_place_share: rating.share,
        dominated_by: rating.dominated_by.map(key),
        never_first: rating.never_first,
        by_size: which + 1,
        turns_if: rating.turns_if.as_ref().map(|turn| TurnsIf::of(turn, key)),
        set_aside: rating.set_aside,
        lapses: rating.lapses.clone(),
        judgements: judgements.clone(),
        gaps: gaps(brief, context.room.site, &plan.layout),
        routes: routes.clone(),
        turning_circle: turning_circle(brief, &plan.layout),
        eased: eased.clone(),
        planned: PlanValue::of(brief, arrangement, plan, *refund),
        largest: Largest {
            layout: largest.layout.clone(),
            routes: largest_routes.clone(),
            size_value: largest.layout.size_value(brief),
            objective: largest.objective,
            bound: largest.bound,
            proven: largest.is_proven(),
        },
    })
}

fn turning_circle(brief: &Brief, layout: &Layout) -> Option<TurningCircle> {
    Some(TurningCircle { centre: layout.turning_circle?, diameter: brief.rules.turning_circle()? })
}

/// How large each piece of a candidate may be, with what holds it where the option `is_shown`; and the programs that these
/// figures took.
pub(crate) fn sizes(
    context: &AnswerContext<'_>,
    candidate: &Candidate<'_>,
    is_shown: bool,
) -> (Vec<PieceSizes>, usize) {
    let held = if is_shown { sizes::held_by(context.room, &candidate.largest.found) } else { Vec::new() };
    let mut programs = 0;
    let mut found = Vec::new();
    for placed in &candidate.planned.plan.layout.placed {
        let held_by = held.iter().find(|(piece, _)| *piece == placed.piece).map(|(_, held)| held.clone());
        let (sizes, more) = of_piece(context, candidate, placed, is_shown);
        programs += more;
        found.extend(sizes.map(|sizes| PieceSizes { held_by: held_by.unwrap_or_default(), ..sizes }));
    }
    (found, programs)
}

fn of_piece(
    context: &AnswerContext<'_>,
    candidate: &Candidate<'_>,
    placed: &Placed,
    is_shown: bool,
) -> (Option<PieceSizes>, usize) {
    let aims = Aims::of(context.room.brief, context.room.site, &candidate.planned.arrangement);
    let mut programs = 0;
    let mut figures = |dimension: Dimension| {
        let piece = placed.piece;
        let asked = context.room.brief.piece(piece)?;
        let range = asked.range(dimension)?;
        let planned = placed.size.get(dimension)?;
        if dimension == Dimension::Width && asked.second_return.is_some() {
            // A U is told in the one width that it has in the plan.
            let (least, aim, alone) = (planned, aims.told(piece, dimension), is_shown.then_some(planned));
            return Some(DimensionRange { least, aim, planned, together: planned, alone, most: range.most });
        }
        let largest = candidate.largest.found.layout.of(placed.piece).unwrap_or(placed);
        // Both stand to a thousandth of a millimetre: the plan is one that fits too.
        let together = largest.size.get(dimension)?.max(planned);
        let alone = is_shown.then(|| alone(context, candidate, placed.piece, dimension)).flatten();
        programs += alone.map_or(0, |(_, programs)| programs);
        Some(DimensionRange {
            least: range.least,
            aim: aims.told(piece, dimension),
            planned,
            together,
            // By itself it is no less than together, to the last digit that is told.
            alone: alone.map(|(size, _)| size.max(together)),
            most: range.most,
        })
    };
    let (width, return_length, depth) =
        (figures(Dimension::Width), figures(Dimension::Return), figures(Dimension::Depth));
    let (second_return, return_depth) = (figures(Dimension::SecondReturn), figures(Dimension::ReturnDepth));
    let sizes = width.zip(depth).map(|(width, depth)| PieceSizes {
        piece: placed.piece,
        width,
        return_length,
        second_return,
        depth,
        return_depth,
        held_by: Vec::new(),
    });
    (sizes, programs)
}

fn alone(
    context: &AnswerContext<'_>,
    candidate: &Candidate<'_>,
    piece: PieceId,
    dimension: Dimension,
) -> Option<(f64, usize)> {
    let (layout, easing) = (&candidate.largest.found.layout, Easing::as_in(&candidate.planned.plan));
    let asked = AloneAsked { layout, piece, dimension, easing, nodes: context.limits.nodes / 10 };
    sizes::alone(context.room, context.floor, &candidate.planned.arrangement, asked)
}
