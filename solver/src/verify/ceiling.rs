//! No part stands where a ceiling that falls toward a wall is lower than the piece.

use elbowroom_model::{Rule, Slope};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::checked_shape::Shape;
use crate::answer::Thing;
use crate::geometry::Convex;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let standing = || scene.pieces.iter().filter(|piece| !piece.is_flat());
    scene
        .brief
        .room
        .slopes
        .iter()
        .flat_map(|slope| standing().filter_map(|piece| breach(scene, slope, piece)))
        .collect()
}

fn breach(scene: &CheckedLayout<'_>, slope: &Slope, piece: &InPlace<'_>) -> Option<Breach> {
    let wall = scene.checked.walls.get(slope.wall.0)?;
    let height = piece.piece.height_with_screen();
    if height <= slope.to {
        return None;
    }
    // The ceiling as a straight line from its height at the wall: where it passes the piece's top.
    let rise = (slope.from - slope.to) / slope.over;
    let out = scene.brief.room.wall(slope.wall)?.inward() * ((height - slope.to) / rise).min(slope.over);
    let floor = Shape::Polygon(Convex::counter_clockwise([wall.start, wall.end, wall.end + out, wall.start + out]));
    let depth = piece.tight.iter().filter_map(|part| floor.entered_by(part)).reduce(f64::max)?;
    Some(Breach::new(Rule::Ceiling, Wrong::UnderSlope, &[piece.thing(), Thing::Wall(slope.wall)], depth))
}
