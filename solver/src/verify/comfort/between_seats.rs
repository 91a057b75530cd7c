//! Two seats that are not one piece leave room for an arm and the flex of a lamp, unless they stand back to back.

use elbowroom_model::Clearance;

use super::edge::Edge;
use super::measure::{Lengths, Measure};
use super::seat_front::main_back;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::group::is_opposite;

const RULE: Clearance = Clearance::BetweenSeats;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let wanted = scene.rule(RULE);
    if wanted <= 0.0 {
        return Vec::new();
    }
    let seats: Vec<&InPlace<'_>> = scene.seats().collect();
    let mut all = Vec::new();
    for (i, seat) in seats.iter().enumerate() {
        for other in seats[i + 1..].iter().filter(|other| !are_back_to_back(seat, other)) {
            let lengths = Lengths { wanted, given: seat.apart(other) };
            all.push(Measure::at_least(RULE, Wrong::SeatsTouch, &[seat.thing(), other.thing()], &lengths));
        }
    }
    all
}

/// They look away from each other, each behind the other's back.
fn are_back_to_back(first: &InPlace<'_>, second: &InPlace<'_>) -> bool {
    let behind = |back: Edge, other: &InPlace<'_>| back.ahead(other.placed.main().middle()) > 0.0;
    is_opposite(first.placed.facing, second.placed.facing)
        && behind(main_back(first.placed), second)
        && behind(main_back(second.placed), first)
}
