//! Figures as results tell them: lengths to a thousandth of a millimetre, so that rounding of the programs is not told.

use elbowroom_model::Point;

use crate::layout::Size;
use crate::outcome::{CriterionFound, DimensionFound, GapFound, OptionFound, PieceFound, RangeFound, RouteFound};

/// The option with its figures rounded.
pub(crate) fn rounded(mut option: OptionFound) -> OptionFound {
    for figure in [&mut option.score, &mut option.size_value, &mut option.objective, &mut option.bound] {
        *figure = length(*figure);
    }
    option.choices.facing = length(option.choices.facing);
    option.pieces.iter_mut().for_each(piece);
    option.gaps.iter_mut().for_each(gap);
    option.routes.iter_mut().for_each(route);
    option.criteria.iter_mut().for_each(criterion);
    option
}

/// To a thousandth.
fn length(figure: f64) -> f64 {
    let told = (figure * 1e3).round() / 1e3;
    // A negative zero would be told as one.
    if told == 0.0 { 0.0 } else { told }
}

fn point(at: Point) -> Point {
    Point::new(length(at.x), length(at.y))
}

fn piece(piece: &mut PieceFound) {
    for corner in piece.parts.iter_mut().flatten() {
        *corner = point(*corner);
    }
    piece.facing = length(piece.facing);
    piece.height = length(piece.height);
    let Size { width, return_length, depth } = piece.size;
    piece.size = Size { width: length(width), return_length: return_length.map(length), depth: length(depth) };
    let RangeFound { width, return_length, depth } = piece.range;
    piece.range =
        RangeFound { width: dimension(width), return_length: return_length.map(dimension), depth: dimension(depth) };
}

fn dimension(range: DimensionFound) -> DimensionFound {
    DimensionFound {
        least: length(range.least),
        together: length(range.together),
        alone: range.alone.map(length),
        most: length(range.most),
    }
}

fn gap(gap: &mut GapFound) {
    gap.clear = length(gap.clear);
    gap.needs = length(gap.needs);
}

fn route(route: &mut RouteFound) {
    route.width = length(route.width);
    route.needs = length(route.needs);
    route.length = route.length.map(length);
    if let Some(pinch) = &mut route.pinch {
        pinch.at = pinch.at.map(point);
    }
}

fn criterion(criterion: &mut CriterionFound) {
    criterion.score = length(criterion.score);
    criterion.figure = length(criterion.figure);
}
