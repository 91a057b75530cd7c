//! The back of a return along a wall keeps the gap that a seat keeps from its wall.

use elbowroom_model::Rule;

use crate::arrangement::face;
use crate::geometry::Convex;
use crate::rules::{Cause, LayoutRule, LinearOutline, Pose, Requirement, RuleContext, With, separation};
use crate::site::SiteWall;

/// The gap behind a return.
#[derive(Debug)]
pub(super) struct ReturnOffWall;

impl LayoutRule for ReturnOffWall {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let mut found = Vec::new();
        for (part, way) in pose.returns() {
            let walls = context.site.walls.iter().filter(|wall| face(wall.inward, -way));
            found.extend(walls.map(|wall| off(pose, part, wall)));
        }
        found
    }
}

/// Its gap off the wall, past either end of it, or on its other side.
fn off(pose: &Pose, part: &LinearOutline, wall: &SiteWall) -> Requirement {
    let line = LinearOutline::fixed(&Convex::counter_clockwise([wall.start, wall.end]));
    let beyond = |towards, gap| separation::beyond(&line, part, towards, gap);
    let alternatives = vec![
        beyond(wall.inward, pose.piece.off_wall),
        beyond(wall.along, 0.0),
        beyond(-wall.along, 0.0),
        beyond(-wall.inward, 0.0),
    ];
    Requirement { cause: Cause { rule: Rule::ReturnOffWall, piece: pose.id, with: With::Wall(wall.id) }, alternatives }
}
