//! The plan of an arrangement.
//!
//! One search over all pieces at once promises next to nothing at its root. So what must stand is planned first, then each
//! piece that need not stand in the order of its worth, kept where the plan gains by it; then the whole, best first, to beat
//! that or to prove it. What is not proven then is improved piece by piece.

use elbowroom_model::TURNS;

use super::aim::Aim;
use super::arrangement_context::ArrangementContext;
use super::budget::Budget;
use super::dive::{held, needed, pieces_of};
use super::easing::Easing;
use super::effort::Effort;
use super::found::Searched;
use super::once::search_once;
use super::sofar::Sofar;
use super::tree::Order;
use super::turning;
use crate::arrangement::Arrangement;

/// Nodes for a piece that is added, or for chairs turned by one angle, at least: a layout lies some fifty deep.
pub(super) const LEAST_FOR_A_PIECE: usize = 90;

/// Of the nodes of an arrangement one in so many for what must stand, and for chairs turned by one angle.
const SHARE_OF_NEEDED: usize = 4;
const SHARE_OF_A_TURN: usize = 30;

/// Where what must stand found no place within its share it is looked for again with so many times the nodes of a search.
const AGAIN: [usize; 2] = [1, 4];

/// How often each piece that does not stand is tried: what one leaves out may stand beside what another moved.
const ROUNDS: usize = 2;

/// The plan that composes best, rules of comfort eased only where there is none otherwise.
#[must_use]
pub fn plan(context: &ArrangementContext<'_>, budget: Budget) -> Searched {
    let asked = Planning { context, arrangement: context.arrangement, budget, easing: Easing::Kept };
    let clean = asked.run();
    if clean.found.is_some() {
        return clean;
    }
    let mut eased = Planning { easing: Easing::MayBeEased, ..asked }.run();
    eased.take_work_of(&clean);
    if eased.found.is_none() {
        for (cause, count) in clean.blame {
            *eased.blame.entry(cause).or_default() += count;
        }
    }
    eased
}

/// What is planned, and how far.
#[derive(Clone, Copy)]
pub(super) struct Planning<'s, 'a> {
    pub(super) context: &'s ArrangementContext<'a>,
    /// That of the context, or as much of it as is planned first.
    pub(super) arrangement: &'s Arrangement,
    pub(super) budget: Budget,
    pub(super) easing: Easing<'s>,
}

impl Planning<'_, '_> {
    /// Where chairs may stand square or turned, a plan is found with them square first: each way by which they could be
    /// turned besides would take as long.
    fn run(&self) -> Searched {
        let mut sofar = Sofar::nothing();
        let square = turning::square(self.arrangement);
        let square = square.as_ref().map(|square| Planning { arrangement: square, ..*self });
        let is_found = match square {
            Some(square) if square.find(&mut sofar) => {
                self.turn(&mut sofar);
                true
            }
            _ => self.find(&mut sofar),
        };
        if is_found {
            self.prove(&mut sofar);
            self.improve(&mut sofar);
        }
        sofar.searched
    }

    /// The same pieces with chairs that may be turned turned by each angle, and all else as it stands; and chairs that found
    /// no place square.
    fn turn(&self, sofar: &mut Sofar) {
        for degrees in TURNS {
            let Some(layout) = sofar.layout().cloned() else { return };
            let held = held(self.context.room, self.arrangement, &layout, None);
            let turned = turning::turned(held, self.arrangement, degrees);
            let nodes = (self.budget.of_one / SHARE_OF_A_TURN).max(LEAST_FOR_A_PIECE);
            self.look_in(&turned, sofar, Aim::PlanOf(&pieces_of(&layout)), nodes, Order::DeepestFirst);
        }
        if sofar.layout().is_some_and(|layout| turning::lacks_a_chair(self.arrangement, layout)) {
            self.add_pieces(sofar);
        }
    }

    /// What must stand, and each other piece by which that gains. Says whether what must stand does.
    fn find(&self, sofar: &mut Sofar) -> bool {
        let needed = needed(self.context.room.brief, self.arrangement);
        let of_one = self.budget.of_one;
        let mut is_found = self.look_for(sofar, Aim::PlanOf(&needed), of_one / SHARE_OF_NEEDED, Order::DeepestFirst);
        // Few arrangements are so hard: more work for them costs a room little, and "not decided" is no answer.
        for times in AGAIN {
            let is_open = !is_found && !sofar.searched.is_complete;
            is_found =
                is_found || is_open && self.look_for(sofar, Aim::PlanOf(&needed), times * of_one, Order::DeepestFirst);
        }
        if is_found {
            // A piece that found no place is tried again only where another came to stand since.
            let mut added = self.add_pieces(sofar);
            for _ in 1..ROUNDS {
                added = added && self.add_pieces(sofar);
            }
        }
        is_found
    }

    /// All pieces at once, best first: what is better than the plan so far, and the bound.
    fn prove(&self, sofar: &mut Sofar) {
        self.look_for(sofar, Aim::Plan, self.budget.of_one, Order::BestFirst);
        let unexplored = sofar.searched.unexplored;
        if let Some(found) = &mut sofar.searched.found {
            found.bound = found.objective.max(unexplored);
        }
    }

    /// Takes what a search finds, where it is better, and says whether it is.
    pub(super) fn look_for(&self, sofar: &mut Sofar, aim: Aim<'_>, nodes: usize, order: Order<'_>) -> bool {
        self.look_in(self.arrangement, sofar, aim, nodes, order)
    }

    /// The same in an arrangement that is held more closely.
    pub(super) fn look_in(
        &self,
        within: &Arrangement,
        sofar: &mut Sofar,
        aim: Aim<'_>,
        nodes: usize,
        order: Order<'_>,
    ) -> bool {
        let nodes = self.budget.left(nodes, sofar.searched.tally.nodes);
        let effort = Effort { to_beat: sofar.value(), easing: self.easing, ..Effort::of(aim, nodes) };
        let more = search_once(self.context, within, effort, order);
        sofar.take(more)
    }
}
