//! Where a turning circle is asked for, one is free and a disc as wide as a walkway reaches it from the entrance.

use elbowroom_model::{Clearance, Piece, Point};

use super::breach::{Breach, Wrong};
use super::checked_layout::CheckedLayout;
use super::mouth::Mouth;
use super::tolerance::SLACK;
use super::travel::{Target, travels};
use super::ways::entrances;
use crate::geometry::{Convex, apart};
use crate::layout::Layout;

const RULE: Clearance = Clearance::TurningCircle;

pub(super) fn breaches(scene: &CheckedLayout<'_>, layout: &Layout) -> Vec<Breach> {
    let Some(diameter) = scene.brief.rules.turning_circle() else { return Vec::new() };
    let Some(centre) = layout.turning_circle else {
        return vec![Breach::new(RULE, Wrong::NoCircle, &[], diameter)];
    };
    let obstacles = obstacles(scene);
    let missing = diameter / 2.0 - free_radius(scene, &obstacles, centre);
    if missing > SLACK {
        return vec![Breach::new(RULE, Wrong::CircleNotFree, &[], 2.0 * missing)];
    }
    let doors = entrances(scene.brief);
    if doors.is_empty() || doors.iter().any(|&door| reached(scene, layout, &obstacles, door, centre, diameter)) {
        return Vec::new();
    }
    vec![Breach::new(RULE, Wrong::CircleNotReached, &[], 0.0)]
}

/// Rugs lie flat, and coffee tables can be moved.
fn obstacles(scene: &CheckedLayout<'_>) -> Vec<Convex> {
    let stays = |piece: &Piece| piece.stops_walkers() && !piece.kind.traits().moves_aside;
    let pieces = scene.pieces.iter().filter(|piece| stays(piece.piece));
    scene.checked.bare.iter().cloned().chain(pieces.flat_map(|piece| piece.parts.iter().cloned())).collect()
}

/// The largest circle about `centre` that nothing stands in; 0 outside the room.
fn free_radius(scene: &CheckedLayout<'_>, obstacles: &[Convex], centre: Point) -> f64 {
    let about = Convex::counter_clockwise([centre]);
    if !scene.checked.outline.covers(&about) {
        return 0.0;
    }
    obstacles.iter().map(|shape| apart(shape, &about)).fold(f64::INFINITY, f64::min)
}

fn reached(
    scene: &CheckedLayout<'_>,
    layout: &Layout,
    obstacles: &[Convex],
    door: crate::routes::End,
    centre: Point,
    diameter: f64,
) -> bool {
    let walkway = scene.rule(Clearance::Walkway);
    let mouth = Mouth::of(scene.checked, layout, door);
    // A disc wider than the circle could not stand in it: then the circle itself is what must arrive.
    let disc = walkway.min(diameter) - SLACK;
    mouth.is_some_and(|mouth| travels(obstacles, &mouth.widened(walkway, None), &Target::Place(centre), disc))
}
