//! What is close before seats and doorways, and seats that nearly touch.

use crate::support::checker::plane::{apart, common, dot, extent};

use super::room::{Doorway, area};
use super::scene::opposite;
use super::standing::{Run, Standing};
use super::{Mark, Odd, Scene};

/// Room for knees before a seat, mm.
const KNEES: f64 = 300.0;
/// Between two seats, mm.
const ELBOWS: f64 = 100.0;
/// Free of walls and fixed things before the main seat, mm; less so much at each end.
const OPEN: f64 = 900.0;
const ENDS: f64 = 100.0;
/// What stands so near a doorway stands across it, mm; a jamb's breadth at each end aside.
const ACROSS: f64 = 300.0;
const JAMB: f64 = 50.0;
/// Wider than a doorway (scenario format, Zones), mm: a free seat may have its back to it.
const WIDE: f64 = 1200.0;
/// Unit vectors with a product over this look the same way, within 10 degrees.
const SAME_WAY: f64 = 0.984_8;
/// Figures are told to a thousandth and add up, mm.
const ROUNDED: f64 = 1.0;
/// What reaches less into a zone than this is rounding, mm2.
const ROUNDED_AREA: f64 = 500.0;
const ROUNDED_WALL: f64 = 2000.0;

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let mut all = Vec::new();
    for seat in scene.others() {
        all.extend(knees(scene, seat));
    }
    all.extend(elbows(&scene.seats()));
    if let Some(main) = scene.main() {
        let near = standing_before(scene, &main.front(), ENDS, OPEN);
        all.extend(near.map(|(name, figure)| Odd::of(Mark::WallBefore, &[&main.name, &name], figure)));
    }
    for doorway in &scene.room.doorways {
        all.extend(across(scene, doorway));
    }
    all
}

/// The nearest wall or fixed thing within `reach` of a front, less `inset` at each end.
fn standing_before(scene: &Scene, front: &Run, inset: f64, reach: f64) -> Option<(String, f64)> {
    let zone = front.strip(inset, ROUNDED, reach - ROUNDED);
    let wall = (scene.room.beyond(&zone) > ROUNDED_WALL)
        .then(|| ("a wall".to_owned(), scene.room.to_wall(front, inset).min(reach)));
    let blocks = scene.room.blocks.iter().filter_map(|block| {
        let shared = common(&block.shape, &zone);
        (area(&shared) > ROUNDED_AREA).then(|| (block.name.clone(), extent(&shared, front.facing).0))
    });
    let from = dot(front.middle, front.facing);
    let blocks = blocks.map(|(name, at)| (name, at - from));
    blocks.chain(wall).min_by(|one, other| one.1.total_cmp(&other.1))
}

/// How far before a front a piece begins, within `reach`; `None` where it does not.
fn piece_before(piece: &Standing, front: &Run, inset: f64, reach: f64) -> Option<f64> {
    let zone = front.strip(inset, ROUNDED, reach - ROUNDED);
    let parts = piece.parts.iter().map(|part| common(part, &zone)).filter(|shared| area(shared) > ROUNDED_AREA);
    let from = dot(front.middle, front.facing);
    parts.map(|shared| extent(&shared, front.facing).0 - from).min_by(f64::total_cmp)
}

fn knees(scene: &Scene, seat: &Standing) -> Vec<Odd> {
    let mut all = Vec::new();
    for front in std::iter::once(seat.front()).chain(seat.returns()) {
        let pieces =
            scene.pieces.iter().filter(|piece| piece.name != seat.name && !piece.is_flat() && !piece.is_footrest());
        let near = pieces.filter_map(|piece| Some((piece.name.clone(), piece_before(piece, &front, 0.0, KNEES)?)));
        let near = near.chain(standing_before(scene, &front, 0.0, KNEES));
        all.extend(near.map(|(name, figure)| Odd::of(Mark::Knees, &[&seat.name, &name], figure)));
    }
    all
}

fn elbows(seats: &[&Standing]) -> Vec<Odd> {
    let mut all = Vec::new();
    for (place, one) in seats.iter().enumerate() {
        for other in seats[place + 1..].iter().filter(|other| !back_to_back(one, other)) {
            let gaps = one.parts.iter().flat_map(|a| other.parts.iter().map(move |b| apart(a, b)));
            let gap = gaps.fold(f64::INFINITY, f64::min);
            if gap < ELBOWS - ROUNDED {
                all.push(Odd::of(Mark::Elbows, &[&one.name, &other.name], gap));
            }
        }
    }
    all
}

fn back_to_back(one: &Standing, other: &Standing) -> bool {
    let is_behind = |seat: &Standing, other: &Standing| seat.backs()[0].ahead(other.middle()) > 0.0;
    opposite(one, other) && is_behind(one, other) && is_behind(other, one)
}

fn across(scene: &Scene, doorway: &Doorway) -> Vec<Odd> {
    let way = doorway.as_run();
    let pieces = scene.pieces.iter().filter(|piece| !piece.is_flat() && !has_its_back(scene, doorway, piece));
    let near = pieces.filter_map(|piece| Some((piece, piece_before(piece, &way, JAMB, ACROSS)?)));
    near.map(|(piece, at)| Odd::of(Mark::AcrossOpening, &[&piece.name, &doorway.name], ACROSS - at)).collect()
}

/// A free seat with its back to a wide opening that nobody keeps in sight, and a main way past its end.
fn has_its_back(scene: &Scene, doorway: &Doorway, piece: &Standing) -> bool {
    let way = doorway.as_run();
    let turned = dot(piece.facing, doorway.inward) > SAME_WAY;
    let places = piece.parts.iter().flatten().map(|&corner| way.aside(corner));
    let (low, high) = places.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
    let left = (way.width / 2.0 - high).max(low + way.width / 2.0);
    let free = piece.is_seat() && piece.at_wall.is_none();
    free && turned && doorway.may_be_backed && doorway.width() > WIDE && left >= scene.kept.walkway - ROUNDED
}
