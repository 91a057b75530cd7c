//! Before every seat's front, a return's too, there is room for legs: no other piece stands so near, the main seat's own
//! table apart, which keeps its place, and what one puts the legs on.

use elbowroom_model::{Clearance, Stands};

use super::edge::Edge;
use super::measure::{Lengths, Measure};
use super::seat_front::{main_front, return_front, second_return_front};
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::table::served;

const RULE: Clearance = Clearance::LegRoom;

/// So much of the main seat's front needs no room, at each end, mm: nobody's legs are before an arm (common practice).
const ARM: f64 = 100.0;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    if scene.rule(RULE) <= 0.0 {
        return Vec::new();
    }
    scene.seats().flat_map(|seat| of_seat(scene, seat)).collect()
}

fn of_seat(scene: &CheckedLayout<'_>, seat: &InPlace<'_>) -> Vec<Measure> {
    let arm = if scene.is_main(seat) { ARM } else { 0.0 };
    let placed = seat.placed;
    let fronts: Vec<Edge> = [Some(main_front(placed)), return_front(placed), second_return_front(placed)]
        .into_iter()
        .flatten()
        .filter_map(|front| front.less(arm))
        .collect();
    let itself = [seat.placed.piece];
    let others = scene.standing_but(&itself).filter(|other| !is_own_table(scene, seat, other) && !is_footrest(other));
    let measure = |other: &InPlace<'_>| -> Vec<Measure> {
        let clear = fronts.iter().filter_map(|front| front.nearest_of(&other.parts));
        let wanted = scene.rule(RULE);
        let told = |given| {
            Measure::at_least(RULE, Wrong::NoLegRoom, &[seat.thing(), other.thing()], &Lengths { wanted, given })
        };
        clear.map(told).collect()
    };
    others.flat_map(measure).collect()
}

fn is_own_table(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, table: &InPlace<'_>) -> bool {
    let serves = || served(scene, table).iter().any(|served| served.placed.piece == seat.placed.piece);
    (scene.is_main(seat) || seat.piece.is_seat_apart()) && table.piece.kind.stands_before_seat() && serves()
}

/// Legs go up on it, or push it aside.
fn is_footrest(other: &InPlace<'_>) -> bool {
    let traits = other.piece.kind.traits();
    traits.moves_aside && traits.stands == Stands::BesideSeats
}
