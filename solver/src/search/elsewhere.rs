//! A plan with one piece somewhere else, or with one piece more, all else decided as the plan decides it.

use elbowroom_model::{PieceId, Rule};

use super::aim::Aim;
use super::barriers::Barriers;
use super::dive::{held, pieces_of};
use super::effort::Effort;
use super::found::{Found, Searched};
use super::once::search_once;
use super::room_context::RoomContext;
use super::tree::Order;
use crate::arrangement::{Arrangement, Stand};
use crate::program::Row;
use crate::routes::Floor;
use crate::rules::{Cause, PieceVariables, With};

/// Nodes for each way in which the piece may stand, and for all of them: what it alone may decide lies a dozen deep.
const NODES: usize = 100;
const NODES_OF_ALL: usize = 200;

/// What stands nearer to where it stood than this stands in the same place, mm.
const SAME_PLACE: f64 = 400.0;

/// The plan, and the piece that is to stand elsewhere, or besides.
pub(crate) struct Elsewhere<'s, 'a> {
    room: &'s RoomContext<'a>,
    floor: &'s Floor,
    plan: &'s Found,
    piece: PieceId,
    own: PieceVariables,
    /// Layouts count that are better than this.
    to_beat: f64,
    held: Arrangement,
    /// Which of its standings is the piece's.
    place: usize,
    pieces: Vec<PieceId>,
    /// What the plan decides of all others.
    decided: Vec<(Row, Cause)>,
}

impl<'s, 'a> Elsewhere<'s, 'a> {
    /// All else held to its walls; `None` where the arrangement has no place for the piece.
    pub(crate) fn of(
        room: &'s RoomContext<'a>,
        floor: &'s Floor,
        arrangement: &Arrangement,
        plan: &'s Found,
        piece: PieceId,
        to_beat: f64,
    ) -> Option<Self> {
        let mut held = held(room, arrangement, &plan.layout, None);
        let place = held.standings.iter().position(|standing| standing.piece == piece)?;
        held.standings[place].stands.clone_from(&arrangement.standings.get(place)?.stands);
        let others = pieces_of(&plan.layout).into_iter().filter(|other| *other != piece);
        let pieces = others.chain([piece]).collect();
        let own = *room.variables.piece(piece)?;
        let is_of_others = |row: &Row| !row.terms.iter().any(|(variable, _)| own.has(*variable));
        let decided = plan.rows.iter().filter(|(row, _)| is_of_others(row)).cloned().collect();
        Some(Self { room, floor, plan, piece, own, to_beat, held, place, pieces, decided })
    }

    /// The best that was found for the piece anywhere, within so many nodes.
    pub(crate) fn anywhere(&self, nodes: usize) -> Searched {
        self.search(&self.held, &self.decided, nodes.min(NODES_OF_ALL))
    }

    /// What was found for each way in which the piece may stand.
    pub(crate) fn by_stands(&self) -> Vec<Searched> {
        self.stands().map(|stand| self.look(stand, &self.decided)).collect()
    }

    /// The same of each wall, for each place along it that is another: to the left and the right of where it stands in the
    /// plan, or of what is found first.
    pub(crate) fn along_walls(&self) -> Vec<Searched> {
        let mut found = Vec::new();
        for stand in self.stands().filter(|stand| stand.at_wall.is_some()) {
            let now = self.plan.layout.of(self.piece).filter(|placed| placed.at_wall == stand.at_wall);
            let first = now.is_none().then(|| self.look(stand, &self.decided));
            let at = match &first {
                None => Some(self.across(self.plan)),
                Some(first) => first.found.as_ref().map(|first| self.across(first)),
            };
            found.extend(first);
            found.extend(at.into_iter().flat_map(|at| self.beside(at)).map(|rows| self.look(stand, &rows)));
        }
        found
    }

    fn stands(&self) -> impl Iterator<Item = Stand> + '_ {
        self.held.standings[self.place].stands.iter().copied()
    }

    /// Where it stands along its back.
    fn across(&self, found: &Found) -> f64 {
        found.values.get(self.own.across).copied().unwrap_or_default()
    }

    /// What is decided, and the piece to one side of a place along its back, or to the other.
    fn beside(&self, at: f64) -> [Vec<(Row, Cause)>; 2] {
        let cause = Cause { rule: Rule::Room, piece: self.piece, with: With::Itself };
        let across = [(self.own.across, 1.0)];
        let sides = [Row::at_most(across, at - SAME_PLACE), Row::at_least(across, at + SAME_PLACE)];
        sides.map(|side| self.decided.iter().cloned().chain([(side, cause)]).collect())
    }

    fn look(&self, stand: Stand, rows: &[(Row, Cause)]) -> Searched {
        let mut so = self.held.clone();
        so.standings[self.place].stands = vec![stand];
        self.search(&so, rows, NODES)
    }

    /// The best layout of what keeps every rule of comfort.
    fn search(&self, within: &Arrangement, rows: &[(Row, Cause)], nodes: usize) -> Searched {
        let effort = Effort { to_beat: self.to_beat, besides: rows, ..Effort::of(Aim::PlanOf(&self.pieces), nodes) };
        let barriers = Barriers::default();
        let mut searched = search_once(self.room, self.floor, within, effort, Order::BestFirst, &barriers);
        if let Some(found) = &mut searched.found {
            found.bound = found.objective.max(self.plan.bound);
        }
        searched
    }
}
