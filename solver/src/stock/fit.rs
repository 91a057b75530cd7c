//! Which pieces of the stock have a place in a room, side by side.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, ItemKind, Piece};

use super::tolerance::ROUNDING;
use super::{Asked, Asking, Chosen, Miss, Owned, StockRoom};
use crate::answer::{Answer, PieceSizes, RankedOption};
use crate::best_by;

/// What a piece brings for standing in its place, and what one brings that stands in for another kind.
const STANDING: f64 = 100.0;
const STANDING_IN: f64 = 50.0;

/// What fits side by side in one option: for each thing that is asked for, the rows of the stock, in their order.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pattern {
    /// Score of the option, whole points.
    pub(super) score: i64,
    /// For each thing that is asked for.
    pub(super) rows: Vec<Vec<usize>>,
}

impl Pattern {
    /// It holds whatever the other does, and scores no less.
    pub(super) fn covers(&self, other: &Self) -> bool {
        let holds =
            |(mine, theirs): (&Vec<usize>, &Vec<usize>)| theirs.iter().all(|row| mine.binary_search(row).is_ok());
        self.score >= other.score && self.rows.iter().zip(&other.rows).all(holds)
    }
}

/// The patterns of a room in all its furnishings, those left out that another covers.
pub(super) fn patterns(asking: &Asking, stock: &[Owned]) -> Vec<Pattern> {
    let (mut kept, asked): (Vec<Pattern>, _) = (Vec::new(), asking.asked());
    for stage in stages(&asking.room) {
        let pattern = stage.pattern(&asked, stock);
        if !kept.iter().any(|other| other.covers(&pattern)) {
            kept.retain(|other| !pattern.covers(other));
            kept.push(pattern);
        }
    }
    kept
}

/// An option that pieces of the stock may stand in.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stage<'a> {
    pub(super) room: &'a StockRoom,
    pub(super) answer: &'a Answer,
    pub(super) option: &'a RankedOption,
}

/// The options of a room in all its furnishings.
pub(super) fn stages(room: &StockRoom) -> impl Iterator<Item = Stage<'_>> {
    room.options().map(move |(answer, option)| Stage { room, answer, option })
}

/// The options of a room as it was asked for in all its furnishings, no set being decided.
pub(super) fn stages_as_asked(room: &StockRoom) -> impl Iterator<Item = Stage<'_>> {
    let options = room.answers().flat_map(|answer| answer.options.iter().map(move |option| (answer, option)));
    options.map(move |(answer, option)| Stage { room, answer, option })
}

/// One of the options of a room.
pub(super) fn stage(room: &StockRoom, chosen: Chosen) -> Option<Stage<'_>> {
    room.chosen(chosen).map(|(answer, option)| Stage { room, answer, option })
}

impl<'a> Stage<'a> {
    fn pattern(&self, all: &[Asked], stock: &[Owned]) -> Pattern {
        let rows = all.iter().map(|asked| {
            let fitting = stock.iter().enumerate().filter(|(row, owned)| self.takes(asked, *row, &owned.piece));
            fitting.map(|(row, _)| row).collect()
        });
        Pattern { score: self.option.score.round() as i64, rows: rows.collect() }
    }

    /// Whether `listed`, the stock's `row`, can be what is asked for, whatever else stands there within the option's sizes.
    pub(super) fn takes(&self, asked: &Asked, row: usize, listed: &ListedPiece) -> bool {
        let (Some(piece), Some(sizes)) = (self.piece(asked), self.sizes_of(asked)) else { return false };
        self.is_such(piece, listed)
            && within(piece, sizes, listed)
            && clears_windows(&self.answer.asked, piece, listed)
            && self.room.lets_in(row)
    }

    /// The piece that stands for all of `asked` here.
    pub(super) fn piece(&self, asked: &Asked) -> Option<&'a Piece> {
        self.answer.asked.piece(*asked.pieces.first()?)
    }

    /// How large the piece that stands for all of `asked` may be; `None` where it does not stand there.
    pub(super) fn sizes_of(&self, asked: &Asked) -> Option<&'a PieceSizes> {
        self.option.sizes_of(self.answer.solved_as(*asked.pieces.first()?)?)
    }

    /// Of its kind and hand, of as many returns, for as many people.
    fn is_such(&self, piece: &Piece, listed: &ListedPiece) -> bool {
        piece.kind == listed.kind
            && piece.second_return.is_some() == listed.second_return.is_some()
            && is_handed(self.option, listed)
            && seats_enough(piece, listed)
    }

    /// What keeps `listed` out of its place: the dimension that lies furthest from what the option takes, or else what is
    /// no matter of its size; `None` where it is another thing altogether, or nothing keeps it out.
    pub(super) fn miss(&self, asked: &Asked, row: usize, listed: &ListedPiece) -> Option<Miss> {
        let (piece, sizes) = (self.piece(asked)?, self.sizes_of(asked)?);
        if !self.is_such(piece, listed) {
            return None;
        }
        let off = |dimension: Dimension| {
            let (range, size) = (sizes.get(dimension)?, listed.size(dimension)?);
            let by = if size > range.together { size - range.together } else { (size - range.least).min(0.0) };
            Some((dimension, by))
        };
        let furthest = best_by(piece.dimensions().into_iter().filter_map(off), |(_, by)| by.abs());
        match furthest.filter(|(_, by)| by.abs() > ROUNDING) {
            Some((dimension, by)) => Some(Miss::Size { dimension, by }),
            None if !clears_windows(&self.answer.asked, piece, listed) => Some(Miss::Sill),
            None => (!self.room.lets_in(row)).then_some(Miss::Way),
        }
    }
}

/// Each size is from the least that is asked for to the most that the option allows together.
fn within(piece: &Piece, sizes: &PieceSizes, listed: &ListedPiece) -> bool {
    // Where the return has no depth of its own, that of all runs holds for it.
    let return_fits = listed.return_depth.is_none_or(|own| {
        let (least, most) = (sizes.depth.least - ROUNDING, sizes.depth.together + ROUNDING);
        sizes.return_depth.is_some() || (least..=most).contains(&own)
    });
    return_fits
        && piece.dimensions().into_iter().all(|dimension| {
            let (Some(range), Some(size)) = (sizes.get(dimension), listed.size(dimension)) else { return false };
            (range.least - ROUNDING..=range.together + ROUNDING).contains(&size)
        })
}

/// A corner sofa has the hand of the option; a row that says no hand can have either.
fn is_handed(option: &RankedOption, listed: &ListedPiece) -> bool {
    let Some(hand) = option.choices.hand else { return true };
    listed.return_length.is_none() || listed.hands.is_empty() || listed.hands.contains(&hand)
}

/// Whether as many people sit at it as are asked for, where the list says how many do.
pub(super) fn seats_enough(piece: &Piece, listed: &ListedPiece) -> bool {
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

/// Points that a piece of the stock brings where it stands: 100 for standing there, or 50 where it stands in for another
/// kind; up to 50 for its size by its own kind, up to 50 for how well it is liked (25 where nobody says).
pub(super) fn points(piece: &Piece, stands_in: bool, listed: &ListedPiece) -> i64 {
    let value = |size: fn(Dimension, &ListedPiece, &Piece) -> Option<f64>| -> f64 {
        piece.dimensions().into_iter().filter_map(|dimension| size(dimension, listed, piece)).sum()
    };
    let has = value(|dimension, listed, piece| Some(piece.range(dimension)?.value(listed.size(dimension)?)));
    let most = value(|dimension, _, piece| piece.range(dimension).map(|range| range.value(range.most)));
    // One size and no other is all the size there can be.
    let size = if most > 0.0 { (has / most).clamp(0.0, 1.0) } else { 1.0 };
    let liked = listed.score.map_or(25.0, |score| score.clamp(0.0, 100.0) / 2.0);
    let standing = if stands_in { STANDING_IN } else { STANDING };
    (standing + 50.0 * size + liked).round() as i64
}
