//! Branch and bound over the alternatives of one arrangement: the largest pieces, with a bound.
//!
//! What must hold is said in `rules`; programs are solved in `program`. Here it is decided which alternative is tried
//! when, and when nothing better can come.

mod branching;
mod cell;
mod cells;
mod company;
mod cut_short;
mod node;
mod polish;
mod problem;
mod queued;
mod room_ground;
mod spare;
mod stated;
mod tally;
mod tolerance;
mod tree;

use elbowroom_model::Rule;

use std::collections::BTreeMap;

pub use problem::Aim;
pub use room_ground::RoomGround;
pub use stated::{Choice, Stated, search_stated, stated};
pub use tally::Tally;

use self::tolerance::PROVEN_WITHIN;
use self::tree::Order;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::program::{DefaultEngine, Row};
use crate::routes::Floor;
use crate::rules::Cause;

/// Nodes that putting a layout in order may take.
const NODES_TO_TIDY: usize = 60;

/// How far a search goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort<'a> {
    /// What is made as large as it can be.
    pub aim: Aim<'a>,
    /// Layouts count that are better than this.
    pub to_beat: f64,
    /// Nodes at most.
    pub nodes: usize,
    /// A rule that is left aside.
    pub without: Option<Rule>,
}

/// What a search found.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// The layout.
    pub layout: Layout,
    /// What was made as large as it can be, less the small terms that settle ties.
    pub objective: f64,
    /// No layout of the arrangement has more.
    pub bound: f64,
    /// Variables of the program at the layout.
    pub values: Vec<f64>,
    /// Rows in force at the layout.
    pub rows: Vec<(Row, Cause)>,
}

impl Found {
    /// No layout of the arrangement is better by more than a thousandth.
    #[must_use]
    pub fn is_proven(&self) -> bool {
        self.bound - self.objective <= PROVEN_WITHIN * self.objective.abs()
    }
}

/// How a search ended.
#[derive(Debug, Clone, PartialEq)]
pub struct Searched {
    /// The best layout; `None` where there is none.
    pub found: Option<Found>,
    /// Every alternative was covered.
    pub is_complete: bool,
    /// No layout that was not looked at has more than this.
    pub unseen: f64,
    /// What left no place, and how often.
    pub blame: BTreeMap<Cause, usize>,
    /// Linear programs solved.
    pub programs: usize,
    /// What else was done.
    pub tally: Tally,
}

impl Searched {
    /// Counts the work of another search of the same arrangement as its own.
    fn take_work_of(&mut self, other: &Self) {
        self.programs += other.programs;
        self.tally = std::mem::take(&mut self.tally).plus(&other.tally);
    }
}

/// The best layout of `arrangement`.
#[must_use]
pub fn search(room: &RoomGround<'_>, floor: &Floor, arrangement: &Arrangement, effort: Effort<'_>) -> Searched {
    let mut searched = search_once((room, floor, arrangement), effort, Order::BestFirst);
    if effort.aim != Aim::Together {
        return searched;
    }
    if cut_short::is_cut_short(&searched) {
        searched = cut_short::better_of_cut_short((room, floor, arrangement), effort, searched);
    }
    if let Some(found) = searched.found.take() {
        let (found, tidied) = tidied(room, floor, arrangement, found);
        searched.take_work_of(&tidied);
        searched.found = Some(found);
    }
    searched
}

/// The same sizes in better order, and the search for that: the search for sizes stops within what a proof allows, which is
/// more than order counts.
fn tidied(room: &RoomGround<'_>, floor: &Floor, arrangement: &Arrangement, found: Found) -> (Found, Searched) {
    let value = found.layout.size_value(room.brief);
    let effort =
        Effort { aim: Aim::Tidy(&found.layout), to_beat: found.objective - value, nodes: NODES_TO_TIDY, without: None };
    let mut searched = search_once((room, floor, arrangement), effort, Order::BestFirst);
    let tidier = searched.found.take().map(|tidy| {
        let objective = tidy.layout.size_value(room.brief) + tidy.objective;
        Found { objective, bound: found.bound.max(objective), ..tidy }
    });
    (tidier.filter(|tidy| tidy.objective > found.objective).unwrap_or(found), searched)
}

fn search_once(
    (room, floor, arrangement): (&RoomGround<'_>, &Floor, &Arrangement),
    effort: Effort<'_>,
    order: Order,
) -> Searched {
    let problem = problem::Problem::of(room, arrangement, effort.aim, effort.without, false);
    searched(&problem, floor, effort, order)
}

fn searched(problem: &problem::Problem<'_>, floor: &Floor, effort: Effort<'_>, order: Order) -> Searched {
    let mends = typed_arena::Arena::new();
    let (nodes, to_beat) = (effort.nodes, effort.to_beat);
    let mut tree = tree::Tree::<DefaultEngine>::new(problem, (floor, &mends), (order, nodes), to_beat);
    let bound = tree.search();
    let found = tree.best.as_ref().map(|best| Found {
        layout: with_circle(problem.ground.brief, floor, tree::layout_of(problem, best)),
        objective: best.bound(),
        bound,
        values: crate::program::Engine::values(&best.engine).to_vec(),
        rows: best.rows(),
    });
    let is_complete = tree.is_complete();
    let mut tally = tree.tally;
    for (cause, count) in &tree.blame {
        *tally.dead_ends.entry(cause.rule).or_default() += count;
    }
    let unseen = tree.unseen;
    Searched { found, is_complete, unseen, blame: tree.blame, programs: tree.programs, tally }
}

/// The layout with its turning circle where it can be reached best.
fn with_circle(brief: &elbowroom_model::Brief, floor: &Floor, layout: Layout) -> Layout {
    let turning_circle = floor.find_circle(brief, &layout).or(layout.turning_circle);
    Layout { turning_circle, ..layout }
}
