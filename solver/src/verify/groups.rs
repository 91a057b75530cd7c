//! A group of its own keeps together, and away from the seats of any other group.

use elbowroom_model::{Clearance, Point, Rule, Stands};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::tolerance::SLACK;

/// No front of a seat has its middle further from the middle of its group, mm (Hall 1966: social distance, close phase).
const REACH: f64 = 2134.0;
/// What serves a seat at its end is at hand there, mm (trade: a surface within 450 of a seat place).
const AT_HAND: f64 = 450.0;

/// Breaches of the room between the seats of two groups.
pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let wanted = scene.rule(Clearance::BetweenGroups);
    let seats: Vec<&InPlace<'_>> = scene.seats().collect();
    let mut found = Vec::new();
    for (place, seat) in seats.iter().enumerate() {
        for other in seats[place + 1..].iter().filter(|other| other.piece.group != seat.piece.group) {
            let missing = wanted - seat.apart(other);
            if missing > SLACK {
                let between = [seat.thing(), other.thing()];
                found.push(Breach::new(Clearance::BetweenGroups, Wrong::GroupsTooNear, &between, missing));
            }
        }
    }
    found
}

/// Breaches of what holds a group together, as laid out.
pub(super) fn scattered(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let apart = scene.pieces.iter().filter(|piece| piece.piece.group.is_some());
    apart
        .filter_map(|piece| if piece.piece.kind.is_seat() { too_far(scene, piece) } else { out_of_hand(scene, piece) })
        .collect()
}

/// A seat too far from the middle of its group.
fn too_far(scene: &CheckedLayout<'_>, seat: &InPlace<'_>) -> Option<Breach> {
    let fronts: Vec<Point> = company(scene, seat).map(|other| other.front().middle()).collect();
    let sum = fronts.iter().fold(Point::default(), |sum, front| sum + *front);
    let middle = sum * (1.0 / fronts.len().max(1) as f64);
    let past = (seat.front().middle() - middle).norm() - REACH;
    (past > SLACK).then(|| Breach::new(Rule::Group, Wrong::OutOfGroup, &[seat.thing()], past))
}

/// A lamp or a table at no seat of its group.
fn out_of_hand(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Option<Breach> {
    if piece.piece.kind.traits().stands != Stands::BesideSeats {
        return None;
    }
    let nearest = company(scene, piece).map(|seat| seat.apart(piece)).fold(f64::INFINITY, f64::min);
    (nearest > AT_HAND + SLACK)
        .then(|| Breach::new(Rule::Group, Wrong::OutOfGroup, &[piece.thing()], nearest - AT_HAND))
}

/// The seats of its group.
fn company<'s>(scene: &'s CheckedLayout<'_>, piece: &'s InPlace<'_>) -> impl Iterator<Item = &'s InPlace<'s>> {
    scene.seats().filter(|seat| seat.piece.group == piece.piece.group)
}
