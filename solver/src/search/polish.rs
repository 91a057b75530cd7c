//! Round gaps at a leaf: chords are replaced by tangents at the present direction until nothing more is gained.

use super::branching::standing;
use super::cell::Cell;
use super::node::{Asked, Node};
use super::node_pool::NodePool;
use super::problem::Problem;
use super::tolerance::{NO_MORE_GAIN, STILL_TO_GAIN};
use crate::program::{Engine, Status};
use crate::rules::TOLERANCE;

/// Rounds of tangents at most; each can only gain, and three or four are usual.
const MOST_ROUNDS: usize = 12;

/// A node whose round gaps hold by tangents, and how many programs that took.
pub(super) struct Polished<'p, E> {
    pub(super) node: Option<Box<Node<'p, E>>>,
    pub(super) programs: usize,
}

/// `node` with every round gap held by a tangent; `None` where the tangents leave no place. Where the first round does
/// not come within what a few more could gain of `to_beat` there is no second.
pub(super) fn polish<'p, E: Engine>(
    problem: &Problem<'_>,
    node: &Node<'p, E>,
    to_beat: f64,
    pool: &mut NodePool<'p, E>,
) -> Polished<'p, E> {
    let mut best: Option<Box<Node<'p, E>>> = None;
    let mut programs = 0;
    for _ in 0..MOST_ROUNDS {
        let values = best.as_deref().unwrap_or(node).engine.values();
        let tangents = node.arcs.iter().map(|(arc, cause)| (arc.tangent(values), *cause)).collect();
        let mut next = pool.copy_of(node);
        let status = next.add(tangents);
        programs += 1;
        if status != Status::Optimal || !settled(problem, &mut next, &mut programs) {
            pool.take(next);
            break;
        }
        let gain = best.as_ref().map_or(f64::INFINITY, |best| next.engine.objective() - best.engine.objective());
        if gain > 0.0 {
            pool.take(best.replace(next));
        } else {
            pool.take(next);
        }
        let is_far = best.as_ref().is_some_and(|best| best.bound() < to_beat - node.bound().abs() * STILL_TO_GAIN);
        if gain < NO_MORE_GAIN || is_far {
            break;
        }
    }
    Polished { node: best, programs }
}

/// Adds the rows that always hold and are broken, until none is; `false` where that leaves no place.
fn settled<E: Engine>(problem: &Problem<'_>, node: &mut Node<'_, E>, programs: &mut usize) -> bool {
    loop {
        let rows = broken_rows(problem, node);
        if rows.is_empty() {
            return true;
        }
        *programs += 1;
        if node.add(rows) != Status::Optimal {
            return false;
        }
    }
}

/// Rows with no choice that the present point breaks.
pub(super) fn broken_rows<E: Engine>(problem: &Problem<'_>, node: &Node<'_, E>) -> Asked {
    let values = node.engine.values();
    let standing = standing(node);
    let mut broken = Asked::default();
    let mut look = |cell: &Cell| {
        let rows = cell.always.iter().filter(|(row, _)| row.excess(values) > TOLERANCE);
        broken.extend(rows.cloned());
    };
    look(problem.room());
    for (order, &state) in standing.iter().enumerate() {
        if problem.may_change(&[state]) {
            look(problem.alone(state));
            problem.terms_alone(state).into_iter().for_each(&mut look);
        }
        for other in standing[..order].iter().filter(|other| problem.may_change(&[state, **other])) {
            look(problem.between(*other, state));
            problem.terms_between(*other, state).into_iter().for_each(&mut look);
        }
    }
    broken
}
