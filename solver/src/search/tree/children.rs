//! What a decision makes of a node: one child for each way it can be taken, made when its turn comes.

use elbowroom_model::{PieceId, Rule};

use std::collections::BinaryHeap;
use std::rc::Rc;

use smallvec::SmallVec;

use super::super::branching::{Decision, Settles, standing};
use super::super::node::{Asked, Decided, Node, Question};
use super::super::open_node::{Candidate, Change, Child, OpenNode, Siblings};
use super::super::problem::Problem;
use super::{Fate, Order, Tree};
use crate::program::{Engine, Row};
use crate::rules::comfort::EASED;
use crate::rules::{Alternative, Arc, Cause, With};

/// What makes a child, how much of what no elder covers it keeps, and what it is worth at most.
type Branch<'p> = (Change<'p>, usize, f64);

impl<'p, E: Engine> Tree<'p, '_, E> {
    pub(super) fn decide(&mut self, node: Box<Node<'p, E>>, decision: Decision<'p>) {
        let Decision { settles, question, promises } = decision;
        // A barrier that is known may have no gap that could open where its pieces stand.
        if question.alternatives.is_empty() {
            self.blame(question.cause);
        }
        self.choose(node, question, settles, &promises);
    }

    /// One child for each alternative that can still be; a later one also carries the closed negation of its elders that are
    /// single rows. `settles` is what need not be chosen from again, `promises` what each alternative is worth at most.
    pub(super) fn choose(
        &mut self,
        mut node: Box<Node<'p, E>>,
        question: Question<'p>,
        settles: Settles,
        promises: &[f64],
    ) {
        match settles {
            Settles::Requirement(chosen) => node.chosen.push(chosen),
            Settles::Finer(place) => {
                node.finer.swap_remove(place);
            }
            Settles::Nothing => {}
        }
        let cause = question.cause;
        let mut held = Asked::default();
        let mut children: SmallVec<[Branch<'p>; 8]> = SmallVec::new();
        for (place, (alternative, promise)) in question.alternatives.iter().zip(promises).enumerate() {
            if self.can_be(*promise, cause) {
                children.push((Change::Takes(question, place), held.len(), *promise));
            }
            held.extend(alternative.sufficient().map(|row| (negated(row), cause)));
        }
        self.raise(node, held, children);
    }

    /// Whether a first look leaves any hope for what is worth `promise` at most.
    fn can_be(&mut self, promise: f64, cause: Cause) -> bool {
        if promise == f64::NEG_INFINITY {
            self.blame(cause);
            return false;
        }
        if self.is_cut_off(promise) {
            self.prune(promise);
            return false;
        }
        true
    }

    /// One child for each way in which `piece` may stand, and one without it where it may be left out.
    pub(super) fn place(&mut self, node: Box<Node<'p, E>>, piece: PieceId) {
        let problem = self.problem;
        let mut children: SmallVec<[Branch<'p>; 8]> = SmallVec::new();
        if !problem.is_out_with_its_twin(&node.decided, piece) {
            let states = &problem.ways[piece.0].states;
            children.extend(states.iter().filter_map(|state| self.standing_so(&node, piece, *state)));
        }
        if node.decided[piece.0] == Decided::Open && !problem.is_relied_on(&node.decided, piece) {
            let (rows, cost) = self.without(piece);
            children.push((Change::LeftOut(piece), 0, node.promise(&rows) - cost));
        }
        self.raise(node, Asked::default(), children);
    }

    fn standing_so(&mut self, node: &Node<'p, E>, piece: PieceId, state: usize) -> Option<Branch<'p>> {
        let standing = standing(node);
        let told_otherwise = standing.iter().any(|other| self.problem.is_mirrored_twin(*other, state));
        if told_otherwise || self.problem.is_by_nothing(&node.decided, state) {
            return None;
        }
        if let Some(cause) = self.dead_beside(&standing, state) {
            self.blame(cause);
            return None;
        }
        let (promise, cause) = promise_of(self.problem, node, &standing, state);
        let can_be = cause.is_none_or(|cause| self.can_be(promise, cause));
        can_be.then_some((Change::Stands(piece, state), 0, promise))
    }

    /// Rows that hold every size of a piece that is left out at nothing, and what it would count by standing.
    fn without(&self, piece: PieceId) -> (SmallVec<[Row; 6]>, f64) {
        let sizes = self.problem.context.variables.pieces[piece.0].sizes();
        let none = |variable| Row::at_most([(variable, 1.0)], 0.0);
        let rows = sizes.flat_map(|size| [none(size.up), none(size.beyond)]).collect();
        (rows, self.problem.presence(piece))
    }

    /// One child for each part of the sector of a round gap, cut where its corner lies at `at`.
    pub(super) fn cut(&mut self, node: Box<Node<'p, E>>, place: usize, at: &[f64]) {
        let parts = node.arcs[place].0.cut(at);
        let cause = node.arcs[place].1;
        let mut children = SmallVec::new();
        for part in parts {
            let bound = node.promise(&part.rows());
            if self.can_be(bound, cause) {
                children.push((Change::Part(place, part), 0, bound));
            }
        }
        self.raise(node, Asked::default(), children);
    }

    /// The best child is looked at next; the others wait.
    fn raise(&mut self, mut base: Box<Node<'p, E>>, held: Asked, children: SmallVec<[Branch<'p>; 8]>) {
        base.depth += 1;
        let siblings = Rc::new(Siblings { base, held });
        let mut waiting = BinaryHeap::with_capacity(children.len());
        for (change, held, bound) in children {
            self.made += 1;
            let child = Child { siblings: Rc::clone(&siblings), held, change };
            waiting.push(OpenNode::child(child, bound, self.made));
        }
        self.part_from(siblings);
        self.dive = self.led(&mut waiting);
        while self.dive.is_none()
            && let Some(best) = waiting.pop()
        {
            let made = best.made();
            match best.candidate {
                Candidate::Ready(_) => self.dive = Some(best),
                Candidate::Child(child) => {
                    waiting.extend(self.make(child).map(|node| OpenNode::node(node, made)));
                }
            }
        }
        waiting.into_iter().for_each(|open| self.wait(open));
    }

    /// Of these children the first in which the layout would stand that is to be followed.
    fn led(&mut self, waiting: &mut BinaryHeap<OpenNode<'p, E>>) -> Option<OpenNode<'p, E>> {
        let Order::Like(lead) = self.order else { return None };
        let keeps =
            |open: &OpenNode<'p, E>| matches!(&open.candidate, Candidate::Child(child) if child.change.keeps(lead));
        let made = waiting.iter().filter(|open| keeps(open)).map(OpenNode::made).min()?;
        let (led, others) = waiting.drain().partition::<Vec<_>, _>(|open| open.made() == made);
        waiting.extend(others);
        led.into_iter().find_map(|open| match open.candidate {
            Candidate::Child(child) => self.make(child).map(|node| OpenNode::node(node, made)),
            Candidate::Ready(_) => None,
        })
    }

    /// Makes a child; `None` where that leaves nothing to hope for.
    pub(super) fn make(&mut self, child: Child<'p, E>) -> Option<Box<Node<'p, E>>> {
        let Child { siblings, held, change } = child;
        let mut node = match Rc::try_unwrap(siblings) {
            Ok(Siblings { mut base, held: rows }) => {
                base.hold(rows.first(held));
                base
            }
            Err(siblings) => {
                let mut copy = self.pool.copy_of(&siblings.base);
                copy.hold(siblings.held.first(held));
                copy
            }
        };
        match change {
            Change::Takes(question, place) => self.takes(node, question, place),
            Change::Stands(piece, state) => {
                node.decided[piece.0] = Decided::Stands(state);
                Some(node)
            }
            Change::LeftOut(piece) => self.left_out(node, piece),
            Change::Part(place, arc) => {
                let cause = node.arcs[place].1;
                let rows = arc.rows().into_iter().map(|row| (row, cause)).collect();
                node.arcs[place].0 = arc;
                self.alive_with(node, rows, &[cause])
            }
        }
    }

    fn takes(
        &mut self,
        mut node: Box<Node<'p, E>>,
        Question { cause, alternatives }: Question<'p>,
        place: usize,
    ) -> Option<Box<Node<'p, E>>> {
        let Alternative { rows, arc, finer, cost } = &alternatives[place];
        node.presence -= cost;
        if *cost >= EASED {
            node.eased.push(cause);
        } else if *cost > 0.0 {
            node.paid.push((cause, *cost));
        }
        let cone = arc.iter().flat_map(Arc::rows);
        let rows = rows.iter().cloned().chain(cone).map(|row| (row, cause)).collect();
        node.arcs.extend(arc.clone().map(|arc| (arc, cause)));
        if !finer.is_empty() {
            node.finer.push(Question { cause, alternatives: finer });
        }
        self.alive_with(node, rows, &[cause])
    }

    fn left_out(&mut self, mut node: Box<Node<'p, E>>, piece: PieceId) -> Option<Box<Node<'p, E>>> {
        let (rows, cost) = self.without(piece);
        node.decided[piece.0] = Decided::Out;
        node.presence -= cost;
        let cause = Cause { rule: Rule::Size, piece, with: With::Itself };
        self.alive_with(node, rows.into_iter().map(|row| (row, cause)).collect(), &[])
    }

    /// `node` with these rows; `None` where they leave nothing to hope for.
    fn alive_with(&mut self, mut node: Box<Node<'p, E>>, rows: Asked, causes: &[Cause]) -> Option<Box<Node<'p, E>>> {
        match self.add(&mut node, rows, causes) {
            Fate::Alive => Some(node),
            Fate::Dead => {
                self.pool.take(node);
                None
            }
        }
    }

    /// Leaves a candidate aside; what only it needed is used again.
    pub(super) fn leave(&mut self, candidate: Candidate<'p, E>) {
        match candidate {
            Candidate::Ready(node) => self.pool.take(node),
            Candidate::Child(child) => self.part_from(child.siblings),
        }
    }

    fn part_from(&mut self, siblings: Rc<Siblings<'p, E>>) {
        if let Some(siblings) = Rc::into_inner(siblings) {
            self.pool.take(siblings.base);
        }
    }

    /// What forbids `state` by itself or beside what stands, whatever the sizes.
    fn dead_beside(&self, standing: &[usize], state: usize) -> Option<Cause> {
        let may_change = |other: &&usize| self.problem.may_change(&[**other, state]);
        let beside = || standing.iter().filter(may_change).find_map(|other| self.problem.between(*other, state).dead);
        self.problem.alone(state).dead.or_else(beside)
    }

    /// What forbids these stands together, whatever the sizes.
    pub(super) fn dead_among(&self, standing: &[usize]) -> Option<Cause> {
        let beside_earlier = |(order, state): (usize, &usize)| self.dead_beside(&standing[..order], *state);
        let alone = standing.iter().find_map(|state| self.problem.alone(*state).dead);
        alone.or_else(|| standing.iter().enumerate().find_map(beside_earlier))
    }
}

/// What a node is worth at most where a piece stands so, as far as a first look at what always holds then can tell, and what
/// asks for the row that costs most.
fn promise_of<E: Engine>(
    problem: &Problem<'_>,
    node: &Node<'_, E>,
    standing: &[usize],
    state: usize,
) -> (f64, Option<Cause>) {
    let alone = std::iter::once(problem.alone(state)).chain(problem.terms_alone(state));
    let beside = standing
        .iter()
        .flat_map(|other| std::iter::once(problem.between(*other, state)).chain(problem.terms_between(*other, state)));
    let rows = alone.chain(beside).flat_map(|cell| &cell.always);
    rows.fold((node.bound(), None), |least, (row, cause)| {
        let promise = node.promise([row]);
        if promise < least.0 { (promise, Some(*cause)) } else { least }
    })
}

/// `row` turned round: at least what it allows at most.
fn negated(row: &Row) -> Row {
    Row::at_least(row.terms.iter().copied(), row.most)
}
