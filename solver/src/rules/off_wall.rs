//! A piece at a wall keeps its gap behind its back, and a foot more at most. The back of a corner sofa is that of its main
//! run: a return may stand close to a side wall.

use elbowroom_model::Rule;

use super::{Cause, Ground, LayoutRule, Pose, Requirement, With};
use crate::site::SiteWall;

/// How much further than its gap a piece at a wall may stand, mm: up to a foot where one wants to walk or clean behind
/// (common practice, no source).
pub const FOOT: f64 = 304.8;

/// A piece at a wall keeps its gap behind its back.
#[derive(Debug)]
pub(super) struct OffWall;

impl LayoutRule for OffWall {
    fn alone(&self, ground: &Ground<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(wall) = pose.wall().and_then(|id| ground.site.wall(id)) else { return Vec::new() };
        vec![behind_back(wall, pose)]
    }
}

fn behind_back(wall: &SiteWall, pose: &Pose) -> Requirement {
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let gap = pose.piece.off_wall;
    // It may reach past the wall's end, where that is an outside corner: as much of it stands before the wall as it is long
    // at least, so that it is this wall it stands at, and growing at either end never breaks that.
    let length = (wall.end - wall.start).norm();
    let least = pose.piece.width.least.min(length);
    let rows = vec![
        off.at_least(gap),
        off.at_most(gap + FOOT),
        middle.clone().plus(&pose.width(), 0.5).at_least(least),
        middle.plus(&pose.width(), -0.5).at_most(length - least),
    ];
    Requirement::always(Cause { rule: Rule::OffWall, piece: pose.id, with: With::Wall(wall.id) }, rows)
}
