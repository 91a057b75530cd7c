//! Figures as results tell them: lengths to a thousandth of a millimetre, so that rounding of the programs is not told.

use elbowroom_model::Point;

use crate::layout::Size;
use crate::outcome::{CriterionFound, DimensionFound, GapFound, OptionFound, PieceFound, RangeFound, RouteFound};

/// The option with its figures rounded.
pub(crate) fn rounded(mut option: OptionFound) -> OptionFound {
    for figure in [&mut option.score, &mut option.size_value, &mut option.objective, &mut option.bound] {
        *figure = thousandth(*figure);
    }
    option.choices.facing = thousandth(option.choices.facing);
    option.pieces.iter_mut().for_each(piece);
    option.gaps.iter_mut().for_each(gap);
    option.routes.iter_mut().for_each(route);
    option.criteria.iter_mut().for_each(criterion);
    if let Some(circle) = &mut option.turning_circle {
        circle.centre = point(circle.centre);
    }
    option
}

/// To a thousandth.
pub(crate) fn thousandth(figure: f64) -> f64 {
    let told = (figure * 1e3).round() / 1e3;
    // A negative zero would be told as one.
    if told == 0.0 { 0.0 } else { told }
}

fn point(at: Point) -> Point {
    Point::new(thousandth(at.x), thousandth(at.y))
}

fn piece(piece: &mut PieceFound) {
    for corner in piece.parts.iter_mut().flatten() {
        *corner = point(*corner);
    }
    piece.facing = thousandth(piece.facing);
    piece.height = thousandth(piece.height);
    let Size { width, return_length, depth } = piece.size;
    piece.size =
        Size { width: thousandth(width), return_length: return_length.map(thousandth), depth: thousandth(depth) };
    let RangeFound { width, return_length, depth } = piece.range;
    piece.range =
        RangeFound { width: dimension(width), return_length: return_length.map(dimension), depth: dimension(depth) };
}

fn dimension(range: DimensionFound) -> DimensionFound {
    DimensionFound {
        least: thousandth(range.least),
        together: thousandth(range.together),
        alone: range.alone.map(thousandth),
        most: thousandth(range.most),
    }
}

fn gap(gap: &mut GapFound) {
    gap.clear = thousandth(gap.clear);
    gap.needs = thousandth(gap.needs);
}

fn route(route: &mut RouteFound) {
    route.width = thousandth(route.width);
    route.needs = thousandth(route.needs);
    route.length = route.length.map(thousandth);
    if let Some(pinch) = &mut route.pinch {
        pinch.at = pinch.at.map(point);
    }
}

fn criterion(criterion: &mut CriterionFound) {
    criterion.score = thousandth(criterion.score);
    criterion.figure = thousandth(criterion.figure);
}
