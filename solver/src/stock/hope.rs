//! What may serve a room beyond what its options say: every piece that is as asked for, until the solver says that it
//! has no place there.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Dimension, Piece};

use super::fit::{Pattern, seats_enough};
use super::tolerance::ROUNDING;
use super::{Asking, Owned};
use crate::answer::Answer;

/// The score of a pattern that is only hoped for: any that is known comes before it.
const HOPED: i64 = -1;

/// For each furnishing of a room that has an option, the pieces that could be its must-haves and its main seats.
pub(super) fn hopes(asking: &Asking, stock: &[Owned], known: &[Pattern]) -> Vec<Pattern> {
    let (asked, heads) = (asking.asked(), asking.main_seats());
    let of_furnishing = |answer: &Answer| {
        let rows = asked.iter().enumerate().map(|(place, asked)| {
            let piece = asked.pieces.first().and_then(|id| answer.asked.piece(*id));
            let piece = piece.filter(|_| asked.must || heads.contains(&place));
            let can_be = |(row, owned): &(usize, &Owned)| {
                asking.room.lets_in(*row) && piece.is_some_and(|piece| is_as_asked(piece, &owned.piece))
            };
            stock.iter().enumerate().filter(can_be).map(|(row, _)| row).collect()
        });
        Pattern { score: HOPED, rows: rows.collect() }
    };
    let with_options = asking.room.answers().filter(|answer| !answer.options.is_empty());
    with_options.map(of_furnishing).filter(|hope| !known.iter().any(|known| known.covers(hope))).collect()
}

/// Of the kind that is asked for, of one of its hands, for as many people, and of sizes within those that are asked for.
fn is_as_asked(piece: &Piece, listed: &ListedPiece) -> bool {
    let is_handed =
        piece.hands.is_empty() || listed.hands.is_empty() || piece.hands.iter().any(|hand| listed.hands.contains(hand));
    let own_depth = piece.return_depth.unwrap_or(piece.depth);
    let holds = |least: f64, most: f64, size: f64| (least - ROUNDING..=most + ROUNDING).contains(&size);
    piece.kind == listed.kind
        && piece.second_return.is_some() == listed.second_return.is_some()
        && seats_enough(piece, listed)
        && is_handed
        && listed.return_depth.is_none_or(|own| holds(own_depth.least, own_depth.most, own))
        && piece.dimensions().into_iter().all(|dimension| {
            let both = piece.range(dimension).zip(listed.size(dimension));
            both.is_some_and(|(range, size)| holds(range.least, range.most, size))
        })
}

/// Whether `one` is smaller in nothing than `other`. That says nothing of fit: a smaller piece may have no place where a larger has.
pub(super) fn is_no_smaller(one: &ListedPiece, other: &ListedPiece) -> bool {
    let is_as_large = |dimension: &Dimension| match (one.size(*dimension), other.size(*dimension)) {
        (Some(own), Some(its)) => own >= its,
        (own, its) => own.is_none() && its.is_none(),
    };
    let is_as_high = match (one.height, other.height) {
        (Some(own), Some(its)) => own >= its,
        (own, its) => own.is_none() && its.is_none(),
    };
    let is_as_handed =
        other.hands.is_empty() || (!one.hands.is_empty() && one.hands.iter().all(|hand| other.hands.contains(hand)));
    one.kind == other.kind
        && Dimension::ALL.iter().all(is_as_large)
        && is_as_high
        && is_as_handed
        && (one.chaise, one.screen, one.seats) == (other.chaise, other.screen, other.seats)
}

/// Whether a room cannot tell the two apart.
pub(super) fn are_alike(one: &ListedPiece, other: &ListedPiece) -> bool {
    is_no_smaller(one, other) && is_no_smaller(other, one)
}
