//! What walkers make of a plan, priced like its other terms: a main way across the group, a lamp in its way, floor cut off.
//!
//! Lines that are walked and floor that is walked to are no linear rows: the search does not weigh them, and they are asked of
//! the finished plan.

use elbowroom_model::{Clearance, Point, Stands, Term, tables};

use super::across_group::{Through, through_group};
use super::criteria_context::CriteriaContext;
use crate::composition::TermCost;
use crate::geometry::{Segment, gap_to_segment};
use crate::rules::With;

/// What walkers make of a plan: each term that costs something.
pub(super) fn terms(context: &CriteriaContext) -> Vec<TermCost> {
    let mut found = ways_across(context);
    found.extend(small_by_ways(context));
    found.extend(cut_off(context));
    found
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
    let floor = context.walked_floor();
    let piece = floor.cut_off_by.filter(|_| floor.cut_off > price.free)?;
    Some(TermCost { term: Term::CutOff, piece, with: With::Itself, off: floor.cut_off - price.free, cost: price.flat })
}
