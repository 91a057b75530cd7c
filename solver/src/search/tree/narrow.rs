//! Ways through that are too narrow, as a question of what would widen them.

use elbowroom_model::PieceId;

use super::super::barriers::Barrier;
use super::super::branching::standing;
use super::super::node::{Node, Question};
use super::{Tree, layout_of};
use crate::program::Engine;
use crate::rules::Requirement;
use crate::rules::route::{self, Widening};

impl<'p, E: Engine> Tree<'p, '_, E> {
    /// What would widen the ways through that are too narrow; more pieces could only make them narrower.
    pub(super) fn too_narrow(&mut self, found: &Node<'p, E>) -> Option<Widening> {
        if self.problem.plain {
            return None;
        }
        self.tally.layouts += 1;
        let poses: Vec<_> = standing(found).into_iter().map(|state| &self.problem.states[state].posed.pose).collect();
        let layout = layout_of(self.problem, found);
        let context = &self.problem.context;
        route::first_too_narrow(context, self.floor, &poses, &layout)
            .or_else(|| route::circle_out_of_reach(context, self.floor, &poses, &layout))
    }

    /// What a way through that is too narrow in `found` asks of what stands under a node worth `bound`.
    pub(super) fn question(&mut self, found: &Node<'p, E>, bound: f64, widening: Widening) -> Question<'p> {
        let Widening { mut requirement, is_exhaustive, bars } = widening;
        self.tally.too_narrow += 1;
        self.problem.propagate(&mut requirement, &standing(found));
        if let Some(pieces) = bars {
            self.learn(found, &pieces, &requirement);
        }
        let offered = requirement.alternatives.len();
        // What holds already has not mended the route, and would be chosen for ever.
        requirement.alternatives.retain(|alternative| !alternative.holds(found.engine.values()));
        if !is_exhaustive || requirement.alternatives.len() < offered {
            self.unexplored = self.unexplored.max(bound);
        }
        if requirement.alternatives.is_empty() {
            self.blame(requirement.cause);
        }
        let Requirement { cause, alternatives } = self.learned.widenings.push_get(Box::new(requirement));
        Question { cause: *cause, alternatives }
    }

    /// Keeps what a chain asks wherever its pieces stand as they do in `found`.
    fn learn(&mut self, found: &Node<'p, E>, pieces: &[PieceId], requirement: &Requirement) {
        let of_chain = |state: &usize| pieces.contains(&self.problem.states[*state].posed.pose.id);
        let stands = standing(found).into_iter().filter(of_chain).map(|state| self.problem.states[state].key).collect();
        let barrier = self.learned.barriers.learn(Barrier { stands, requirement: requirement.clone() });
        self.barring.extend(barrier.and_then(|barrier| self.problem.barring(barrier)));
    }
}
