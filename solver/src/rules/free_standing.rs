//! A main seat that stands free stands clear of the wall behind it: nearer than one can pass it would be the option with
//! its back to that wall, set out carelessly. Before a wide opening it may stand where it likes.

use elbowroom_model::{Clearance, ItemKind, Rule, WallId};

use super::off_wall::FOOT;
use super::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};
use crate::arrangement::{Role, face};
use crate::site::{SiteWall, WIDEST_OPENING_WITH_LANDING};

/// A main seat that stands free stands clear of the wall behind it.
#[derive(Debug)]
pub(super) struct FreeStanding;

impl LayoutRule for FreeStanding {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.role != Role::MainSeat || pose.wall().is_some() {
            return Vec::new();
        }
        // A wall too short for its back is none that it could be thought to stand at.
        let could_hold = |wall: &&SiteWall| (wall.end - wall.start).norm() >= pose.piece.width.least;
        let walls = context.site.walls.iter().filter(could_hold);
        let behind = walls.filter(|wall| face(wall.inward, -pose.stand.facing));
        let clear = context.brief.rules.get(Clearance::Passage).max(pose.piece.off_wall + FOOT);
        behind.filter(|wall| !has_wide_opening(context, wall.id)).map(|wall| clear_of(wall, pose, clear)).collect()
    }
}

fn has_wide_opening(context: &RuleContext<'_>, wall: WallId) -> bool {
    let wide =
        |kind: &ItemKind, width: f64| matches!(kind, ItemKind::Opening(_)) && width > WIDEST_OPENING_WITH_LANDING;
    context.brief.room.items.iter().any(|item| item.wall == wall && wide(&item.kind, item.width))
}

/// Off the wall by `clear`, or past either end of it, or before it starts.
fn clear_of(wall: &SiteWall, pose: &Pose, clear: f64) -> Requirement {
    let off = pose.main().reach(-wall.inward);
    let off = Linear::default().plus(&off, -1.0).shifted(-wall.start.dot(wall.inward));
    let low = Linear::default().plus(&pose.main().reach(-wall.along), -1.0).shifted(-wall.start.dot(wall.along));
    let high = pose.main().reach(wall.along).shifted(-wall.start.dot(wall.along));
    let one = |row| Alternative::of_rows(vec![row]);
    let alternatives = vec![
        one(off.at_least(clear)),
        one(off.at_most(-1.0)),
        one(low.at_least((wall.end - wall.start).norm())),
        one(high.at_most(0.0)),
    ];
    Requirement { cause: Cause { rule: Rule::Group, piece: pose.id, with: With::Wall(wall.id) }, alternatives }
}
