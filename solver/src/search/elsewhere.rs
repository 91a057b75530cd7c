//! A plan with one piece somewhere else, all else decided as the plan decides it.

use elbowroom_model::PieceId;

use super::aim::Aim;
use super::barriers::Barriers;
use super::dive::{held, pieces_of};
use super::effort::Effort;
use super::found::{Found, Searched};
use super::once::search_once;
use super::room_context::RoomContext;
use super::tree::{Lead, Order};
use crate::arrangement::Arrangement;
use crate::routes::Floor;

/// Nodes for each way in which the piece may stand: twice as many as a layout of a dozen pieces lies deep.
const NODES: usize = 100;

/// What was found for each way in which `piece` may stand, of what has more than `to_beat` and keeps every rule of comfort.
#[must_use]
pub(crate) fn elsewhere(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    plan: &Found,
    piece: PieceId,
    to_beat: f64,
) -> Vec<Searched> {
    let held = held(room, arrangement, &plan.layout, Some(piece));
    let Some(place) = held.standings.iter().position(|standing| standing.piece == piece) else { return Vec::new() };
    let pieces = pieces_of(&plan.layout);
    let order = Order::Like(Lead { values: &plan.values, but_for: Some(piece) });
    let effort = Effort { to_beat, ..Effort::of(Aim::PlanOf(&pieces), NODES) };
    let barriers = Barriers::default();
    let standing_so = |stand| {
        let mut so = held.clone();
        so.standings[place].stands = vec![stand];
        let mut searched = search_once(room, floor, &so, effort, order, &barriers);
        if let Some(found) = &mut searched.found {
            found.bound = found.objective.max(plan.bound);
        }
        searched
    };
    held.standings[place].stands.iter().copied().map(standing_so).collect()
}
