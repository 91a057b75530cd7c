//! A main seat that stands free stands clear of the wall behind it: nearer than one can pass it would be the option with
//! its back to that wall, set out carelessly. With its middle before a wide opening it may stand where it likes.

use elbowroom_model::{Clearance, ItemId, ItemKind, Rule, WallItem};

use super::off_wall::FOOT;
use super::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};
use crate::arrangement::{Role, face};
use crate::site::{SiteWall, WIDEST_OPENING_WITH_LANDING, WallPlace};

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
        let requirement = |wall: &SiteWall| {
            let mut requirement = clear_of(wall, pose, clear);
            requirement.alternatives.extend(before_wide_openings(context, wall, pose));
            requirement
        };
        behind.map(requirement).collect()
    }
}

/// Each way in which the middle of its back stands before a wide opening of the wall.
fn before_wide_openings(context: &RuleContext<'_>, wall: &SiteWall, pose: &Pose) -> Vec<Alternative> {
    let is_wide = |item: &WallItem| {
        item.wall == wall.id && matches!(item.kind, ItemKind::Opening(_)) && item.width > WIDEST_OPENING_WITH_LANDING
    };
    let openings = context.brief.room.items().filter(|(_, item)| is_wide(item));
    let before = |(id, _): (ItemId, &WallItem)| {
        let WallPlace { left, right, .. } = context.site.place_of(context.brief, id)?;
        let ends = [left, right].map(|end| end.dot(wall.along));
        let middle = pose.middle_of_back().along(wall.along);
        let (from, to) = (ends[0].min(ends[1]), ends[0].max(ends[1]));
        Some(Alternative::of_rows(vec![middle.at_least(from), middle.at_most(to)]))
    };
    openings.filter_map(before).collect()
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
