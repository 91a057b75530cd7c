//! What waits to be looked at: nodes, and children of nodes that are made when their turn comes.
//!
//! A child costs a copy of its parent and a program. Its parent's optimum tells cheaply what the child can be worth at most;
//! where that is never the best of all that waits, the child is never made.

use elbowroom_model::PieceId;

use std::cmp::Ordering;
use std::rc::Rc;

use super::node::{Asked, Node, Question};
use super::tolerance::SAME_RANK;
use super::tree::Lead;
use crate::program::Engine;
use crate::rules::Arc;

/// What the children of one decision have in common.
pub(super) struct Siblings<'p, E> {
    /// The node that the decision was taken for, the decision noted in it.
    pub(super) base: Box<Node<'p, E>>,
    /// What no elder covers, in the order of the children.
    pub(super) held: Asked,
}

/// A child that has not been made.
pub(super) struct Child<'p, E> {
    pub(super) siblings: Rc<Siblings<'p, E>>,
    /// How many rows of what no elder covers it keeps.
    pub(super) held: usize,
    pub(super) change: Change<'p>,
}

/// What makes a child of its siblings's base.
pub(super) enum Change<'p> {
    /// It takes this alternative of the question.
    Takes(Question<'p>, usize),
    /// A piece stands so.
    Stands(PieceId, usize),
    /// A piece is left out.
    LeftOut(PieceId),
    /// The round gap at this place of the node's is held in a part of its sector.
    Part(usize, Arc),
}

impl Change<'_> {
    /// Whether the layout that is followed has it so.
    pub(super) fn keeps(&self, lead: Lead<'_>) -> bool {
        match self {
            Self::Takes(question, _) if lead.but_for.is_some_and(|piece| question.cause.is_of(piece)) => false,
            Self::Takes(question, place) => question.alternatives[*place].holds(lead.values),
            Self::Part(_, arc) => arc.holds(lead.values),
            Self::Stands(..) | Self::LeftOut(_) => false,
        }
    }
}

/// A node, or what becomes one.
pub(super) enum Candidate<'p, E> {
    Ready(Box<Node<'p, E>>),
    Child(Child<'p, E>),
}

/// A candidate in the queue: best bound first, then the deepest, then the first made.
pub(super) struct OpenNode<'p, E> {
    pub(super) candidate: Candidate<'p, E>,
    /// No layout under it has more.
    pub(super) bound: f64,
    /// The bound in steps in which it is told apart from others.
    rank: i64,
    depth: usize,
    made: usize,
}

impl<'p, E: Engine> OpenNode<'p, E> {
    pub(super) fn node(node: Box<Node<'p, E>>, made: usize) -> Self {
        let (bound, depth) = (node.bound(), node.depth);
        Self { candidate: Candidate::Ready(node), bound, rank: rank(bound, SAME_RANK), depth, made }
    }

    /// A child that is worth `bound` at most.
    pub(super) fn child(child: Child<'p, E>, bound: f64, made: usize) -> Self {
        let depth = child.siblings.base.depth;
        Self { candidate: Candidate::Child(child), bound, rank: rank(bound, SAME_RANK), depth, made }
    }

    /// When it was made: what becomes of a child keeps its turn.
    pub(super) const fn made(&self) -> usize {
        self.made
    }

    /// The same, where bounds are told apart by this step only: of those that promise the same the deepest goes first.
    pub(super) fn in_steps_of(self, step: f64) -> Self {
        Self { rank: rank(self.bound, step), ..self }
    }
}

/// A cast from float to integer saturates; in steps without end all are one.
fn rank(bound: f64, step: f64) -> i64 {
    (bound / step).round() as i64
}

impl<E> PartialEq for OpenNode<'_, E> {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl<E> Eq for OpenNode<'_, E> {}

impl<E> PartialOrd for OpenNode<'_, E> {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl<E> Ord for OpenNode<'_, E> {
    fn cmp(&self, other: &Self) -> Ordering {
        let depth = self.depth.cmp(&other.depth);
        self.rank.cmp(&other.rank).then(depth).then(other.made.cmp(&self.made))
    }
}
