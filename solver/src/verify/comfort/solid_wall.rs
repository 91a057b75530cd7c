//! What stands at a wall has solid wall behind it: no doorway, no opening, and no end of the wall.

use elbowroom_model::{Clearance, ItemKind, Wall, WallItem};

use super::edge::Reach;
use super::measure::{Lengths, Measure};
use super::seat_front::main_back;
use crate::answer::Thing;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace, common};

const RULE: Clearance = Clearance::SolidWall;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    if scene.rule(RULE) <= 0.0 {
        return Vec::new();
    }
    scene.pieces.iter().filter(|piece| !piece.is_flat()).filter_map(|piece| of_piece(scene, piece)).collect()
}

fn of_piece(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Option<Measure> {
    let id = piece.placed.at_wall?;
    let wall = scene.brief.room.wall(id)?;
    let back = on_wall(piece, wall);
    let mut between = vec![piece.thing(), Thing::Wall(id)];
    let before_wall = shared(back, Reach { from: 0.0, to: wall.length() });
    let mut missing = back.length() - before_wall;
    let doorways = scene.brief.room.items().filter(|(_, item)| item.wall == id && is_doorway(item));
    for (id, item) in doorways {
        let open = shared(back, Reach { from: item.at, to: item.at + item.width });
        if open > 0.0 {
            missing += open;
            between.push(Thing::Item(id));
        }
    }
    let lengths = Lengths { wanted: scene.rule(RULE), given: missing };
    Some(Measure::at_most(RULE, Wrong::NoWallBehind, &between, &lengths))
}

/// From where to where along the wall the back reaches.
fn on_wall(piece: &InPlace<'_>, wall: &Wall) -> Reach {
    let back = main_back(piece.placed);
    let middle = (back.middle - wall.start).dot(wall.along());
    let half = back.length / 2.0 * back.along.dot(wall.along()).abs();
    Reach { from: middle - half, to: middle + half }
}

fn shared(first: Reach, second: Reach) -> f64 {
    common((first.from, first.to), (second.from, second.to)).max(0.0)
}

/// One walks through it.
pub(super) fn is_doorway(item: &WallItem) -> bool {
    matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_))
}
