//! An option with its figures as they are told.

use super::figures::{point, thousandth};
use super::option::{Gap, Largest, PlanValue, RankedOption};
use super::size::{DimensionRange, PieceSizes};
use crate::composition::TermCost;
use crate::criteria::Judgement;
use crate::routes::Route;

/// The option with its figures rounded; its layout stays as it was solved.
pub(super) fn rounded(mut option: RankedOption) -> RankedOption {
    for figure in {
        let Largest { size_value, objective, bound, .. } = &mut option.largest;
        let PlanValue { value, bound: plan_bound, .. } = &mut option.planned;
        [&mut option.score, size_value, objective, bound, value, plan_bound]
    } {
        *figure = thousandth(*figure);
    }
    option.sizes.iter_mut().for_each(told_to_a_thousandth);
    option.gaps.iter_mut().for_each(gap);
    option.routes.iter_mut().chain(&mut option.largest.routes).for_each(route);
    option.planned.composition.iter_mut().for_each(term);
    option.judgements.iter_mut().for_each(judgement);
    if let Some(circle) = &mut option.turning_circle {
        circle.centre = point(circle.centre);
    }
    option
}

/// The figures of a piece's sizes, rounded.
pub(crate) fn told_to_a_thousandth(sizes: &mut PieceSizes) {
    dimension(&mut sizes.width);
    let PieceSizes { return_length, second_return, return_depth, .. } = sizes;
    [return_length, second_return, return_depth].into_iter().flatten().for_each(dimension);
    dimension(&mut sizes.depth);
}

fn dimension(range: &mut DimensionRange) {
    for figure in [&mut range.least, &mut range.planned, &mut range.together, &mut range.most]
        .into_iter()
        .chain(&mut range.alone)
        .chain(&mut range.aim)
    {
        *figure = thousandth(*figure);
    }
}

fn term(term: &mut TermCost) {
    term.off = thousandth(term.off);
    term.cost = thousandth(term.cost);
}

fn gap(gap: &mut Gap) {
    gap.clear = thousandth(gap.clear);
    gap.needs = thousandth(gap.needs);
}

fn route(route: &mut Route) {
    route.width = thousandth(route.width);
    route.needs = thousandth(route.needs);
    route.length = route.length.map(thousandth);
    if let Some(pinch) = &mut route.pinch {
        pinch.at = pinch.at.map(point);
    }
}

fn judgement(judgement: &mut Judgement) {
    judgement.score = thousandth(judgement.score);
    judgement.figure = thousandth(judgement.figure);
}
