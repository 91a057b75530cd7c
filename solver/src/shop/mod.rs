//! Real pieces against a room: which candidates fit, by how much they miss, and the best sets of them.
//!
//! [`rows`] says which pieces of the room a candidate can be; [`trial`] puts candidates in their place and asks whether
//! that fits; [`fit`] looks at one candidate, [`sets`] at all sets of one for each piece, exactly; [`found`] is what comes
//! out. Whether a piece gets through the door is `way`'s.

mod alike;
mod asked;
mod choices;
mod costs;
mod family;
mod fit;
mod found;
mod known;
mod node;
mod pairs;
mod rows;
mod sets;
mod sets_context;
mod tolerance;
mod trial;
mod tried_set;

pub use asked::{Effort, Order, SetsAsked, Unwatched, Watch};
pub use found::{
    Better, Beyond, CandidateFound, Costs, Impossible, Left, Miss, OptionFits, PairFound, Saving, SetFound, SetPiece,
    SetsFound, ShopFound, WhyNot,
};
pub(crate) use node::NoSet;
pub use rows::Row;
pub(crate) use rows::stand_in;
pub(crate) use trial::{best_score, may_fit};

use elbowroom_model::Brief;
use elbowroom_model::listing::ListedPiece;
use rayon::prelude::*;

use crate::way_in::brief_by_the_way;
use alike::Alike;
use rows::rows;

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
    let found = each_found(candidates, watch, |candidate| fit::candidate(brief, &by_the_way, &rows, candidate));
    let sets = sets.map(|asked| {
        let gets_in: Vec<bool> =
            found.iter().map(|one| one.way.as_ref().is_none_or(|way| way.carried.gets_in)).collect();
        sets::sets(
            &sets_context::SetsContext { brief: &by_the_way, rows: &rows, candidates, gets_in: &gets_in },
            asked,
            effort,
            watch,
        )
    });
    ShopFound { rows, candidates: found, sets }
}

/// What is found of each candidate; those that are alike are looked at once.
fn each_found(
    candidates: &[ListedPiece],
    watch: &dyn Watch,
    find: impl Fn(&ListedPiece) -> CandidateFound + Sync,
) -> Vec<CandidateFound> {
    let Alike { firsts, places } = Alike::of(candidates);
    watch.solved(candidates.len() - firsts.len());
    let found = firsts.par_iter().map(|candidate| {
        let found = find(candidate);
        watch.solved(1);
        found
    });
    let found: Vec<CandidateFound> = found.collect();
    places.iter().filter_map(|place| found.get(*place).cloned()).collect()
}
