//! What hangs on a wall: over what is low, and on the front of a chimney breast.

use elbowroom_model::{ItemId, ItemKind, Rule, WallItem};

use super::on_wall::on_wall;
use super::{Alternative, Cause, Linear, Pose, Requirement, RuleContext, With};
use crate::program::Row;
use crate::site::{Body, BodyId, ClearZone, SiteWall, WallPlace};

/// What hangs on a wall keeps so far from the plane of a window at least, mm: less than any screen is thick.
pub(super) const ON_GLASS: f64 = 10.0;

/// To the left or to the right of every doorway and opening of its wall: there is nothing to hang on.
pub(super) fn off_openings(context: &RuleContext<'_>, wall: &SiteWall, pose: &Pose) -> Vec<Requirement> {
    let items = context.brief.room.items().filter(|(_, item)| item.wall == wall.id);
    let openings = items.filter(|(_, item)| matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_)));
    let beside = |(id, _)| {
        let WallPlace { left, right, .. } = context.site.place_of(context.brief, id)?;
        let (low, high) = ends(wall, pose);
        let (one, other) = (left.dot(wall.along), right.dot(wall.along));
        let rows = [high.at_most(one.min(other)), low.at_least(one.max(other))];
        let cause = Cause { rule: Rule::OffWall, piece: pose.id, with: With::Item(id) };
        Some(Requirement { cause, alternatives: rows.map(|row| Alternative::of_rows(vec![row])).into() })
    };
    openings.filter_map(beside).collect()
}

/// On the front of each breast of its wall that is not so low that it hangs over it.
pub(super) fn on_breasts(context: &RuleContext<'_>, wall: &SiteWall, pose: &Pose) -> Vec<Alternative> {
    let fires = context.brief.room.items().filter(|(_, item)| item.wall == wall.id);
    let on = |(id, item): (ItemId, &WallItem)| {
        let ItemKind::Fireplace(fire) = &item.kind else { return None };
        let is_over = fire.height.is_some_and(|height| height <= pose.piece.lower_edge());
        if is_over || fire.depth <= 0.0 {
            return None;
        }
        let mut rows = Vec::from(on_wall(wall, pose, fire.depth));
        rows.extend(within(wall, pose, context.site.place_of(context.brief, id)?));
        Some(Alternative::of_rows(rows))
    };
    fires.filter_map(on).collect()
}

/// How far the deepest breast of a wall stands out, mm; 0 where it has none.
pub(super) fn deepest_breast(context: &RuleContext<'_>, wall: &SiteWall) -> f64 {
    let items = context.brief.room.items.iter().filter(|item| item.wall == wall.id);
    let depths = items.filter_map(|item| match &item.kind {
        ItemKind::Fireplace(fire) => Some(fire.depth),
        _ => None,
    });
    depths.fold(0.0, f64::max)
}

/// Over the fire of its own wall, which nothing that stands may be near.
pub(super) fn over_fire(context: &RuleContext<'_>, pose: &Pose, zone: &ClearZone) -> Option<Alternative> {
    let item = context.brief.room.item(zone.item).filter(|_| zone.fire && pose.piece.kind.hangs())?;
    let wall = pose.wall().filter(|wall| *wall == item.wall).and_then(|wall| context.site.wall(wall))?;
    let place = context.site.place_of(context.brief, zone.item)?;
    Some(Alternative::of_rows(within(wall, pose, place).into()))
}

/// No wider than what is on the wall, and before it.
fn within(wall: &SiteWall, pose: &Pose, place: WallPlace) -> [Row; 2] {
    let (low, high) = ends(wall, pose);
    let (one, other) = (place.left.dot(wall.along), place.right.dot(wall.along));
    [low.at_least(one.min(other)), high.at_most(one.max(other))]
}

/// From where to where it is along the wall.
fn ends(wall: &SiteWall, pose: &Pose) -> (Linear, Linear) {
    let middle = pose.middle_of_back().along(wall.along);
    (middle.clone().plus(&pose.width(), -0.5), middle.plus(&pose.width(), 0.5))
}

/// Whether a piece hangs over something of the room: it is low, and gives no heat.
pub(super) fn is_over(context: &RuleContext<'_>, pose: &Pose, body: &Body) -> bool {
    let height = match body.id {
        BodyId::Fixed(id) => context.brief.room.fixed_thing(id).and_then(|fixed| fixed.height),
        BodyId::Item(id) => context.brief.room.item(id).and_then(|item| match &item.kind {
            ItemKind::Fireplace(fire) => fire.height,
            _ => None,
        }),
    };
    pose.piece.kind.hangs() && height.is_some_and(|height| height <= pose.piece.lower_edge())
}
