//! An option with its figures as they are told.

use super::figures::{point, thousandth};
use super::option::{Gap, RankedOption};
use super::size::{DimensionRange, PieceSizes};
use crate::criteria::Judgement;
use crate::routes::Route;

/// The option with its figures rounded; its layout stays as it was solved.
pub(super) fn rounded(mut option: RankedOption) -> RankedOption {
    for figure in [&mut option.score, &mut option.size_value, &mut option.objective, &mut option.bound] {
        *figure = thousandth(*figure);
    }
    option.sizes.iter_mut().for_each(sizes);
    option.gaps.iter_mut().for_each(gap);
    option.routes.iter_mut().for_each(route);
    option.judgements.iter_mut().for_each(judgement);
    if let Some(circle) = &mut option.turning_circle {
        circle.centre = point(circle.centre);
    }
    option
}

fn sizes(sizes: &mut PieceSizes) {
    dimension(&mut sizes.width);
    sizes.return_length.iter_mut().for_each(dimension);
    dimension(&mut sizes.depth);
}

fn dimension(range: &mut DimensionRange) {
    for figure in [&mut range.least, &mut range.together, &mut range.most].into_iter().chain(&mut range.alone) {
        *figure = thousandth(*figure);
    }
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
