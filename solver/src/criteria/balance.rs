//! Balance: how well a plan is composed, what found no place in it, and whether the room leans to one side.
//!
//! Rests on the terms of a plan (`crate::composition`), which are common practice but for those with a source of their own.

use elbowroom_model::{Brief, Piece, PieceId, Point, Term, ring};

use super::criteria_context::CriteriaContext;
use super::curve::weighted_mean;
use super::judged::{Absent, FigureUnit, Judged, Missing};
use super::on_axis::{is_of_axis, off_axis};
use super::tolerance::SAME_PLACE;
use super::yardstick::Yardstick;
use crate::answer::Thing;
use crate::best_by;
use crate::composition::{TermCost, worth};
use crate::geometry::Convex;
use crate::layout::Placed;

/// What takes a point off, in millimetres of shortfall of a piece that counts 3 (tuned over rooms of real dwellings, no
/// source): a screen 10 cm off its axis takes 30.
const A_POINT: f64 = 25.0;

/// What leans by more of the half of a room leaves a side of it empty (ours, no source).
const EMPTY_SIDE: f64 = 0.3;

/// What balance is made of.
#[derive(Debug, Clone, PartialEq)]
pub struct BalanceFinding {
    /// The seat whose axis it is.
    pub seat: PieceId,
    /// What costs most by lying off an axis, or off the middle of its wall; `None` where nothing does.
    pub worst: Option<OffAxis>,
    /// What all terms of the plan cost, in millimetres of shortfall of a piece that counts 3.
    pub placement: f64,
    /// Pieces that need not stand and found no place.
    pub left_out: Vec<PieceId>,
    /// What they would be worth, in the same measure.
    pub left_out_worth: f64,
    /// How far the middle of all that stands (its areas' moment) lies from the middle of the room, mm.
    pub lean: f64,
    /// One side of the room is left empty.
    pub empty_side: bool,
}

/// Something that lies off the axis it belongs on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OffAxis {
    /// The term that it costs.
    pub term: Term,
    /// The piece.
    pub piece: PieceId,
    /// Whose axis or middle it is off.
    pub from: Thing,
    /// How far, mm.
    pub off: f64,
}

/// The yardstick: 100 less a twenty-fifth of what the terms of the plan cost and of what the pieces left out are worth.
///
/// Of a layout that no search laid out, what lies off the main seat's axis is measured ([`off_axis`]), at the same prices.
/// Where no seat stands there is nothing to balance.
pub(super) struct Balance;

impl Yardstick for Balance {
    type Subject<'a> = ();
    type Finding = BalanceFinding;

    /// A seat is always asked for.
    fn subject(_brief: &Brief) -> Result<(), Missing> {
        Ok(())
    }

    fn judge<'a>(context: &CriteriaContext<'a>, (): &()) -> Judged<Self::Finding> {
        let Some(group) = &context.group else { return Judged::absent(Absent::Seats) };
        let seat = group.main;
        let terms = context.in_room.composition.map_or_else(|| off_axis(context, seat), <[TermCost]>::to_vec);
        let is_earned = |term: &TermCost| context.walkers.earns(term.term);
        let all = terms.iter().filter(|term| !is_earned(term)).chain(&context.walkers.terms);
        let placement = all.map(|term| term.cost).sum();
        let left_out_worth = worth_left_out(context);
        let worst = worst(&terms);
        let Lean { off: lean, of_half } = lean(context);
        let finding = BalanceFinding {
            seat: seat.piece,
            worst,
            placement,
            left_out: context.in_room.layout.left_out.clone(),
            left_out_worth,
            lean,
            empty_side: of_half > EMPTY_SIDE,
        };
        let score = (100.0 - (placement + left_out_worth) / A_POINT).max(0.0);
        Judged::new(score, worst.map_or(0.0, |worst| worst.off), FigureUnit::Millimetres, finding)
    }
}

/// What costs most by lying off an axis.
fn worst(terms: &[TermCost]) -> Option<OffAxis> {
    let off = terms.iter().filter(|term| is_of_axis(term.term) && term.off > SAME_PLACE);
    let worst = best_by(off, |term| term.cost)?;
    Some(OffAxis { term: worst.term, piece: worst.piece, from: worst.other(), off: worst.off })
}

fn worth_left_out(context: &CriteriaContext) -> f64 {
    let brief = context.brief();
    let left_out = context.in_room.layout.left_out.iter().filter_map(|id| brief.piece(*id));
    left_out.map(|piece| worth(piece, &brief.wishes)).sum()
}

/// How far the middle of all that stands lies from the middle of the room.
struct Lean {
    /// In mm.
    off: f64,
    /// Over the half of the room across.
    of_half: f64,
}

fn lean(context: &CriteriaContext) -> Lean {
    let room = &context.brief().room;
    let middle = ring::centre_of_area(&room.outline());
    let off = middle_of_all(context).map_or(0.0, |all| (all - middle).norm());
    let half = room.area().max(0.0).sqrt() / 2.0;
    Lean { off, of_half: if half > 0.0 { off / half } else { 0.0 } }
}

/// Whether a piece takes floor.
fn stands_on_floor(piece: &Piece) -> bool {
    !piece.kind.is_flat() && !piece.kind.hangs()
}

/// The middle of the floor that is stood on.
fn middle_of_all(context: &CriteriaContext) -> Option<Point> {
    let stands = context
        .in_room
        .layout
        .placed
        .iter()
        .filter(|placed| context.brief().piece(placed.piece).is_some_and(stands_on_floor));
    let weighed = |direction: fn(Point) -> f64| {
        let parts = stands.clone().flat_map(Placed::parts);
        weighted_mean(parts.map(|part: Convex| (direction(part.middle()), part.area())))
    };
    Some(Point::new(weighed(|point| point.x)?, weighed(|point| point.y)?))
}
