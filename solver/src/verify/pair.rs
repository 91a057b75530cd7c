//! Two sofas that the file pairs face each other, or stand at a right angle.

use elbowroom_model::{Pair, Point, Rule};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::group::face;

/// How far from a right angle two sofas may be turned and still make a corner, degrees: as far as two that face each other may
/// be from opposite (result format).
const SQUARE: f64 = 10.0;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let seats: Vec<&InPlace<'_>> = scene.seats().filter(|seat| seat.piece.pair != Pair::Either).collect();
    let mut found = Vec::new();
    for (place, first) in seats.iter().enumerate() {
        let row = |other: &&&InPlace<'_>| first.piece.alike.is_some() && other.piece.alike == first.piece.alike;
        found.extend(seats[place + 1..].iter().filter(row).filter_map(|second| breach(first, second)));
    }
    found
}

fn breach(first: &InPlace<'_>, second: &InPlace<'_>) -> Option<Breach> {
    let (holds, wrong) = match first.piece.pair {
        Pair::Either => return None,
        Pair::Facing => (face(first, second), Wrong::PairNotFacing),
        Pair::Corner => (is_square(first.placed.facing, second.placed.facing), Wrong::PairNotSquare),
    };
    (!holds).then(|| Breach::new(Rule::Group, wrong, &[second.thing(), first.thing()], 0.0))
}

fn is_square(first: Point, second: Point) -> bool {
    first.dot(second).abs() <= SQUARE.to_radians().sin()
}
