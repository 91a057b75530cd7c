//! Which decision a node takes next: of what its optimum breaks, what has the fewest alternatives that can still be.
//!
//! What stands is settled before it is asked how the next piece stands: a way through that what stands already blocks need
//! not be found blocked again under every stand of the others.

use elbowroom_model::PieceId;

use smallvec::SmallVec;

use super::barriers::Barring;
use super::node::{Chosen, Decided, Node, Question};
use super::problem::Problem;
use super::tolerance::SAME_BOUND;
use crate::program::Engine;
use crate::rules::{Requirement, TOLERANCE};

/// What each alternative of a question is worth at most, as far as a first look can tell.
pub(super) type Promises = SmallVec<[f64; 8]>;

/// Choices of the terms of a plan are counted from here: no cell of the rules has so many.
const TERM: usize = 1 << 20;

/// A question that one alternative is to be picked of.
pub(super) struct Decision<'p> {
    pub(super) settles: Settles,
    pub(super) question: Question<'p>,
    pub(super) promises: Promises,
}

/// What need not be chosen from again.
#[derive(Clone, Copy)]
pub(super) enum Settles {
    /// A requirement of the rules.
    Requirement(Chosen),
    /// What an alternative that was picked asks for besides, by its place in the node.
    Finer(usize),
    /// Nothing: the question is asked anew as long as it is open.
    Nothing,
}

/// How urgent a decision is: the fewest alternatives that can still be, then the least that they promise, then the most
/// broken, then the first.
#[derive(Clone, Copy)]
struct Urgency {
    open: usize,
    promise: f64,
    broken: f64,
}

impl Urgency {
    fn beats(&self, other: &Self) -> bool {
        if self.open != other.open {
            return self.open < other.open;
        }
        if (self.promise - other.promise).abs() > SAME_BOUND {
            return self.promise < other.promise;
        }
        self.broken > other.broken + TOLERANCE
    }
}

/// The most urgent decision on what stands; `None` where every rule but the routes holds among it. What promises no more than
/// `cutoff` cannot be.
pub(super) fn next<'p, E: Engine>(
    problem: &'p Problem<'_>,
    barriers: &[Barring<'p>],
    node: &Node<'p, E>,
    cutoff: f64,
) -> Option<Decision<'p>> {
    let mut best = Best { node, cutoff, found: None };
    let mut offer = |chosen, requirement: &'p Requirement| {
        if !node.chosen.contains(&chosen) {
            let Requirement { cause, alternatives } = requirement;
            best.offer(Settles::Requirement(chosen), Question { cause: *cause, alternatives });
        }
    };
    each_choice(problem, node, &mut offer);
    for (place, barrier) in barriers.iter().enumerate().filter(|(_, barrier)| barrier.stands_in(node)) {
        offer(Chosen::Barrier(place), barrier.requirement);
    }
    for (place, question) in node.finer.iter().enumerate() {
        best.offer(Settles::Finer(place), *question);
    }
    best.found.map(|(_, decision)| decision)
}

/// Which piece is asked about next when all that stands is settled: one of the main group before others; of each what must
/// stand, the fewest stands first, and then what counts most by standing. So what costs or brings most is decided first, and
/// a lamp is not asked about under every place of a chair that cannot stand.
pub(super) fn next_to_place<E>(problem: &Problem<'_>, node: &Node<'_, E>) -> Option<PieceId> {
    let waits = |piece: &PieceId| matches!(node.decided[piece.0], Decided::Open | Decided::Somewhere);
    let waiting = (0..node.decided.len()).map(PieceId).filter(waits);
    let turn = |id: PieceId| {
        let piece = problem.context.brief.piece(id);
        let is_apart = piece.is_some_and(|piece| piece.group.is_some());
        let may_be_left_out = node.decided[id.0] == Decided::Open;
        let is_seat = piece.is_some_and(|piece| piece.kind.is_seat());
        let stands = u32::try_from(problem.ways[id.0].states.len()).unwrap_or(u32::MAX);
        let order = if may_be_left_out { -problem.presence(id) } else { f64::from(stands) };
        ((is_apart, may_be_left_out, !is_seat), order)
    };
    let turns = waiting.map(|piece| (turn(piece), piece));
    let first = turns.min_by(|((one, early), _), ((other, late), _)| one.cmp(other).then(early.total_cmp(late)));
    first.map(|(_, piece)| piece)
}

/// The most urgent decision so far.
struct Best<'n, 'p, E> {
    node: &'n Node<'p, E>,
    cutoff: f64,
    found: Option<(Urgency, Decision<'p>)>,
}

impl<'p, E: Engine> Best<'_, 'p, E> {
    /// Takes a question that is open, where it is more urgent.
    fn offer(&mut self, settles: Settles, question: Question<'p>) {
        let values = self.node.engine.values();
        if !question.alternatives.iter().any(|alternative| alternative.holds(values))
            && let Some((open, promises)) = self.outlook(&question)
        {
            let promise = promises.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            let urgency = Urgency { open, promise, broken: shortfall(&question, values) };
            self.take(urgency, Decision { settles, question, promises });
        }
    }

    fn take(&mut self, urgency: Urgency, decision: Decision<'p>) {
        if self.found.as_ref().is_none_or(|(found, _)| urgency.beats(found)) {
            self.found = Some((urgency, decision));
        }
    }

    /// How many alternatives can still be, and what each promises; `None` as soon as they are more than those of the best.
    fn outlook(&self, question: &Question<'p>) -> Option<(usize, Promises)> {
        let most = self.found.as_ref().map_or(usize::MAX, |(best, _)| best.open);
        let (mut open, mut promises) = (0, Promises::new());
        for alternative in question.alternatives {
            let promise = self.node.probe(alternative);
            promises.push(promise);
            open += usize::from(promise > self.cutoff);
            if open > most {
                return None;
            }
        }
        Some((open, promises))
    }
}

/// How much is lacking to the alternative that is nearest to hold, mm.
fn shortfall(question: &Question<'_>, values: &[f64]) -> f64 {
    let lacking = question.alternatives.iter().map(|alternative| alternative.shortfall(values));
    lacking.fold(f64::INFINITY, f64::min)
}

/// Every requirement with a choice that concerns what is decided.
fn each_choice<'p, E>(problem: &'p Problem<'_>, node: &Node<'p, E>, mut visit: impl FnMut(Chosen, &'p Requirement)) {
    for (place, requirement) in problem.room().choices.iter().enumerate() {
        visit(Chosen::Room(place), requirement);
    }
    let standing = standing(node);
    for (order, &state) in standing.iter().enumerate() {
        if problem.may_change(&[state]) {
            for (place, requirement) in problem.alone(state).choices.iter().enumerate() {
                visit(Chosen::Alone(state, place), requirement);
            }
            let terms = problem.terms_alone(state).into_iter().flat_map(|cell| &cell.choices);
            for (place, requirement) in terms.enumerate() {
                visit(Chosen::Alone(state, TERM + place), requirement);
            }
        }
        for &other in standing[..order].iter().filter(|other| problem.may_change(&[state, **other])) {
            for (place, requirement) in problem.between(other, state).choices.iter().enumerate() {
                visit(Chosen::Between(other, state, place), requirement);
            }
            let terms = problem.terms_between(other, state).into_iter().flat_map(|cell| &cell.choices);
            for (place, requirement) in terms.enumerate() {
                visit(Chosen::Between(other, state, TERM + place), requirement);
            }
        }
    }
}

/// The states that are decided, in the order of the pieces.
pub(super) fn standing<E>(node: &Node<'_, E>) -> Vec<usize> {
    let state = |decided: &Decided| match decided {
        Decided::Stands(state) => Some(*state),
        Decided::Open | Decided::Somewhere | Decided::Out => None,
    };
    node.decided.iter().filter_map(state).collect()
}
