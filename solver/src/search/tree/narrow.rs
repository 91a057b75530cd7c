//! Ways through that are too narrow, as a question of what would widen them.

use elbowroom_model::{PieceId, Rule};

use super::super::barriers::Barrier;
use super::super::branching::{Decision, Settles, standing};
use super::super::node::{Chosen, Node, Question};
use super::{Tree, layout_of};
use crate::program::Engine;
use crate::rules::Requirement;
use crate::rules::route::{self, Behind, Widening};

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

    /// On which side of a piece of the chain the piece behind it stands, where that is not decided: what would widen the way is
    /// asked when it is.
    pub(super) fn side_of_chain(&self, found: &Node<'p, E>, behind: &Behind) -> Option<Decision<'p>> {
        let stands = standing(found);
        let state_of = |piece: PieceId| {
            stands.iter().copied().find(|state| self.problem.states[*state].posed.pose.id == piece)
        };
        let own = state_of(behind.piece)?;
        let (settles, requirement) = behind.chain.iter().filter_map(|piece| state_of(*piece)).find_map(|other| {
            let (one, other) = (own.min(other), own.max(other));
            let choices = self.problem.between(one, other).choices.iter().enumerate();
            let mut of_sides = choices.filter(|(_, requirement)| requirement.cause.rule == Rule::Overlap);
            let open = of_sides.find(|(place, _)| !found.chosen.contains(&Chosen::Between(one, other, *place)));
            open.map(|(place, requirement)| (Settles::Requirement(Chosen::Between(one, other, place)), requirement))
        })?;
        let Requirement { cause, alternatives } = requirement;
        let promises = alternatives.iter().map(|alternative| found.probe(alternative)).collect();
        Some(Decision { settles, question: Question { cause: *cause, alternatives }, promises })
    }

    /// What a way through that is too narrow in `found` asks of what stands under a node worth `bound`.
    pub(super) fn question(&mut self, found: &Node<'p, E>, bound: f64, widening: Widening) -> Question<'p> {
        let Widening { mut requirement, is_exhaustive, bars, .. } = widening;
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
