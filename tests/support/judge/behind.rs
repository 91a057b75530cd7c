//! What is behind seats: a reason to stand free, and no slots.

use crate::support::checker::plane::{P, common, edges, extent, left, length, minus};

use super::room::{area, stretch_before};
use super::standing::{Run, Standing};
use super::{Mark, Odd, Scene};

/// A seat so near a wall backs it, mm; a wider gap is a slot ...
const AT_WALL: f64 = 150.0;
/// ... up to where one walks, mm.
const SLOT: f64 = 450.0;
/// A main seat that stands free has its reason behind it within this, mm.
const FREE: f64 = 1000.0;
/// So much of a doorway or window is enough of it, mm; of a narrow one half.
const ENOUGH: f64 = 400.0;
/// A window, radiator or fire explains a slot from this width on, mm ...
const EXPLAINS: f64 = 100.0;
/// ... and counts as behind a seat where it lies so far beyond the slot, mm.
const BEYOND: f64 = 60.0;
/// The ends of a back that what is beside the seat may touch, mm.
const ENDS: f64 = 50.0;
/// What reaches less into a zone than this is rounding, mm2.
const ROUNDED_AREA: f64 = 500.0;
/// Walls are moved in by what was measured badly, and doorways stay: mm.
const NEAR: f64 = 20.0;

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let mut all: Vec<Odd> = scene.main().and_then(|main| free_by_wall(scene, main)).into_iter().collect();
    for seat in scene.seats() {
        let slots = seat.backs().into_iter().filter_map(|back| slot(scene, seat, &back));
        all.extend(slots.map(|gap| Odd::of(Mark::Slot, &[&seat.name], gap)));
    }
    all
}

fn free_by_wall(scene: &Scene, main: &Standing) -> Option<Odd> {
    let back = main.backs()[0];
    let gap = scene.room.to_wall(&back, NEAR);
    let near = main.at_wall.is_none() && gap > AT_WALL && gap < FREE;
    let zone = back.strip(NEAR, 0.0, FREE);
    let fills = |piece: &Standing| piece.parts.iter().any(|part| area(&common(part, &zone)) > ROUNDED_AREA);
    let by_piece = scene.pieces.iter().any(|piece| piece.name != main.name && !piece.is_flat() && fills(piece));
    let doorways = scene.room.doorways.iter().map(|doorway| doorway.ends);
    let by_item = doorways.chain(scene.room.windows.iter().copied()).any(|ends| {
        let enough = ENOUGH.min(length(minus(ends[1], ends[0])) / 2.0) - 1.0;
        stretch_before(&back, ends, -NEAR, FREE + NEAR) >= enough
    });
    (near && !by_piece && !by_item).then(|| Odd::of(Mark::FreeByWall, &[&main.name], gap))
}

/// The gap behind a back where it is a slot.
fn slot(scene: &Scene, seat: &Standing, back: &Run) -> Option<f64> {
    let gap = scene.room.to_wall(back, ENDS).min(scene.room.to_block(back, ENDS));
    let is_slot = gap > AT_WALL && gap < SLOT;
    (is_slot && !explained(scene, back) && !filled(scene, seat, back)).then_some(gap)
}

/// A window, radiator or fire is behind.
fn explained(scene: &Scene, back: &Run) -> bool {
    let behind = |ends: [P; 2]| stretch_before(back, ends, -BEYOND, SLOT + BEYOND) > EXPLAINS;
    let heaters = scene.room.heaters.iter().flat_map(|heater| edges(heater)).map(|(from, to)| [from, to]);
    scene.room.windows.iter().copied().chain(heaters).any(behind)
}

/// A piece close behind covers half of the width.
fn filled(scene: &Scene, seat: &Standing, back: &Run) -> bool {
    let zone = back.strip(0.0, 0.0, AT_WALL);
    let covers = |piece: &Standing| {
        let widths = piece.parts.iter().map(|part| {
            let shared = common(part, &zone);
            let (low, high) = extent(&shared, left(back.facing));
            if area(&shared) > ROUNDED_AREA { high - low } else { 0.0 }
        });
        widths.fold(0.0, f64::max) >= back.width / 2.0
    };
    scene.pieces.iter().any(|piece| piece.name != seat.name && !piece.is_flat() && covers(piece))
}
