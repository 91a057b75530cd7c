//! Each room planned again with the very pieces that it got.

use elbowroom_model::PieceId;
use elbowroom_model::listing::ListedPiece;
use rayon::prelude::*;

use super::{Asking, Assignment, By, Furnished, Owned};
use crate::answer::Answer;
use crate::refusal::without;
use crate::shop::stand_in;
use crate::{Limits, Unwatched, rank};

/// Each room with its pieces at their own sizes, with what stands in, and without what it did not get, ranked anew: every arrangement is tried, not
/// the one alone that the assignment was made for. `None` where nothing goes out to a room.
#[must_use]
pub fn plans(rooms: &[Asking], stock: &[Owned], found: &Assignment, limits: &Limits) -> Vec<Option<Answer>> {
    let each = rooms.par_iter().zip(&found.rooms);
    each.map(|(asking, furnished)| plan(asking, stock, furnished, limits)).collect()
}

fn plan(asking: &Asking, stock: &[Owned], furnished: &Furnished, limits: &Limits) -> Option<Answer> {
    let (answer, _) = asking.room.chosen(furnished.option?)?;
    let mut brief = answer.asked.clone();
    let mut gone: Vec<PieceId> = Vec::new();
    for fulfilled in &furnished.asked {
        let listed = match fulfilled.by {
            By::Stock { row } => stock.get(row).map(|owned| &owned.piece),
            _ => None,
        };
        for id in &fulfilled.asked.pieces {
            match (listed, brief.piece_mut(*id)) {
                (Some(listed), Some(place)) => {
                    // Of a corner sofa whose hand nobody says either is taken.
                    let hands = if listed.hands.is_empty() { place.hands.clone() } else { listed.hands.clone() };
                    *place = stand_in(&place.clone(), &ListedPiece { hands, ..listed.clone() });
                }
                _ => gone.push(*id),
            }
        }
    }
    gone.sort_unstable();
    let brief = gone.into_iter().rev().fold(brief, |brief, id| without(&brief, id));
    Some(rank(&brief, limits, &Unwatched))
}
