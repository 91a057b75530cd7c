//! What sets one option apart from another, item by item, in the reader's unit.

use elbowroom_model::{Rounding, Unit};
use elbowroom_solver::comparison::Apart;

use crate::render::lengths::shop_unit;
use crate::words::apart as words;

/// One difference in words: `view +20`, `coffee table 12 cm wider`.
pub(super) fn words(units: Unit, apart: &Apart) -> String {
    let length = |by: f64| shop_unit(units).words(by.abs(), Rounding::Nearest);
    match apart {
        Apart::Score { criterion, by } => words::score(criterion.key(), *by),
        Apart::Size { piece, dimension, by } => words::size(piece, *dimension, &length(*by), *by > 0.0),
        Apart::Width { from, to, by } => words::way(from, to, &length(*by), *by > 0.0),
        Apart::Piece { piece, stands } => words::piece(piece, *stands),
    }
}
