//! What stands at a wall has solid wall behind it: a doorway or an opening is none. The ends of the wall are kept by
//! `off_wall`, with nothing to ease.

use elbowroom_model::{Clearance, ItemKind, Point};

use super::figure::figure;
use crate::rules::{Alternative, Cause, LayoutRule, Pose, Requirement, RuleContext, With};
use crate::site::{SiteWall, WallPlace};

/// Solid wall behind what stands at a wall.
#[derive(Debug)]
pub(super) struct SolidWall;

impl LayoutRule for SolidWall {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(spare) = figure(context, Clearance::SolidWall).filter(|_| !pose.is_flat()) else {
            return Vec::new();
        };
        let Some(wall) = pose.wall().and_then(|id| context.site.wall(id)) else { return Vec::new() };
        let items = context.brief.room.items().filter(|(_, item)| item.wall == wall.id);
        let gaps = items.filter(|(_, item)| matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_)));
        let beside = |(id, _)| {
            let place = context.site.place_of(context.brief, id)?;
            let cause = Cause { rule: Clearance::SolidWall.into(), piece: pose.id, with: With::Item(id) };
            Some(Requirement { cause, alternatives: beside(pose, wall, place, spare) })
        };
        gaps.filter_map(beside).collect()
    }
}

/// To the left or to the right of a doorway.
fn beside(pose: &Pose, wall: &SiteWall, doorway: WallPlace, spare: f64) -> Vec<Alternative> {
    let middle = pose.middle_of_back().along(wall.along).shifted(-wall.start.dot(wall.along));
    let (low, high) = (middle.clone().plus(&pose.width(), -0.5), middle.plus(&pose.width(), 0.5));
    let at = |place: Point| (place - wall.start).dot(wall.along);
    let (left, right) = (at(doorway.left), at(doorway.right));
    let rows = [high.at_most(left.min(right) + spare), low.at_least(left.max(right) - spare)];
    rows.map(|row| Alternative::of_rows(vec![row])).into()
}
