//! What if a wall were longer: the remedy that moves a wall.

use crate::brief::Brief;
use crate::point::Point;
use crate::room::WallId;
use crate::survey::simple::crossings;
use crate::survey::tolerance::{PARALLEL, TOUCHING};

/// The brief with one wall as long as `length` (mm): its right-hand neighbour moves out, and the first wall after it that runs
/// back the other way takes up the change. Items stay where they are from their wall's left end, except on that other wall,
/// where they keep their place on the plan.
///
/// `None` where no wall runs back, where a wall would lose its length or what it holds, or where walls would cross.
#[must_use]
pub fn with_wall_length(brief: &Brief, wall: WallId, length: f64) -> Option<Brief> {
    let room = &brief.room;
    let count = room.walls.len();
    let chosen = room.wall(wall)?;
    let by = length - chosen.length();
    let shift = chosen.along() * by;
    let runs_back = |other: &usize| {
        let along = room.walls[*other % count].along();
        along.dot(chosen.along()) < 0.0 && along.cross(chosen.along()).abs() < PARALLEL
    };
    let back = (wall.0 + 1..wall.0 + count).find(runs_back)? % count;
    let mut changed = brief.clone();
    let mut moved: Vec<Point> = room.outline();
    let mut corner = (wall.0 + 1) % count;
    loop {
        moved[corner] = moved[corner] + shift;
        if corner == back {
            break;
        }
        corner = (corner + 1) % count;
    }
    for (place, one) in changed.room.walls.iter_mut().enumerate() {
        one.start = moved[place];
        one.end = moved[(place + 1) % count];
        let old = &room.walls[place];
        if one.length() <= 0.0 || one.along().dot(old.along()) <= 0.0 {
            return None;
        }
    }
    if !crossings(&changed.room.walls).is_empty() {
        return None;
    }
    let gained = changed.room.walls[back].length() - room.walls[back].length();
    for item in changed.room.items.iter_mut().filter(|item| item.wall.0 == back) {
        item.at += gained;
        if item.at < 0.0 {
            return None;
        }
    }
    let holds = |item: &crate::room::WallItem| {
        changed.room.wall(item.wall).is_some_and(|wall| item.at + item.width <= wall.length() + TOUCHING)
    };
    changed.room.items.iter().all(holds).then_some(changed)
}
