//! Ways through that are too narrow, as a question of what would widen them.

use elbowroom_model::{PieceId, Rule};

use super::super::barriers::Barrier;
use super::super::branching::standing;
use super::super::node::{Node, Question};
use super::{Tree, layout_of};
use crate::program::Engine;
use crate::rules::route::{self, Behind, Widening};
use crate::rules::{Alternative, Requirement};

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

    /// The other sides on which the piece behind a chain may come to stand of each piece of it, and of what stands for good.
    fn other_sides(&self, found: &Node<'p, E>, behind: &Behind) -> Vec<Alternative> {
        let stands = standing(found);
        let state_of =
            |piece: PieceId| stands.iter().copied().find(|state| self.problem.states[*state].posed.pose.id == piece);
        let Some(own) = state_of(behind.piece) else { return Vec::new() };
        let of_chain = behind.chain.iter().filter_map(|piece| state_of(*piece));
        let beside = of_chain.flat_map(|other| &self.problem.between(own.min(other), own.max(other)).choices);
        let of_sides =
            |requirement: &&Requirement| matches!(requirement.cause.rule, Rule::Overlap | Rule::Fixed | Rule::Room);
        let all = beside.chain(&self.problem.alone(own).choices).filter(of_sides);
        let others = all.flat_map(|requirement| &requirement.alternatives);
        others.filter(|side| !side.holds(found.engine.values())).cloned().collect()
    }

    /// What a way through that is too narrow in `found` asks of what stands under a node worth `bound`.
    pub(super) fn question(&mut self, found: &Node<'p, E>, bound: f64, widening: Widening) -> Question<'p> {
        let Widening { mut requirement, is_exhaustive, bars, behind } = widening;
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
        if let Some(behind) = behind {
            requirement.alternatives.extend(self.other_sides(found, &behind));
            if behind.may_slip_by {
                self.unexplored = self.unexplored.max(bound);
            }
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
