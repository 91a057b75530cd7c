//! Real pieces against a room: which candidates fit, by how much they miss, and the best sets of them.
//!
//! [`rows`] says which pieces of the room a candidate can be; [`trial`] puts candidates in their place and asks whether
//! that fits; [`fit`] looks at one candidate, [`sets`] at all sets of one for each piece, exactly; [`found`] is what comes
//! out. Whether a piece gets through the door is `way`'s.

mod fit;
mod found;
mod pairs;
mod rows;
mod sets;
mod tolerance;
mod trial;

pub use found::{
    Beyond, CandidateFound, Impossible, Left, Miss, OptionFits, PairFound, SetFound, SetPiece, SetsFound, ShopFound,
    WhyNot,
};
pub use rows::Row;

use elbowroom_model::Brief;
use elbowroom_model::listing::{ListedPiece, Money};
use rayon::prelude::*;

use crate::way::brief_by_the_way;
use rows::rows;

/// By what sets are ordered, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Order {
    /// The score of the best option that the set makes.
    #[default]
    Score,
    /// The price of the whole set, the lowest first.
    Price,
    /// How well the pieces are liked, on the mean.
    Liking,
}

/// What is asked of the sets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetsAsked {
    /// How they are ordered.
    pub order: Order,
    /// What one of them may cost.
    pub budget: Option<Money>,
    /// How many are told.
    pub top: usize,
}

/// How far the work on one room goes, counted and never timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort {
    /// Sets that are solved at most.
    pub sets: usize,
}

impl Default for Effort {
    fn default() -> Self {
        Self { sets: 5_000 }
    }
}

/// Told as the candidates and sets are solved, from any thread.
pub trait Watch: Sync {
    /// So many more are solved.
    fn solved(&self, more: usize);
}

/// Watches nothing.
#[derive(Debug, Clone, Copy, Default)]
pub struct Unwatched;

impl Watch for Unwatched {
    fn solved(&self, _more: usize) {}
}

/// Each candidate against the room of `brief`, and the best sets where they are asked for.
#[must_use]
pub fn shop(
    brief: &Brief,
    candidates: &[ListedPiece],
    sets: Option<&SetsAsked>,
    effort: Effort,
    watch: &dyn Watch,
) -> ShopFound {
    let by_the_way = brief_by_the_way(brief);
    let rows = rows(&by_the_way);
    let each = candidates.par_iter().map(|candidate| {
        let found = fit::candidate(brief, &by_the_way, &rows, candidate);
        watch.solved(1);
        found
    });
    let found: Vec<CandidateFound> = each.collect();
    let sets = sets.map(|asked| {
        let gets_in: Vec<bool> =
            found.iter().map(|one| one.way.as_ref().is_none_or(|way| way.carried.gets_in)).collect();
        sets::sets(
            &sets::Ground { brief: &by_the_way, rows: &rows, candidates, gets_in: &gets_in },
            asked,
            effort,
            watch,
        )
    });
    ShopFound { rows, candidates: found, sets }
}
