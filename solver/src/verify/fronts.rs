//! What is kept clear before storage and desks, and along a dining table's long sides. That a wall or a fixed thing keeps
//! no front of storage clear goes without saying in the result format; a search holds to it, and so does this.

use elbowroom_model::{Clearance, Rule};
use elbowroom_model::{Front, KeepsClear};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::tolerance::SLACK;
use crate::answer::Thing;
use crate::geometry::{Convex, meets, overlap_depth};

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    scene.pieces.iter().flat_map(|piece| of_piece(scene, piece)).collect()
}

fn of_piece(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Vec<Breach> {
    match piece.piece.kind.traits().keeps_clear {
        KeepsClear::Nothing => Vec::new(),
        KeepsClear::Before(rule) => along(scene, piece, rule, &piece.before(scene.rule(rule))),
        KeepsClear::AlongSides { passing, .. } if piece.piece.passing => along_sides(scene, piece, passing),
        KeepsClear::AlongSides { seated, .. } => along_sides(scene, piece, seated),
    }
}

/// Other pieces' parts that enter the zone.
fn entered(scene: &CheckedLayout<'_>, piece: &InPlace<'_>, rule: Clearance, zone: &Convex) -> Vec<Breach> {
    let but = [piece.placed.piece];
    let depth = |other: &InPlace<'_>| {
        let parts = other.tight.iter().filter(|part| meets(part, zone));
        parts.map(|part| overlap_depth(part, zone) + SLACK).fold(0.0, f64::max)
    };
    let is_opened = piece.piece.kind.traits().front == Front::Opened;
    let counts = |other: &&InPlace<'_>| !(is_opened && other.is_flat());
    let others = scene.off_chairs(&but).filter(counts).map(|other| (other.thing(), depth(other)));
    let breach = |(other, depth): (Thing, f64)| Breach::new(rule, Wrong::BeforeFront, &[other, piece.thing()], depth);
    others.filter(|(_, depth)| *depth > 0.0).map(breach).collect()
}

/// Chairs along both long sides, less a side that stands at a wall: free of pieces, walls, fixed things and swings.
fn along_sides(scene: &CheckedLayout<'_>, table: &InPlace<'_>, rule: Clearance) -> Vec<Breach> {
    let sides = long_sides(table, scene.rule(rule));
    sides.iter().flat_map(|side| along(scene, table, rule, side)).collect()
}

/// What enters the zone before a front or along a side: pieces, walls and fixed things, at a dining table swings too (a
/// door that opens stops a chair for longer than a hand at a shelf).
fn along(scene: &CheckedLayout<'_>, table: &InPlace<'_>, rule: Clearance, side: &Convex) -> Vec<Breach> {
    let mut found = entered(scene, table, rule, side);
    let Some(tight) = side.pulled_in(SLACK) else { return found };
    if !scene.checked.outline.covers(&tight) {
        let past = scene.checked.outline.overshoot(&tight) + SLACK;
        found.push(Breach::new(rule, Wrong::WallBeforeFront, &[table.thing()], past));
    }
    let is_dining = table.piece.kind.is_dined_at();
    let stops = |rule: Rule| rule == Rule::Fixed || (is_dining && rule == Rule::DoorSwing);
    let stops = scene.checked.zones.iter().filter(|zone| stops(zone.rule));
    for zone in stops {
        if let Some(depth) = zone.shape.entered_by(&tight) {
            found.push(Breach::new(rule, Wrong::BeforeFront, &[zone.of, table.thing()], depth));
        }
    }
    found
}

fn long_sides(table: &InPlace<'_>, reach: f64) -> Vec<Convex> {
    let placed = table.placed;
    let (half, depth) = (placed.size.width / 2.0, placed.size.depth);
    if depth > placed.size.width {
        return vec![placed.block(half, half + reach, 0.0, depth), placed.block(-half - reach, -half, 0.0, depth)];
    }
    let front = placed.block(-half, half, depth, depth + reach);
    let behind = placed.block(-half, half, -reach, 0.0);
    if placed.at_wall.is_some() { vec![front] } else { vec![front, behind] }
}
