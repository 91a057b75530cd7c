//! Branch and bound over the alternatives of one arrangement: the largest pieces, with a bound.
//!
//! What must hold is said in `rules`; programs are solved in `program`. Here it is decided which alternative is tried
//! when, and when nothing better can come.
//!
//! What it rests on, all cited from memory: branch and bound (Land and Doig 1960, "An automatic method of solving discrete
//! programming problems") over disjunctions of linear rows (Balas 1979, "Disjunctive programming"); the decision with the
//! fewest open alternatives first (Haralick and Elliott 1980, "Increasing tree search efficiency for constraint satisfaction
//! problems"), each weighed by what one dual step towards it costs (Driebeek 1966, "An algorithm for the solution of mixed
//! integer programming problems"); and of arrangements that a swap of like pieces turns into each other only one (Margot 2010,
//! "Symmetry in integer linear programming").

mod about_heart;
mod aim;
mod arrangement_context;
mod asked;
mod barriers;
mod bounds;
mod branching;
mod budget;
mod cell;
mod cells;
mod dive;
mod easing;
mod effort;
mod elsewhere;
mod found;
mod largest;
mod node;
mod node_pool;
mod objective;
mod once;
mod open_node;
mod piece_by_piece;
mod planned;
mod polish;
mod problem;
mod room_context;
mod sofar;
mod stated;
mod still;
mod symmetry;
mod tally;
mod term_cells;
mod tolerance;
mod tree;
mod turning;

pub use aim::Aim;
pub use arrangement_context::ArrangementContext;
pub use budget::Budget;
pub use easing::Easing;
pub use effort::Effort;
pub(crate) use elsewhere::{Elsewhere, Rest};
pub use found::{Found, Searched};
pub use largest::{as_planned, largest};
pub use planned::plan;
pub use room_context::RoomContext;
pub use stated::{Choice, Sought, Stated, search_stated, stated};
pub use tally::Tally;

use self::once::search_once;
use self::tree::Order;
use crate::arrangement::Arrangement;
use crate::routes::Floor;

/// Nodes that putting a layout in order may take.
const NODES_TO_TIDY: usize = 60;

/// The best layout of `arrangement`.
#[must_use]
pub fn search(room: &RoomContext<'_>, floor: &Floor, arrangement: &Arrangement, effort: Effort<'_>) -> Searched {
    let context = ArrangementContext::of(room, floor, arrangement);
    let mut searched = search_once(&context, arrangement, effort, Order::BestFirst);
    if effort.aim != Aim::Together {
        return searched;
    }
    if dive::is_cut_short(&searched) {
        searched = dive::dive_on(&context, effort, searched);
    }
    if let Some(found) = searched.found.take() {
        let (found, tidied) = tidied(&context, found);
        searched.take_work_of(&tidied);
        searched.found = Some(found);
    }
    searched
}

/// The same sizes in better order, and the search for that: the search for sizes stops within what a proof allows, which is
/// more than order counts.
fn tidied(context: &ArrangementContext<'_>, found: Found) -> (Found, Searched) {
    let brief = context.room.brief;
    let value = found.layout.size_value(brief);
    let effort = Effort { to_beat: found.objective - value, ..Effort::of(Aim::Tidy(&found.layout), NODES_TO_TIDY) };
    let mut searched = search_once(context, context.arrangement, effort, Order::BestFirst);
    let tidier = searched.found.take().map(|tidy| {
        let objective = tidy.layout.size_value(brief) + tidy.objective;
        Found { objective, bound: found.bound.max(objective), ..tidy }
    });
    (tidier.filter(|tidy| tidy.objective > found.objective).unwrap_or(found), searched)
}
