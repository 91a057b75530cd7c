//! Each room planned again with the very pieces that it got.

use elbowroom_model::Brief;
use rayon::prelude::*;

use super::set::served;
use super::{Asking, Assignment, By, Furnished, Owned};
use crate::answer::Answer;
use crate::{Limits, Unwatched, rank};

/// Each room with its pieces at their own sizes, with what stands in, and without what it did not get, ranked anew: every arrangement is tried, not
/// the one alone that the assignment was made for. `None` where nothing goes out to a room. What is booked twice with the
/// same pieces, or with pieces alike, is planned once.
#[must_use]
pub fn plans(rooms: &[Asking], stock: &[Owned], found: &Assignment, limits: &Limits) -> Vec<Option<Answer>> {
    let briefs = rooms.iter().zip(&found.rooms).map(|(asking, furnished)| brief(asking, stock, furnished));
    let (mut firsts, mut places): (Vec<Brief>, Vec<Option<usize>>) = (Vec::new(), Vec::new());
    for brief in briefs {
        places.push(brief.map(|brief| {
            firsts.iter().position(|first| *first == brief).unwrap_or_else(|| {
                firsts.push(brief);
                firsts.len() - 1
            })
        }));
    }
    let plan = |brief: &Brief| rank(brief, limits, &Unwatched);
    let planned: Vec<Answer> = firsts.par_iter().with_max_len(1).map(plan).collect();
    places.into_iter().map(|place| planned.get(place?).cloned()).collect()
}

/// The room with what it got and nothing else.
fn brief(asking: &Asking, stock: &[Owned], furnished: &Furnished) -> Option<Brief> {
    let base = &asking.room.furnishing(furnished.option?)?.asked;
    let row_of = |place: usize| match furnished.asked.get(place)?.by {
        By::Stock { row } => Some(row),
        _ => None,
    };
    Some(served(base, &asking.asked(), stock, &row_of).alone())
}
