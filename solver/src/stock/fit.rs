//! Which pieces of the stock have a place in a room, side by side.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, ItemKind, Piece};

use super::tolerance::ROUNDING;
use super::{Asked, Asking, Owned};
use crate::answer::{PieceSizes, RankedOption};
use crate::best_by;

/// What fits side by side in one option: for each thing that is asked for, the rows of the stock, in their order.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pattern {
    /// Place of the option in the room's options.
    pub(super) option: usize,
    /// Its score, whole points.
    pub(super) score: i64,
    /// For each thing that is asked for.
    pub(super) rows: Vec<Vec<usize>>,
}

impl Pattern {
    fn covers(&self, other: &Self) -> bool {
        let holds =
            |(mine, theirs): (&Vec<usize>, &Vec<usize>)| theirs.iter().all(|row| mine.binary_search(row).is_ok());
        self.score >= other.score && self.rows.iter().zip(&other.rows).all(holds)
    }
}

/// The patterns of a room, those left out that another covers.
pub(super) fn patterns(asking: &Asking, stock: &[Owned]) -> Vec<Pattern> {
    let mut kept: Vec<Pattern> = Vec::new();
    for (place, option) in asking.answer.options.iter().enumerate() {
        let pattern = pattern(asking, place, option, stock);
        if !kept.iter().any(|other| other.covers(&pattern)) {
            kept.retain(|other| !pattern.covers(other));
            kept.push(pattern);
        }
    }
    kept
}

fn pattern(asking: &Asking, place: usize, option: &RankedOption, stock: &[Owned]) -> Pattern {
    let all = asking.asked();
    let rows = all.iter().map(|asked| {
        let fitting = stock.iter().enumerate().filter(|(_, owned)| has_place(asking, option, asked, &owned.piece));
        fitting.map(|(row, _)| row).collect()
    });
    Pattern { option: place, score: option.score.round() as i64, rows: rows.collect() }
}

/// Whether `listed` can be what is asked for in `option`, whatever else stands there within the option's sizes.
pub(super) fn has_place(asking: &Asking, option: &RankedOption, asked: &Asked, listed: &ListedPiece) -> bool {
    let Some(piece) = asking.piece(asked) else { return false };
    let Some(sizes) = sizes_of(asking, option, asked) else { return false };
    piece.kind == listed.kind
        && within(piece, sizes, listed)
        && is_handed(option, listed)
        && seats_enough(piece, listed)
        && clears_windows(&asking.answer.asked, piece, listed)
}

/// How large the piece that stands for all of `asked` may be in `option`; `None` where it does not stand there.
pub(super) fn sizes_of<'a>(asking: &Asking, option: &'a RankedOption, asked: &Asked) -> Option<&'a PieceSizes> {
    option.sizes_of(asking.answer.solved_as(*asked.pieces.first()?)?)
}

/// Each size is from the least that is asked for to the most that the option allows together.
fn within(piece: &Piece, sizes: &PieceSizes, listed: &ListedPiece) -> bool {
    let is_u = piece.second_return.is_some() == listed.second_return.is_some();
    // Where the return has no depth of its own, that of all runs holds for it.
    let return_fits = listed.return_depth.is_none_or(|own| {
        let (least, most) = (sizes.depth.least - ROUNDING, sizes.depth.together + ROUNDING);
        sizes.return_depth.is_some() || (least..=most).contains(&own)
    });
    is_u && return_fits
        && piece.dimensions().into_iter().all(|dimension| {
            let (Some(range), Some(size)) = (sizes.get(dimension), listed.size(dimension)) else { return false };
            (range.least - ROUNDING..=range.together + ROUNDING).contains(&size)
        })
}

/// The dimension of `listed` that lies furthest from what `option` takes for `asked`, with how far beyond it lies, or below
/// 0 how far short; `None` where size is not what keeps it out.
pub(super) fn furthest(
    asking: &Asking,
    option: &RankedOption,
    asked: &Asked,
    listed: &ListedPiece,
) -> Option<(Dimension, f64)> {
    let (piece, sizes) = (asking.piece(asked)?, sizes_of(asking, option, asked)?);
    let is_u = piece.second_return.is_some() == listed.second_return.is_some();
    if piece.kind != listed.kind || !is_u || !is_handed(option, listed) || !seats_enough(piece, listed) {
        return None;
    }
    let off = |dimension: Dimension| {
        let (range, size) = (sizes.get(dimension)?, listed.size(dimension)?);
        let by = if size > range.together { size - range.together } else { (size - range.least).min(0.0) };
        Some((dimension, by))
    };
    best_by(piece.dimensions().into_iter().filter_map(off), |(_, by)| by.abs()).filter(|(_, by)| by.abs() > ROUNDING)
}

/// A corner sofa has the hand of the option; a row that says no hand can have either.
fn is_handed(option: &RankedOption, listed: &ListedPiece) -> bool {
    let Some(hand) = option.choices.hand else { return true };
    listed.return_length.is_none() || listed.hands.is_empty() || listed.hands.contains(&hand)
}

fn seats_enough(piece: &Piece, listed: &ListedPiece) -> bool {
    piece.seats.zip(listed.seats).is_none_or(|(wanted, has)| has >= wanted)
}

/// It rises above no window sill that the piece as asked for stays under: the option was not made for that.
fn clears_windows(brief: &Brief, piece: &Piece, listed: &ListedPiece) -> bool {
    // What hangs has the size that was asked for, at the height that was asked for.
    let Some(height) = listed.height.filter(|_| !piece.kind.hangs()) else { return true };
    let screen = piece.height_with_screen() - piece.height;
    brief.room.items.iter().all(|item| match &item.kind {
        ItemKind::Window(window) => piece.height + screen > window.sill || height + screen <= window.sill + ROUNDING,
        _ => true,
    })
}

/// Points that a piece of the stock brings where it stands: 100 for standing there, up to 50 for its size, up to 50 for
/// how well it is liked (25 where nobody says).
pub(super) fn points(piece: &Piece, listed: &ListedPiece) -> i64 {
    let value = |size: fn(Dimension, &ListedPiece, &Piece) -> Option<f64>| -> f64 {
        piece.dimensions().into_iter().filter_map(|dimension| size(dimension, listed, piece)).sum()
    };
    let has = value(|dimension, listed, piece| Some(piece.range(dimension)?.value(listed.size(dimension)?)));
    let most = value(|dimension, _, piece| piece.range(dimension).map(|range| range.value(range.most)));
    // One size and no other is all the size there can be.
    let size = if most > 0.0 { (has / most).clamp(0.0, 1.0) } else { 1.0 };
    let liked = listed.score.map_or(25.0, |score| score.clamp(0.0, 100.0) / 2.0);
    (100.0 + 50.0 * size + liked).round() as i64
}
