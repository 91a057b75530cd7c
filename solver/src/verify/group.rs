//! Seats that face each other keep their distance, and so do seat and screen.

use elbowroom_model::{Clearance, Point};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace, common};
use super::tolerance::{AT_LIMIT, SLACK};
use crate::geometry::apart;

/// How far from opposite two fronts may be turned and still face each other, degrees (result format).
const FACING: f64 = 10.0;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let seats: Vec<&InPlace<'_>> = scene.seats().collect();
    let mut found = Vec::new();
    for (i, seat) in seats.iter().enumerate() {
        let others = seats[i + 1..].iter().map(|other| breach(scene, Clearance::FacingSeats, seat, other));
        let screens = scene.screens().map(|media| breach(scene, Clearance::ScreenToSeat, seat, media));
        found.extend(others.chain(screens).flatten());
    }
    found
}

fn breach(scene: &CheckedLayout<'_>, rule: Clearance, first: &InPlace<'_>, second: &InPlace<'_>) -> Option<Breach> {
    if !face(first, second) {
        return None;
    }
    let missing = scene.rule(rule) - apart(&first.front(), &second.front());
    let breach = || Breach::new(rule, Wrong::FrontsTooNear, &[first.thing(), second.thing()], missing);
    (missing > SLACK).then(breach)
}

/// Whether two pieces face each other: within 10 degrees of opposite, fronts overlapping sideways, each before the
/// other's back.
pub(super) fn face(first: &InPlace<'_>, second: &InPlace<'_>) -> bool {
    let (facing, left) = (first.placed.facing, first.placed.left());
    let across = second.front();
    let sideways = (-across.support(-left), across.support(left));
    is_opposite(facing, second.placed.facing)
        && common(first.extent(left), sideways) > SLACK
        && (second.placed.back_middle() - first.placed.back_middle()).dot(facing) > 0.0
}

/// Whether two unit vectors are within 10 degrees of opposite.
pub(super) fn is_opposite(first: Point, second: Point) -> bool {
    -first.dot(second) >= FACING.to_radians().cos() - AT_LIMIT
}
