//! Which decision a node takes next: what its optimum breaks, with the fewest alternatives left.

use std::rc::Rc;

use super::node::{Chosen, Decided, Node};
use super::problem::Problem;
use crate::program::Engine;
use crate::rules::{Requirement, TOLERANCE};

/// A decision to take.
pub(super) enum Decision<'p> {
    /// Pick one alternative of a requirement of the rules.
    Choose(Chosen, &'p Requirement),
    /// Pick one of what an alternative that was picked asks for besides.
    Refine(usize, Rc<Requirement>),
    /// Pick a stand of a piece, or leave it out.
    Stand(usize),
}

/// How urgent a decision is: the fewest alternatives, then the most broken, then the first.
struct Urgency {
    open: usize,
    broken: f64,
}

impl Urgency {
    fn beats(&self, other: &Self) -> bool {
        self.open < other.open || (self.open == other.open && self.broken > other.broken + TOLERANCE)
    }
}

/// The most urgent decision at `values`; `None` where every rule but the routes holds.
pub(super) fn next<'p, E: Engine>(problem: &'p Problem<'_>, node: &Node<E>, values: &[f64]) -> Option<Decision<'p>> {
    let mut best: Option<(Urgency, Decision<'p>)> = None;
    let mut offer = |urgency: Urgency, decision: Decision<'p>| {
        if best.as_ref().is_none_or(|(found, _)| urgency.beats(found)) {
            best = Some((urgency, decision));
        }
    };
    each_choice(problem, node, |chosen, requirement| {
        if !node.chosen.contains(&chosen) && !requirement.holds(values) {
            let urgency = Urgency { open: requirement.alternatives.len(), broken: shortfall(requirement, values) };
            offer(urgency, Decision::Choose(chosen, requirement));
        }
    });
    for (place, requirement) in node.finer.iter().enumerate() {
        if !requirement.holds(values) {
            let urgency = Urgency { open: requirement.alternatives.len(), broken: shortfall(requirement, values) };
            offer(urgency, Decision::Refine(place, Rc::clone(requirement)));
        }
    }
    for (piece, decided) in node.decided.iter().enumerate() {
        if *decided == Decided::Open {
            let ways = &problem.ways[piece];
            let open = ways.states.len() + usize::from(ways.may_be_left_out);
            offer(Urgency { open, broken: 0.0 }, Decision::Stand(piece));
        }
    }
    best.map(|(_, decision)| decision)
}

/// How much is lacking to the alternative that is nearest to hold, mm.
fn shortfall(requirement: &Requirement, values: &[f64]) -> f64 {
    let lacking = requirement.alternatives.iter().map(|alternative| alternative.shortfall(values));
    lacking.fold(f64::INFINITY, f64::min)
}

/// Every requirement with a choice that concerns what is decided.
fn each_choice<'p, E>(problem: &'p Problem<'_>, node: &Node<E>, mut visit: impl FnMut(Chosen, &'p Requirement)) {
    for (place, requirement) in problem.room().choices.iter().enumerate() {
        visit(Chosen::Room(place), requirement);
    }
    let standing = standing(node);
    for (order, &state) in standing.iter().enumerate() {
        for (place, requirement) in problem.alone(state).choices.iter().enumerate() {
            visit(Chosen::Alone(state, place), requirement);
        }
        for &other in &standing[..order] {
            for (place, requirement) in problem.between(other, state).choices.iter().enumerate() {
                visit(Chosen::Between(other, state, place), requirement);
            }
        }
    }
}

/// The states that are decided, in the order of the pieces.
pub(super) fn standing<E>(node: &Node<E>) -> Vec<usize> {
    let state = |decided: &Decided| match decided {
        Decided::Stands(state) => Some(*state),
        Decided::Open | Decided::Out => None,
    };
    node.decided.iter().filter_map(state).collect()
}
