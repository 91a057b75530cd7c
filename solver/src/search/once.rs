//! One search of one arrangement, in one order.

use elsa::FrozenVec;

use super::arrangement_context::ArrangementContext;
use super::asked::Asked;
use super::barriers::Barriers;
use super::effort::Effort;
use super::found::{Found, Searched};
use super::problem::Problem;
use super::tree::{Learned, Limits, Order, Tree, layout_of};
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::program::{DefaultEngine, Engine};
use crate::routes::Floor;

/// The best that a search in this order finds within an arrangement that is held more closely, or in the arrangement itself.
pub(super) fn search_once(
    context: &ArrangementContext<'_>,
    within: &Arrangement,
    effort: Effort<'_>,
    order: Order<'_>,
) -> Searched {
    let problem = Problem::of(context.room, within, Asked::of(&effort), &context.terms);
    searched(&problem, context.floor, effort, order, &context.barriers)
}

/// The same of a problem that is stated.
pub(super) fn searched(
    problem: &Problem<'_>,
    floor: &Floor,
    effort: Effort<'_>,
    order: Order<'_>,
    barriers: &Barriers,
) -> Searched {
    let widenings = FrozenVec::new();
    let limits = Limits { order, nodes: effort.nodes, to_beat: effort.to_beat };
    let mut tree = Tree::<DefaultEngine>::new(problem, floor, Learned { widenings: &widenings, barriers }, limits);
    let bound = tree.search();
    let found = tree.incumbent.as_ref().map(|best| Found {
        layout: with_circle(problem.context.brief, floor, layout_of(problem, best)),
        objective: best.bound(),
        bound,
        values: Engine::values(&best.engine).to_vec(),
        rows: best.rows(),
        eased: best.eased.clone(),
        paid: best.paid.clone(),
        composition: problem.composition(best),
    });
    let is_complete = tree.is_complete();
    let mut tally = tree.tally;
    for (cause, count) in &tree.blame {
        *tally.dead_ends.entry(cause.rule).or_default() += count;
    }
    let unexplored = tree.unexplored;
    Searched { found, is_complete, unexplored, blame: tree.blame, programs: tree.programs, tally }
}

/// The layout with its turning circle where it can be reached best.
fn with_circle(brief: &elbowroom_model::Brief, floor: &Floor, layout: Layout) -> Layout {
    let turning_circle = floor.find_circle(brief, &layout).or(layout.turning_circle);
    Layout { turning_circle, ..layout }
}
