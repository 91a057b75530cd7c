//! Plans made and mended piece by piece: what need not stand is added, and what costs something is put somewhere else.
//!
//! A piece is put with all else in its place first, which takes a small part of the work of letting all else slide as it must;
//! that is done where the first finds nothing, and at the end.

use elbowroom_model::PieceId;

use super::aim::Aim;
use super::dive::{held, pieces_of};
use super::elsewhere::{Elsewhere, Rest, are_many, slid};
use super::found::Found;
use super::planned::{LEAST_FOR_A_PIECE, Planning};
use super::sofar::Sofar;
use super::tolerance::{INDIFFERENT_PLAN, PLAN_PROVEN_WITHIN};
use super::tree::{Lead, Order};
use crate::arrangement::Role;
use crate::composition::{TermCost, worth};
use crate::rules::With;

/// Of the nodes of an arrangement one in so many for each piece that is added.
const SHARE_OF_A_PIECE: usize = 10;

/// Pieces that are moved in a plan that is not proven, one after the other.
const MOST_MOVES: usize = 8;

/// Of the pieces that cost something so many are tried with all else sliding.
const TRIED_SLIDING: usize = 5;

impl Planning<'_, '_> {
    /// Each piece that does not stand is added where the plan gains by it; says whether one was.
    pub(super) fn add_pieces(&self, sofar: &mut Sofar) -> bool {
        let are_many = are_many(self.context.room.brief);
        let mut added = false;
        for piece in self.optional() {
            let stands = sofar.layout().is_none_or(|layout| layout.of(piece).is_some());
            added |= !stands && if are_many { self.add_among_many(sofar, piece) } else { self.add(sofar, piece) };
        }
        if are_many && added {
            self.slide(sofar);
        }
        added
    }

    /// A piece where all else keeps to its walls, or, where that leaves it no place, anywhere.
    fn add(&self, sofar: &mut Sofar, piece: PieceId) -> bool {
        self.add_to_walls(sofar, piece, Order::DeepestFirst)
            || self.add_like(sofar, piece)
            || self.add_anywhere(sofar, piece)
    }

    /// A piece where all else keeps its place, or slides, or keeps to its walls.
    fn add_among_many(&self, sofar: &mut Sofar, piece: PieceId) -> bool {
        if self.put(sofar, piece, 0.0, Rest::Still) {
            return true;
        }
        self.slide(sofar);
        self.put(sofar, piece, 0.0, Rest::Slides) || self.add_like(sofar, piece)
    }

    /// A piece where all that stands keeps to its walls and is decided as it is, but for what is asked of the piece.
    fn add_like(&self, sofar: &mut Sofar, piece: PieceId) -> bool {
        let values = sofar.values();
        self.add_to_walls(sofar, piece, Order::Like(Lead { values: &values, but_for: Some(piece) }))
    }

    fn add_to_walls(&self, sofar: &mut Sofar, piece: PieceId, order: Order<'_>) -> bool {
        let Some(layout) = sofar.layout() else { return false };
        let held = held(self.context.room, self.arrangement, layout, Some(piece));
        let with: Vec<PieceId> = pieces_of(layout).into_iter().chain([piece]).collect();
        self.look_in(&held, sofar, Aim::PlanOf(&with), self.nodes_of_a_piece(), order)
    }

    fn add_anywhere(&self, sofar: &mut Sofar, piece: PieceId) -> bool {
        let Some(layout) = sofar.layout() else { return false };
        let with: Vec<PieceId> = pieces_of(layout).into_iter().chain([piece]).collect();
        self.look_for(sofar, Aim::PlanOf(&with), self.nodes_of_a_piece(), Order::DeepestFirst)
    }

    fn nodes_of_a_piece(&self) -> usize {
        (self.budget.of_one / SHARE_OF_A_PIECE).max(LEAST_FOR_A_PIECE)
    }

    /// The pieces that need not stand, what is worth most first.
    fn optional(&self) -> Vec<PieceId> {
        let brief = self.context.room.brief;
        let worth = |id: &PieceId| brief.piece(*id).map_or(0.0, |piece| worth(piece, &brief.wishes));
        let may_be_left_out = |piece: &PieceId| !self.arrangement.must_stand(brief, *piece);
        let mut found: Vec<PieceId> = brief.piece_ids().filter(may_be_left_out).collect();
        found.sort_by(|one, other| worth(other).total_cmp(&worth(one)));
        found
    }

    /// A plan that is not proven with each piece that costs something where it stands in the best of its places: what costs
    /// most first, and again while one moves.
    pub(super) fn improve(&self, sofar: &mut Sofar) {
        for (rest, tried) in [(Rest::Still, usize::MAX), (Rest::Slides, TRIED_SLIDING)] {
            let mut moves = 0..MOST_MOVES;
            while is_open(sofar) && moves.next().is_some() && self.move_one(sofar, rest, tried) {}
            if is_open(sofar) {
                self.slide(sofar);
            }
        }
    }

    /// Moves the first of the pieces that cost something, of so many, by which the plan gains; says whether one does.
    fn move_one(&self, sofar: &mut Sofar, rest: Rest, tried: usize) -> bool {
        let mut costly = self.costly(sofar).into_iter().take(tried);
        costly.any(|piece| self.put(sofar, piece, INDIFFERENT_PLAN, rest))
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

    /// One piece, or one more, in the best place that it has anywhere, where the plan gains more than so much by it; says whether
    /// it does. Not where rules are eased, as the plan may ease others with it.
    fn put(&self, sofar: &mut Sofar, piece: PieceId, gain: f64, rest: Rest) -> bool {
        let is_clean = |found: &Found| found.eased.is_empty();
        let Some(plan) = sofar.searched.found.clone().filter(is_clean) else { return false };
        let elsewhere = Elsewhere::of(self.context, self.arrangement, &plan, piece, plan.objective + gain);
        let nodes = self.budget.left(self.budget.of_one, sofar.searched.tally.nodes);
        nodes > 1 && elsewhere.is_some_and(|elsewhere| sofar.take_better(elsewhere.anywhere(nodes, rest)))
    }

    /// All of the plan in its best place, decided as it is, where something was put since that was last done.
    fn slide(&self, sofar: &mut Sofar) {
        let is_clean = |found: &Found| found.eased.is_empty();
        let Some(plan) = sofar.searched.found.clone().filter(is_clean) else { return };
        if sofar.slid < plan.objective {
            let nodes = self.budget.left(self.budget.of_one, sofar.searched.tally.nodes);
            sofar.take_better(slid(self.context, self.arrangement, &plan, nodes));
            sofar.slid = sofar.value();
        }
    }
}

/// Whether the plan could still be better by more than a proof leaves open.
fn is_open(sofar: &Sofar) -> bool {
    sofar.searched.found.as_ref().is_some_and(|found| found.bound - found.objective > PLAN_PROVEN_WITHIN)
}
