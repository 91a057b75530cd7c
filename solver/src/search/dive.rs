//! What is still done where a search used its nodes up: it has proven nothing then, and may have found little.
//!
//! A search that looks where most is promised tries all pieces in all ways before it tries with fewer, and many pieces have
//! many ways that promise the same. So a layout is looked for depth first; where none is found so, what must stand goes
//! first and one piece more at a time; and at last sizes are sought for with every piece held to its wall.

use elbowroom_model::{Brief, PieceId};

use super::aim::Aim;
use super::arrangement_context::ArrangementContext;
use super::effort::Effort;
use super::found::{Found, Searched};
use super::once::search_once;
use super::room_context::RoomContext;
use super::tree::Order;
use crate::arrangement::Arrangement;
use crate::layout::Layout;

/// Of the nodes of the search that was cut short, one in so many for a layout of all pieces and for better sizes.
const SHARE_OF_ALL: usize = 2;
/// The same for each piece that is added, among pieces that are held to their walls and among pieces that are not.
const SHARE_OF_A_PIECE: [usize; 2] = [8, 4];
/// Nodes for each piece that is added, at least: a layout lies some hundred deep where there are many.
const LEAST_FOR_A_PIECE: usize = 100;

/// So many times the nodes of the search that was cut short may be taken in all, in a room with no more walls and things in
/// them than are usual; in others fewer, since each costs about the square of their number.
const TIMES: usize = 4;
const USUAL_THINGS: usize = 16;

/// Whether a search was cut short.
pub(super) fn is_cut_short(searched: &Searched) -> bool {
    match &searched.found {
        Some(found) => !found.is_proven(),
        None => !searched.is_complete,
    }
}

/// What `before` found, or better. The bound is still that of the search that was cut short.
pub(super) fn dive_on(context: &ArrangementContext<'_>, effort: Effort<'_>, before: Searched) -> Searched {
    let ArrangementContext { room, arrangement, .. } = *context;
    let bound = before.found.as_ref().map_or(before.unexplored, |found| found.bound);
    let searched = Searched { is_complete: false, ..before };
    let nodes = node_budget(room.brief, effort.nodes);
    let mut rest = Dive { context, effort, bound, searched, nodes };
    if rest.searched.found.as_ref().is_none_or(|found| !found.layout.left_out.is_empty()) {
        rest.look_for(arrangement, Aim::Together, effort.nodes / SHARE_OF_ALL, Order::DeepestFirst);
    }
    if rest.searched.found.is_none() {
        // What must stand is looked for whatever was taken before.
        let left = std::mem::replace(&mut rest.nodes, effort.nodes);
        rest.look_for(arrangement, Aim::These(&needed(room.brief, arrangement)), effort.nodes, Order::DeepestFirst);
        rest.nodes = left;
    }
    rest.add_pieces(arrangement);
    if let Some(layout) = rest.layout() {
        let held = held(room, arrangement, &layout, None);
        let pieces = pieces_of(&layout);
        rest.look_for(&held, Aim::These(&pieces), effort.nodes / SHARE_OF_ALL, Order::DeepestFirst);
    }
    rest.searched
}

/// The search so far, and what it may still take.
struct Dive<'s, 'a> {
    context: &'s ArrangementContext<'a>,
    effort: Effort<'s>,
    bound: f64,
    searched: Searched,
    /// Nodes that may still be taken.
    nodes: usize,
}

impl Dive<'_, '_> {
    fn layout(&self) -> Option<Layout> {
        self.searched.found.as_ref().map(|found| found.layout.clone())
    }

    /// Each piece that need not stand and does not is added where a place is found for it beside what stands.
    fn add_pieces(&mut self, arrangement: &Arrangement) {
        let room = self.context.room;
        let brief = room.brief;
        let [nodes_held, nodes_free] = SHARE_OF_A_PIECE.map(|share| (self.effort.nodes / share).max(LEAST_FOR_A_PIECE));
        for piece in optional(room, arrangement) {
            let Some(layout) = self.layout() else { return };
            let stands = |other: PieceId| layout.of(other).is_some();
            let mut earlier_twins =
                brief.piece_ids().take(piece.0).filter(|other| arrangement.are_twins(brief, piece, *other));
            // Of twins the first stand: where one found no place, neither does the next.
            if !stands(piece) && earlier_twins.all(stands) {
                let held = held(room, arrangement, &layout, Some(piece));
                let with: Vec<PieceId> = pieces_of(&layout).into_iter().chain([piece]).collect();
                if !self.look_for(&held, Aim::These(&with), nodes_held, Order::DeepestFirst) {
                    self.look_for(arrangement, Aim::These(&with), nodes_free, Order::BestFirst);
                }
            }
        }
    }

    /// Takes what a search finds, where it is better, and says whether it is.
    fn look_for(&mut self, arrangement: &Arrangement, aim: Aim<'_>, nodes: usize, order: Order<'_>) -> bool {
        let nodes = nodes.min(self.nodes);
        if nodes == 0 {
            return false;
        }
        let to_beat = self.searched.found.as_ref().map_or(self.effort.to_beat, |found| found.objective);
        let effort = Effort { aim, to_beat, nodes, ..self.effort };
        let more = search_once(self.context, arrangement, effort, order);
        self.nodes -= more.tally.nodes.min(self.nodes);
        self.searched.take_work_of(&more);
        for (cause, count) in more.blame {
            *self.searched.blame.entry(cause).or_default() += count;
        }
        let Some(found) = more.found else { return false };
        self.searched.found = Some(Found { bound: found.objective.max(self.bound), ..found });
        true
    }
}

fn node_budget(brief: &Brief, nodes: usize) -> usize {
    let things = brief.room.walls.len() + brief.room.items.len() + brief.room.fixed.len();
    let things = things.max(USUAL_THINGS);
    nodes.saturating_mul(TIMES * USUAL_THINGS * USUAL_THINGS) / (things * things)
}

/// The arrangement with what stands in `layout` held to its walls, but for twins of `but_for`.
pub(super) fn held(
    room: &RoomContext<'_>,
    arrangement: &Arrangement,
    layout: &Layout,
    but_for: Option<PieceId>,
) -> Arrangement {
    let mut held = arrangement.clone();
    for standing in &mut held.standings {
        let is_twin = but_for.is_some_and(|piece| arrangement.are_twins(room.brief, piece, standing.piece));
        if let Some(placed) = layout.of(standing.piece).filter(|_| !is_twin) {
            standing.stands.retain(|stand| stand.at_wall == placed.at_wall && stand.facing == placed.facing);
        }
    }
    held
}

pub(super) fn pieces_of(layout: &Layout) -> Vec<PieceId> {
    layout.placed.iter().map(|placed| placed.piece).collect()
}

pub(super) fn needed(brief: &Brief, arrangement: &Arrangement) -> Vec<PieceId> {
    brief.piece_ids().filter(|piece| arrangement.must_stand(brief, *piece)).collect()
}

/// The pieces that need not stand, what counts most by standing first.
fn optional(room: &RoomContext<'_>, arrangement: &Arrangement) -> Vec<PieceId> {
    let presence = |piece: &PieceId| room.variables.piece(*piece).map_or(0.0, |piece| piece.presence);
    let may_be_left_out = |piece: &PieceId| !arrangement.must_stand(room.brief, *piece);
    let mut found: Vec<PieceId> = room.brief.piece_ids().filter(may_be_left_out).collect();
    found.sort_by(|one, other| presence(other).total_cmp(&presence(one)));
    found
}
