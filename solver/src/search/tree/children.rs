//! What a decision makes of a node: one child for each way it can be taken.

use std::rc::Rc;

use super::super::branching::standing;
use super::super::node::{Asked, Decided, Node};
use super::{Fate, Tree};
use crate::program::{Engine, Row};
use crate::rules::{Alternative, Arc, Cause, Requirement, RuleName, With};

impl<E: Engine> Tree<'_, '_, E> {
    /// One child for each alternative that can still be; a later one also carries the closed negation of its elders that are
    /// single rows.
    /// `settled` notes in what they start from that this requirement need not be chosen from again.
    pub(super) fn choose(&mut self, parent: &Node<E>, requirement: &Requirement, settled: impl FnOnce(&mut Node<E>)) {
        let cause = requirement.cause;
        // What every later child starts from: the parent, and what no elder covers.
        let mut rest = self.child_of(parent);
        settled(&mut rest);
        let mut alive = Vec::new();
        for alternative in &requirement.alternatives {
            if self.can_be(parent, alternative, cause) {
                alive.extend(self.child_with(&rest, alternative, cause));
            }
            rest.hold(alternative.sufficient().map(|row| (negated(row), cause)).collect());
        }
        self.spare.push(rest);
        self.push_all(alive);
    }

    /// Whether a first look leaves any hope for `alternative`.
    fn can_be(&mut self, parent: &Node<E>, alternative: &Alternative, cause: Cause) -> bool {
        let bound = parent.probe(alternative);
        if bound == f64::NEG_INFINITY {
            self.blame(cause);
            return false;
        }
        if self.is_hopeless(bound) {
            self.give_up(bound);
            return false;
        }
        true
    }

    /// `rest` with `alternative`; `None` where that leaves nothing to hope for.
    fn child_with(&mut self, rest: &Node<E>, alternative: &Alternative, cause: Cause) -> Option<Node<E>> {
        let child = self.copy_of(rest);
        let arc = alternative.arc.iter().flat_map(Arc::rows);
        let rows = alternative.rows.iter().cloned().chain(arc).map(|row| (row, cause)).collect();
        let mut child = self.alive_with(child, rows, &[cause])?;
        child.arcs.extend(alternative.arc.clone().map(|arc| (arc, cause)));
        if !alternative.finer.is_empty() {
            child.finer.push(Rc::new(Requirement { cause, alternatives: alternative.finer.clone() }));
        }
        Some(child)
    }

    /// `child` with these rows; `None` where they leave nothing to hope for.
    fn alive_with(&mut self, mut child: Node<E>, rows: Asked, causes: &[Cause]) -> Option<Node<E>> {
        match self.add(&mut child, rows, causes) {
            Fate::Alive => Some(child),
            Fate::Dead => {
                self.spare.push(child);
                None
            }
        }
    }

    /// A copy of `parent`, one deeper.
    fn child_of(&mut self, parent: &Node<E>) -> Node<E> {
        let mut child = self.copy_of(parent);
        child.depth += 1;
        child
    }

    /// A copy, in the memory of a node that is done with where there is one.
    fn copy_of(&mut self, node: &Node<E>) -> Node<E> {
        match self.spare.pop() {
            Some(mut spare) => {
                spare.clone_from(node);
                spare
            }
            None => node.clone(),
        }
    }

    /// The best first, so that what is made first does not hang on the order of the alternatives.
    fn push_all(&mut self, mut children: Vec<Node<E>>) {
        children.sort_by(|a, b| b.bound().total_cmp(&a.bound()));
        let mut children = children.into_iter();
        self.dive = children.next();
        children.for_each(|child| self.push(child));
    }

    /// One child for each way in which `piece` may stand.
    pub(super) fn stand(&mut self, node: &Node<E>, piece: usize) {
        let states = &self.problem.ways[piece].states;
        let alive = states.iter().filter_map(|state| self.standing_so(node, piece, *state)).collect();
        self.push_all(alive);
    }

    /// A child in which `piece` stands, and one in which it is left out.
    pub(super) fn in_or_out(&mut self, node: &Node<E>, piece: usize) {
        let inside = match &self.problem.ways[piece].states[..] {
            [only] => self.standing_so(node, piece, *only),
            _ => {
                let mut child = self.child_of(node);
                child.decided[piece] = Decided::Somewhere;
                Some(child)
            }
        };
        let alive = inside.into_iter().chain(self.left_out(node, piece)).collect();
        self.push_all(alive);
    }

    fn standing_so(&mut self, node: &Node<E>, piece: usize, state: usize) -> Option<Node<E>> {
        let mut child = self.child_of(node);
        child.decided[piece] = Decided::Stands(state);
        let Some(cause) = self.dead_among(&standing(&child)) else { return Some(child) };
        self.blame(cause);
        self.spare.push(child);
        None
    }

    fn left_out(&mut self, node: &Node<E>, piece: usize) -> Option<Node<E>> {
        let mut child = self.child_of(node);
        child.decided[piece] = Decided::Out;
        child.presence -= self.problem.presence(piece);
        let cause = Cause { rule: RuleName::Size, piece, with: With::Itself };
        let variables = &self.problem.ground.variables.pieces[piece];
        let sizes = [Some(variables.width), variables.return_length, Some(variables.depth)];
        let none = |variable| (Row::at_most([(variable, 1.0)], 0.0), cause);
        let rows = sizes.into_iter().flatten().flat_map(|size| [none(size.up), none(size.beyond)]).collect();
        self.alive_with(child, rows, &[])
    }

    pub(super) fn cut(&mut self, node: &Node<E>, place: usize, at: &[f64]) {
        let (arc, cause) = node.arcs[place].clone();
        let mut alive = Vec::new();
        for half in arc.cut(at) {
            let mut child = self.child_of(node);
            let rows = half.rows().into_iter().map(|row| (row, cause)).collect();
            child.arcs[place] = (half, cause);
            alive.extend(self.alive_with(child, rows, &[cause]));
        }
        self.push_all(alive);
    }

    /// What forbids these stands together, whatever the sizes.
    pub(super) fn dead_among(&self, standing: &[usize]) -> Option<Cause> {
        let alone = standing.iter().find_map(|state| self.problem.alone(*state).dead);
        let pairs = || {
            let pair = |(order, state): (usize, &usize)| {
                standing[..order].iter().find_map(|other| self.problem.between(*other, *state).dead)
            };
            standing.iter().enumerate().find_map(pair)
        };
        alone.or_else(pairs)
    }
}

/// `row` turned round: at least what it allows at most.
fn negated(row: &Row) -> Row {
    Row::at_least(row.terms.iter().copied(), row.most)
}
