//! What walkers make of a plan, priced like its other terms: a main way across the group, a lamp in its way, floor cut off.
//!
//! Lines that are walked and floor that is walked to are no linear rows: the search does not weigh them, and they are asked of
//! the finished plan.

use elbowroom_model::{Clearance, PieceKind, Point, Stands, Term, tables};

use super::across_group::{Through, through_group};
use super::criteria_context::{CriteriaContext, Walkers};
use crate::chairs::chairs_at;
use crate::composition::TermCost;
use crate::geometry::{Convex, Segment, gap_to_segment};
use crate::layout::Placed;
use crate::rules::With;

/// What walkers make of a plan.
pub(super) fn walkers(context: &CriteriaContext) -> Walkers {
    let mut terms = ways_across(context);
    terms.extend(through_chairs(context));
    terms.extend(small_by_ways(context));
    terms.extend(cut_off(context));
    let main = context.group.as_ref().map(|group| group.main);
    let pass_behind = main.is_some_and(|main| context.main_lines().any(|(_, line)| passes_behind(main, line)));
    let pass_behind_return =
        main.is_some_and(|main| context.main_lines().any(|(_, line)| passes_behind_return(main, line)));
    Walkers { terms, pass_behind, pass_behind_return }
}

/// Each main way that cuts through the group, where it does so most.
fn ways_across(context: &CriteriaContext) -> Vec<TermCost> {
    let Some(group) = &context.group else { return Vec::new() };
    let price = tables::price(Term::WayAcross);
    let cuts = context.main_lines().filter_map(|(_, line)| through_group(context, group.main, line));
    let cuts = cuts.filter(|through| through.length > price.free);
    let cost = |through: Through| {
        let [piece, other] = through.between;
        let off = through.length - price.free;
        TermCost { term: Term::WayAcross, piece, with: With::Piece(other), off, cost: price.flat }
    };
    cuts.map(cost).collect()
}

/// Each main way that runs through the chairs of a dining table, drawn back as they are in use.
fn through_chairs(context: &CriteriaContext) -> Vec<TermCost> {
    let price = tables::price(Term::WayAcross);
    let tables = context.placed(PieceKind::is_dined_at);
    let cuts = tables.filter_map(|(piece, placed)| {
        let reach = context.brief().rules.get(piece.keeps_clear()?);
        let chairs: Vec<Convex> =
            chairs_at(context.brief(), piece, placed).iter().map(|chair| chair.drawn_back(reach)).collect();
        let through = |line: &[Point]| {
            let inside = |leg: &[Point], chair: &Convex| Segment::new(leg[0], leg[1]).length_inside(chair);
            chairs.iter().map(|chair| line.windows(2).map(|leg| inside(leg, chair)).sum()).fold(0.0, f64::max)
        };
        let most: f64 = context.main_lines().map(|(_, line)| through(line)).fold(0.0, f64::max);
        let (off, piece) = (most - price.free, placed.piece);
        (off > 0.0).then_some(TermCost { term: Term::WayAcross, piece, with: With::Itself, off, cost: price.flat })
    });
    cuts.collect()
}

/// Each lamp and side table that stands closer to where one walks than a walkway.
fn small_by_ways(context: &CriteriaContext) -> Vec<TermCost> {
    let walkway = context.brief().rules.get(Clearance::Walkway);
    let small = context.placed(|kind| kind.traits().stands == Stands::BesideSeats);
    let near = small.filter_map(|(_, placed)| {
        let legs = context.main_lines().flat_map(|(_, line)| line.windows(2));
        let off = |leg: &[Point]| gap_to_segment(&placed.main(), Segment::new(leg[0], leg[1])).clear;
        let nearest = legs.map(off).fold(f64::INFINITY, f64::min);
        let off = (walkway - nearest).max(0.0);
        let cost = off * tables::price(Term::SmallByWay).cost;
        (cost > 0.0).then_some(TermCost { term: Term::SmallByWay, piece: placed.piece, with: With::Itself, off, cost })
    });
    near.collect()
}

/// Floor that one cannot walk to, told of what stands nearest to it.
fn cut_off(context: &CriteriaContext) -> Option<TermCost> {
    let price = tables::price(Term::CutOff);
    let floor = &context.walked_floor;
    let piece = floor.cut_off_by.filter(|_| floor.cut_off > price.free)?;
    Some(TermCost { term: Term::CutOff, piece, with: With::Itself, off: floor.cut_off - price.free, cost: price.flat })
}

/// Whether a line passes square behind the middle of the main seat's back.
pub(super) fn passes_behind(seat: &Placed, line: &[Point]) -> bool {
    passes_behind_back(seat.back_middle(), seat.facing, line)
}

/// The same of the back of a return.
fn passes_behind_return(seat: &Placed, line: &[Point]) -> bool {
    seat.returns().any(|(part, facing)| {
        let back = part.corners().iter().map(|corner| corner.dot(facing)).fold(f64::INFINITY, f64::min);
        let middle = part.middle();
        passes_behind_back(middle + facing * (back - middle.dot(facing)), facing, line)
    })
}

/// Whether a line passes square behind a place at the back of what faces so.
fn passes_behind_back(back: Point, facing: Point, line: &[Point]) -> bool {
    line.windows(2).any(|leg| {
        let side = |point: Point| (point - back).dot(facing.left());
        let (first, last) = (side(leg[0]), side(leg[1]));
        let met = || leg[0] + (leg[1] - leg[0]) * (first / (first - last));
        first * last < 0.0 && (met() - back).dot(facing) < 0.0
    })
}
