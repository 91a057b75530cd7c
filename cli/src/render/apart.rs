//! What sets one option apart from another, item by item, in the reader's unit.

use elbowroom_model::{Dimension, Rounding, Unit};
use elbowroom_solver::comparison::Apart;

use crate::render::lengths::shop_unit;
use crate::words::apart as words;

/// Differences in words, those in the size of one piece together: `view +20`, `coffee table 12 cm wider and 3 cm deeper`.
pub(super) fn words<'a>(units: Unit, all: impl IntoIterator<Item = &'a Apart>) -> Vec<String> {
    let all: Vec<&Apart> = all.into_iter().collect();
    let length = |by: f64| shop_unit(units).words(by.abs(), Rounding::Nearest);
    let sizes_of = |name: &str| -> Vec<(Dimension, String, bool)> {
        let sizes = all.iter().filter_map(|apart| match apart {
            Apart::Size { piece, dimension, by } if piece == name => Some((*dimension, length(*by), *by > 0.0)),
            _ => None,
        });
        sizes.collect()
    };
    let mut told_pieces: Vec<&str> = Vec::new();
    let mut told = Vec::new();
    for apart in &all {
        told.push(match apart {
            Apart::Score { criterion, by } => words::score(criterion.key(), *by),
            Apart::Size { piece, .. } if told_pieces.contains(&piece.as_str()) => continue,
            Apart::Size { piece, .. } => {
                told_pieces.push(piece);
                words::sizes(piece, &sizes_of(piece))
            }
            Apart::Width { from, to, by } => words::way(from, to, &length(*by), *by > 0.0),
            Apart::Piece { piece, stands } => words::piece(piece, *stands),
        });
    }
    told
}
