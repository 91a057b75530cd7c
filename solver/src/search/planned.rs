//! The plan of an arrangement.
//!
//! One search over all pieces at once promises next to nothing at its root. So what must stand is planned first, then each
//! piece that need not stand in the order of its worth, kept where the plan gains by it; then the whole, best first, to beat
//! that or to prove it.

use std::collections::BTreeMap;

use elbowroom_model::{PieceId, TURNS};

use super::aim::Aim;
use super::barriers::Barriers;
use super::budget::Budget;
use super::dive::{held, needed, pieces_of};
use super::easing::Easing;
use super::effort::Effort;
use super::elsewhere::Elsewhere;
use super::found::{Found, Searched};
use super::once::search_once;
use super::room_context::RoomContext;
use super::tally::Tally;
use super::tolerance::{INDIFFERENT_PLAN, PLAN_PROVEN_WITHIN};
use super::tree::{Lead, Order};
use super::turning;
use crate::arrangement::{Arrangement, Role};
use crate::composition::{TermCost, worth};
use crate::layout::Layout;
use crate::routes::Floor;
use crate::rules::With;

/// Of the nodes of an arrangement one in so many for what must stand, and for each piece that is added.
const SHARE_OF_NEEDED: usize = 4;
const SHARE_OF_A_PIECE: usize = 10;

/// Nodes for each piece that is added, at least: a layout lies some fifty deep.
const LEAST_FOR_A_PIECE: usize = 90;

/// The same for chairs turned by one angle.
const SHARE_OF_A_TURN: usize = 30;

/// How often each piece that does not stand is tried: what one leaves out may stand beside what another moved.
const ROUNDS: usize = 2;

/// So many pieces are many: what all of them decide together takes more nodes than there are.
const MANY: usize = 12;

/// Pieces that are moved in a plan that is not proven, one after the other.
const MOST_MOVES: usize = 8;

/// The plan that composes best, rules of comfort eased only where there is none otherwise.
#[must_use]
pub fn plan(room: &RoomContext<'_>, floor: &Floor, arrangement: &Arrangement, budget: Budget) -> Searched {
    let barriers = &Barriers::default();
    let asked = Planning { room, floor, arrangement, budget, easing: Easing::Kept, barriers };
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
struct Planning<'s, 'a> {
    room: &'s RoomContext<'a>,
    floor: &'s Floor,
    arrangement: &'s Arrangement,
    budget: Budget,
    easing: Easing<'s>,
    /// What bars ways, learned on the way.
    barriers: &'s Barriers,
}

/// The plan so far.
struct Sofar {
    searched: Searched,
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
            let held = held(self.room, self.arrangement, &layout, None);
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
        let needed = needed(self.room.brief, self.arrangement);
        let share = self.budget.of_one / SHARE_OF_NEEDED;
        let is_found = self.look_for(sofar, Aim::PlanOf(&needed), share, Order::DeepestFirst)
            || !sofar.searched.is_complete
                && self.look_for(sofar, Aim::PlanOf(&needed), self.budget.of_one, Order::DeepestFirst);
        if is_found {
            // A piece that found no place is tried again only where another came to stand since.
            let mut added = self.add_pieces(sofar);
            for _ in 1..ROUNDS {
                added = added && self.add_pieces(sofar);
            }
        }
        is_found
    }

    /// Each piece that does not stand is added where the plan gains by it: where all else keeps to its walls, or, where that
    /// leaves it no place, anywhere. Of many pieces each is first put where it is best with all else as it stands, which takes a
    /// tenth of the work. Says whether one was added.
    fn add_pieces(&self, sofar: &mut Sofar) -> bool {
        let nodes = (self.budget.of_one / SHARE_OF_A_PIECE).max(LEAST_FOR_A_PIECE);
        let are_many = self.room.brief.pieces.len() >= MANY;
        let mut added = false;
        for piece in self.optional() {
            let Some(layout) = sofar.layout().filter(|layout| layout.of(piece).is_none()).cloned() else { continue };
            let with: Vec<PieceId> = pieces_of(&layout).into_iter().chain([piece]).collect();
            let held = held(self.room, self.arrangement, &layout, Some(piece));
            let values = sofar.values();
            let lead = Lead { values: &values, but_for: Some(piece) };
            added |= are_many && self.put(sofar, piece, 0.0)
                || self.look_in(&held, sofar, Aim::PlanOf(&with), nodes, Order::DeepestFirst)
                || self.look_in(&held, sofar, Aim::PlanOf(&with), nodes, Order::Like(lead))
                || self.look_for(sofar, Aim::PlanOf(&with), nodes, Order::DeepestFirst);
        }
        added
    }

    /// One piece, or one more, in the best place that it has anywhere with all else as it stands, where the plan gains more than
    /// so much by it; says whether it does. Not where rules are eased, as the plan may ease others with it.
    fn put(&self, sofar: &mut Sofar, piece: PieceId, gain: f64) -> bool {
        let is_clean = |found: &Found| found.eased.is_empty();
        let Some(plan) = sofar.searched.found.clone().filter(is_clean) else { return false };
        let elsewhere = Elsewhere::of(self.room, self.floor, self.arrangement, &plan, piece, plan.objective + gain);
        let nodes = self.budget.left(self.budget.of_one, sofar.searched.tally.nodes);
        nodes > 1 && elsewhere.is_some_and(|elsewhere| sofar.take_better(elsewhere.anywhere(nodes)))
    }

    /// The pieces that need not stand, what is worth most first.
    fn optional(&self) -> Vec<PieceId> {
        let brief = self.room.brief;
        let worth = |id: &PieceId| brief.piece(*id).map_or(0.0, |piece| worth(piece, &brief.wishes));
        let may_be_left_out = |piece: &PieceId| !self.arrangement.must_stand(brief, *piece);
        let mut found: Vec<PieceId> = brief.piece_ids().filter(may_be_left_out).collect();
        found.sort_by(|one, other| worth(other).total_cmp(&worth(one)));
        found
    }

    /// All pieces at once, best first: what is better than the plan so far, and the bound.
    fn prove(&self, sofar: &mut Sofar) {
        self.look_for(sofar, Aim::Plan, self.budget.of_one, Order::BestFirst);
        let unexplored = sofar.searched.unexplored;
        if let Some(found) = &mut sofar.searched.found {
            found.bound = found.objective.max(unexplored);
        }
    }

    /// A plan that is not proven with each piece that costs something where it stands in the best of its places, all else as
    /// planned: what costs most first, and again while one moves.
    fn improve(&self, sofar: &mut Sofar) {
        let is_open = |found: &Found| found.bound - found.objective > PLAN_PROVEN_WITHIN;
        for _ in 0..MOST_MOVES {
            let may_gain = sofar.searched.found.as_ref().is_some_and(is_open);
            if !may_gain || !self.costly(sofar).into_iter().any(|piece| self.put(sofar, piece, INDIFFERENT_PLAN)) {
                return;
            }
        }
    }

    /// The pieces that could gain by standing elsewhere, what could gain most first.
    fn costly(&self, sofar: &Sofar) -> Vec<PieceId> {
        let Some(plan) = &sofar.searched.found else { return Vec::new() };
        let of = |piece: PieceId| {
            let its = |told: &&TermCost| told.piece == piece || told.with == With::Piece(piece);
            plan.composition.iter().filter(its).map(|told| told.cost).sum::<f64>()
        };
        let others = self.arrangement.standings.iter().filter(|standing| !matches!(standing.role, Role::MainSeat));
        let costs = others.map(|standing| (standing.piece, of(standing.piece)));
        let mut costly: Vec<(PieceId, f64)> = costs.filter(|(_, cost)| *cost > INDIFFERENT_PLAN).collect();
        costly.sort_by(|(_, one), (_, other)| other.total_cmp(one));
        costly.into_iter().map(|(piece, _)| piece).collect()
    }

    /// Takes what a search finds, where it is better, and says whether it is.
    fn look_for(&self, sofar: &mut Sofar, aim: Aim<'_>, nodes: usize, order: Order<'_>) -> bool {
        self.look_in(self.arrangement, sofar, aim, nodes, order)
    }

    /// The same in an arrangement that is held more closely.
    fn look_in(&self, within: &Arrangement, sofar: &mut Sofar, aim: Aim<'_>, nodes: usize, order: Order<'_>) -> bool {
        let nodes = self.budget.left(nodes, sofar.searched.tally.nodes);
        let effort = Effort { to_beat: sofar.value(), easing: self.easing, ..Effort::of(aim, nodes) };
        let more = search_once(self.room, self.floor, within, effort, order, self.barriers);
        sofar.take(more)
    }
}

impl Sofar {
    fn nothing() -> Self {
        let searched = Searched {
            found: None,
            is_complete: true,
            unexplored: f64::NEG_INFINITY,
            blame: BTreeMap::new(),
            programs: 0,
            tally: Tally::default(),
        };
        Self { searched }
    }

    const fn layout(&self) -> Option<&Layout> {
        match &self.searched.found {
            Some(found) => Some(&found.layout),
            None => None,
        }
    }

    fn values(&self) -> Vec<f64> {
        self.searched.found.as_ref().map_or_else(Vec::new, |found| found.values.clone())
    }

    fn value(&self) -> f64 {
        self.searched.found.as_ref().map_or(f64::NEG_INFINITY, |found| found.objective)
    }

    /// Takes what is found elsewhere where it is better, and says whether it is.
    fn take_better(&mut self, more: Searched) -> bool {
        self.searched.take_work_of(&more);
        let is_better = |found: &Found| found.objective > self.value();
        let better = more.found.filter(is_better);
        let is_better = better.is_some();
        self.searched.found = better.or_else(|| self.searched.found.take());
        is_better
    }

    fn take(&mut self, more: Searched) -> bool {
        self.searched.take_work_of(&more);
        self.searched.is_complete = more.is_complete;
        self.searched.unexplored = more.unexplored;
        for (cause, count) in more.blame {
            *self.searched.blame.entry(cause).or_default() += count;
        }
        let is_better = more.found.is_some();
        if is_better {
            self.searched.found = more.found;
        }
        is_better
    }
}
