//! What hangs is on its wall or on the front of a breast there, over what is lower than its lower edge, and before neither
//! window, doorway nor opening. Over the fire of its own wall it may be; a caution goes with that.

use elbowroom_model::{ItemId, ItemKind, Point, Rule, WallId, WallItem};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace, common};
use super::checked_shape::{Shape, Zone};
use super::tolerance::SLACK;
use crate::answer::Thing;

/// Breaches of what must be behind it.
pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let hung = scene.pieces.iter().filter(|piece| piece.piece.kind.hangs());
    hung.flat_map(|piece| nothing_behind(scene, piece)).collect()
}

/// Windows, doorways and openings of its wall that it covers.
fn nothing_behind(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Vec<Breach> {
    let Some(wall) = piece.placed.at_wall else {
        return vec![Breach::new(Rule::OffWall, Wrong::NoWall, &[piece.thing()], 0.0)];
    };
    let tall = piece.piece.height_with_screen();
    let stops = |item: &WallItem| match &item.kind {
        ItemKind::Door(_) | ItemKind::Opening(_) => true,
        ItemKind::Window(window) => tall > window.sill,
        ItemKind::Radiator(_) | ItemKind::Fireplace(_) | ItemKind::Socket(_) => false,
    };
    let items = scene.brief.room.items().filter(|(_, item)| item.wall == wall && stops(item));
    let covered = items.filter_map(|(id, item)| Some((id, common(span(scene, item)?, along(scene, piece, wall)?))));
    let breach = |(id, by): (ItemId, f64)| {
        Breach::new(Rule::OffWall, Wrong::NoWallBehind, &[piece.thing(), Thing::Item(id)], by)
    };
    covered.filter(|(_, by)| *by > SLACK).map(breach).collect()
}

/// How far off its wall a piece must be, mm: 0, and of what hangs also as far as each breast that it is on stands out.
pub(super) fn backs(scene: &CheckedLayout<'_>, piece: &InPlace<'_>, wall: WallId) -> Vec<f64> {
    let fires = scene.brief.room.items.iter().filter(|item| item.wall == wall);
    let out = fires.filter_map(|item| match &item.kind {
        ItemKind::Fireplace(fire) if covers(scene, item, piece, wall) => Some(fire.depth),
        _ => None,
    });
    std::iter::once(0.0).chain(out).collect()
}

/// Whether a piece hangs over what a zone belongs to.
pub(super) fn is_over(scene: &CheckedLayout<'_>, zone: &Zone, piece: &InPlace<'_>) -> bool {
    if !piece.piece.kind.hangs() {
        return false;
    }
    let is_low = |height: Option<f64>| height.is_some_and(|height| height <= piece.piece.height);
    let item = |id: ItemId| scene.brief.room.item(id);
    match (zone.rule, zone.of) {
        (Rule::Fixed, Thing::Fixed(id)) => {
            let thing = scene.brief.room.fixed_thing(id);
            thing.is_some_and(|thing| thing.step().is_some() || is_low(thing.height))
        }
        (Rule::Fixed, Thing::Item(id)) => match item(id).map(|item| &item.kind) {
            Some(ItemKind::Fireplace(fire)) => is_low(fire.height),
            _ => false,
        },
        (Rule::KeepClear, Thing::Item(id)) if matches!(zone.shape, Shape::Round { .. }) => {
            let wall = piece.placed.at_wall;
            item(id).is_some_and(|item| Some(item.wall) == wall && covers(scene, item, piece, item.wall))
        }
        _ => false,
    }
}

/// Whether one of two pieces hangs over the other.
pub(super) fn one_over_other(first: &InPlace<'_>, second: &InPlace<'_>) -> bool {
    let over = |hung: &InPlace<'_>, low: &InPlace<'_>| {
        hung.piece.kind.hangs() && low.piece.height_with_screen() <= hung.piece.height
    };
    over(first, second) || over(second, first)
}

/// Whether an item has a piece before no other part of the wall.
fn covers(scene: &CheckedLayout<'_>, item: &WallItem, piece: &InPlace<'_>, wall: WallId) -> bool {
    let (Some((left, right)), Some((from, to))) = (span(scene, item), along(scene, piece, wall)) else { return false };
    from >= left - SLACK && to <= right + SLACK
}

/// From where to where an item is along its wall.
fn span(scene: &CheckedLayout<'_>, item: &WallItem) -> Option<(f64, f64)> {
    let wall = scene.brief.room.wall(item.wall)?;
    let from = wall.start.dot(wall.along()) + item.at;
    Some((from, from + item.width))
}

/// From where to where a piece is along a wall.
fn along(scene: &CheckedLayout<'_>, piece: &InPlace<'_>, wall: WallId) -> Option<(f64, f64)> {
    let along: Point = scene.brief.room.wall(wall)?.along();
    Some(piece.extent(along))
}
