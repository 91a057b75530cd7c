//! Slots behind seats that are none by a tape: a finger further back the seat would be at its wall, or held off it by a window, a
//! radiator or a fire.

use super::tolerance::READ_OFF;
use crate::answer::Thing;
use crate::arrangement::Arrangement;
use crate::layout::{Layout, Placed};
use crate::routes::Route;
use crate::verify::{Breach, CheckedRoom, Wrong, verify};

/// What is broken but for slots that are none where their seats stand a finger further back.
pub(super) fn without_slots_by_a_finger(
    room: &CheckedRoom<'_>,
    layout: &Layout,
    arrangement: &Arrangement,
    routes: &[Route],
    mut broken: Vec<Breach>,
) -> Vec<Breach> {
    let seats: Vec<Thing> = broken.iter().filter_map(seat_before_slot).collect();
    if seats.is_empty() {
        return broken;
    }
    let moved =
        Layout { placed: layout.placed.iter().map(|placed| drawn_back(placed, &seats)).collect(), ..layout.clone() };
    let then: Vec<Thing> = verify(room, &moved, arrangement, routes).iter().filter_map(seat_before_slot).collect();
    broken.retain(|breach| seat_before_slot(breach).is_none_or(|seat| then.contains(&seat)));
    broken
}

/// The seat that leaves a slot behind it.
fn seat_before_slot(breach: &Breach) -> Option<Thing> {
    breach.between.first().copied().filter(|_| breach.wrong == Wrong::SlotBehind)
}

/// A finger further back, where it is among these.
fn drawn_back(placed: &Placed, seats: &[Thing]) -> Placed {
    let is_among = seats.contains(&Thing::Piece(placed.piece));
    let by = if is_among { READ_OFF } else { 0.0 };
    Placed { anchor: placed.anchor - placed.facing * by, ..placed.clone() }
}
