//! What is learnt from pieces of the stock that have no place together in a room.
//!
//! Fewer pieces need not fit where more do, nor smaller ones where larger do: a console stands behind a sofa that is no
//! shorter. So a refusal holds for the very pieces that were laid out, and beside them for those alone that cannot help
//! them: what no other piece stands by, and what was shown to help at none of the sizes it can have.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Piece, PieceKind, Stands};

use super::Owned;
use super::hope::are_alike;
use super::pick::{Pick, RefusedSet};
use super::tolerance::ROUNDING;
use crate::program::Row;

/// The row that keeps a refused set out of a room, by what each of the room's variables puts where.
pub(super) fn row(refused: &RefusedSet, uses: impl Iterator<Item = (usize, Pick)>, stock: &[Owned]) -> Row {
    let factor = |one: Pick| match refused.picks.iter().find(|pick| pick.asked == one.asked) {
        Some(pick) if is_like(stock, one.row, pick.row) => Some(1.0),
        Some(_) => None,
        None if refused.beside.contains(&one) => None,
        None => Some(-1.0),
    };
    let terms: Vec<(usize, f64)> = uses.filter_map(|(variable, one)| Some((variable, factor(one)?))).collect();
    Row::at_most(terms, refused.picks.len() as f64 - 1.0)
}

/// Whether a refused set is of the row of the stock in this place, among others.
pub(super) fn concerns(refused: &RefusedSet, pick: Pick, stock: &[Owned]) -> bool {
    refused.picks.iter().any(|own| own.asked == pick.asked && is_like(stock, own.row, pick.row))
}

/// Whether a room cannot tell two rows of the stock apart.
fn is_like(stock: &[Owned], one: usize, other: usize) -> bool {
    one == other || stock.get(one).zip(stock.get(other)).is_some_and(|(one, other)| are_alike(&one.piece, &other.piece))
}

/// Whether another piece may have a place only since one of `kind` stands there: it stands by it, faces it, or is held to
/// other rules beside it.
pub(super) fn may_help(kind: PieceKind) -> bool {
    kind.is_seat()
        || kind.stands_before_seat()
        || kind.carries_screen()
        || matches!(kind.traits().stands, Stands::AtWallOrBehindSeat)
}

/// Whether a row of the stock is one of those that `piece` stands for when it may have any of its sizes.
pub(super) fn is_of_any_size(piece: &Piece, listed: &ListedPiece) -> bool {
    let is_within = |dimension| {
        let both = piece.range(dimension).zip(listed.size(dimension));
        both.is_some_and(|(range, size)| (range.least - ROUNDING..=range.most + ROUNDING).contains(&size))
    };
    piece.kind == listed.kind
        && piece.dimensions().into_iter().all(is_within)
        && listed
            .return_depth
            .is_none_or(|own| piece.return_depth.is_some_and(|range| range.least <= own && own <= range.most))
        && listed.height.is_none_or(|height| height >= piece.height)
        && listed.chaise.is_none_or(|chaise| chaise == piece.chaise)
        && listed.screen.is_none()
        && listed.seats.is_none()
}
