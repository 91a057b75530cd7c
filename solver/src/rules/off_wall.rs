//! A piece at a wall keeps its gap behind its back, and a foot more at most.

use super::{Alternative, Cause, Ground, LayoutRule, Linear, Pose, Requirement, RuleName, With};
use crate::site::SiteWall;

/// How much further than its gap a piece at a wall may stand, mm: up to a foot where one wants to walk or clean behind
/// (common practice, no source).
pub const FOOT: f64 = 304.8;

/// A piece at a wall keeps its gap behind its back.
#[derive(Debug)]
pub(super) struct OffWall;

impl LayoutRule for OffWall {
    fn alone(&self, ground: &Ground<'_>, pose: &Pose<'_>) -> Vec<Requirement> {
        let Some(wall) = pose.wall().and_then(|id| ground.site.wall(id)) else { return Vec::new() };
        let mut found = vec![behind_back(wall, pose)];
        if pose.hand.is_some() {
            let beside = ground.site.walls.iter().filter(|wall| wall.inward.dot(pose.along()) > 1.0 - 1e-6);
            found.extend(beside.map(|wall| behind_return(wall, pose)));
        }
        found
    }
}

fn behind_back(wall: &SiteWall, pose: &Pose<'_>) -> Requirement {
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let gap = pose.piece.off_wall;
    let rows = vec![
        off.at_least(gap),
        off.at_most(gap + FOOT),
        middle.at_least(0.0),
        middle.at_most((wall.end - wall.start).norm()),
    ];
    Requirement::always(Cause { rule: RuleName::OffWall, piece: pose.id, with: With::Wall(wall.id) }, rows)
}

/// The back of a return keeps the gap too, wherever it stands along a wall.
fn behind_return(wall: &SiteWall, pose: &Pose<'_>) -> Requirement {
    let gap = pose.piece.off_wall;
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let from = pose.anchor.along(wall.along).shifted(-wall.start.dot(wall.along));
    let length = pose.return_length().unwrap_or_default();
    let runs = pose.stand.facing.dot(wall.along);
    let to = from.clone().plus(&length, runs);
    let (low, high): (&Linear, &Linear) = if runs > 0.0 { (&from, &to) } else { (&to, &from) };
    let one = |row| Alternative { rows: vec![row], arc: None };
    let alternatives = vec![
        one(off.at_least(gap)),
        one(off.at_most(-1.0)),
        one(low.at_least((wall.end - wall.start).norm())),
        one(high.at_most(0.0)),
    ];
    Requirement { cause: Cause { rule: RuleName::OffWall, piece: pose.id, with: With::Wall(wall.id) }, alternatives }
}
