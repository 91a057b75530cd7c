//! What a reader must be told of the routes before any furniture stands.

use elbowroom_model::Brief;

use super::End;
use super::demand::Demand;
use super::floor::Floor;
use super::tolerance::SEEN;

/// A route that is narrower than its rule in the empty room already, and so is held to what the room gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeldToEmptyRoom {
    /// The route.
    pub demand: Demand,
    /// Its width in the empty room, mm.
    pub gives: f64,
}

/// How wide a route may be at most: as its rule asks, and no wider than the fixed thing before which it ends, mm.
fn asked(brief: &Brief, demand: &Demand) -> f64 {
    let mouth = match demand.to {
        End::Fixed(id) => brief.room.used_floor(id).map(|floor| floor.length()),
        End::Item(_) | End::Piece(_) => None,
    };
    brief.rules.get(demand.rule).min(mouth.unwrap_or(f64::INFINITY))
}

impl Floor {
    /// The routes to doorways, windows and fixed things that are narrower than their rule in the empty room.
    #[must_use]
    pub fn held_to_empty_room(&self, brief: &Brief) -> Vec<HeldToEmptyRoom> {
        let narrow = |demand: &Demand, gives: f64| gives <= asked(brief, demand) - SEEN;
        let held = self.empty_widths().filter(|(demand, gives)| narrow(demand, *gives));
        held.map(|(demand, gives)| HeldToEmptyRoom { demand: *demand, gives }).collect()
    }
}
