//! What a set costs beside the next better one, and what a smaller piece in it would save.

use elbowroom_model::Dimension;
use elbowroom_model::listing::{ListedPiece, Money};

use super::found::{Better, Costs, Saving};
use super::sets_context::SetsContext;
use super::tried_set::TriedSet;
use crate::best_by;

/// A set is better by a point at least: less is not told.
const A_POINT: f64 = 1.0;

/// What `set` costs beside those of `all` that were found; `None` where a price of it is not known.
pub(super) fn costs(context: &SetsContext<'_>, set: &TriedSet, all: &[TriedSet]) -> Option<Costs> {
    let price = set.price?;
    Some(Costs { better: better(set, price, all), saving: saving(context, set) })
}

/// The cheapest set that costs more, leaves no more out and scores a point more at least.
fn better(set: &TriedSet, price: Money, all: &[TriedSet]) -> Option<Better> {
    let is_better = |other: &&TriedSet| {
        other.left_out() <= set.left_out() && other.score >= set.score + A_POINT && other.price > Some(price)
    };
    let cheapest = all.iter().filter(is_better).min_by_key(|other| other.price)?;
    Some(Better { price: cheapest.price?, score: cheapest.score, pieces: cheapest.pieces.clone() })
}

/// What the next smaller of the same kind would save in place of the dearest piece.
fn saving(context: &SetsContext<'_>, set: &TriedSet) -> Option<Saving> {
    let of_row = |row: usize| context.rows.get(row).map_or(1, |row| row.pieces.len() as u64);
    let all = set.pieces.iter().filter_map(|piece| {
        let candidate = piece.candidate?;
        Some((piece.row, candidate, context.candidates.get(candidate)?))
    });
    let price = |row: usize, listed: &ListedPiece| Some(listed.price?.hundredths.saturating_mul(of_row(row)));
    let (row, dearest, listed) = all.max_by_key(|(row, _, listed)| price(*row, listed))?;
    let own = price(row, listed)?;
    let smaller = context.candidates_for(row).into_iter().filter_map(|place| {
        let other = context.candidates.get(place)?;
        let saves = own.checked_sub(price(row, other)?).filter(|saves| *saves > 0)?;
        let (dimension, less) = smaller_by(listed, other)?;
        Some(Saving { row, dearest, smaller: place, dimension, less, saves: Money { hundredths: saves } })
    });
    best_by(smaller, |saving| -saving.less)
}

/// The dimension in which `other` is smaller by most, and by how much; `None` where it is larger in any.
fn smaller_by(listed: &ListedPiece, other: &ListedPiece) -> Option<(Dimension, f64)> {
    let mut less = Vec::new();
    for dimension in Dimension::ALL.iter().copied() {
        if let (Some(own), Some(its)) = (listed.size(dimension), other.size(dimension)) {
            less.push((dimension, own - its));
        }
    }
    if less.iter().any(|(_, less)| *less < 0.0) {
        return None;
    }
    best_by(less, |(_, less)| *less).filter(|(_, less)| *less > 0.0)
}
