//! Where each end of a route has its mouth.

use elbowroom_model::{Brief, Dimension, FixedId, ItemId, ItemKind, PieceId, Point};

use super::tolerance::SHORTEST_FRONT;
use super::{End, Mouth, Owner, ShapeId};
use crate::layout::{Layout, Placed};
use crate::site::{Site, WallPlace};

/// A doorway between its jambs, a window between its sides; where a radiator stands under the window, that stretch of
/// the radiator's front. `None` for what one cannot step through or up to.
pub(super) fn of_item(brief: &Brief, site: &Site, id: ItemId) -> Option<Mouth> {
    let item = brief.room.item(id)?;
    let WallPlace { left, right, inward } = site.place_of(brief, id)?;
    let wall = site.wall(item.wall)?;
    let length = wall.along.dot(wall.end - wall.start);
    let place = |at: Point| wall.along.dot(at - wall.start).clamp(0.0, length.max(0.0));
    let (from, to) = (place(left), place(right));
    let at = |off: f64, out: f64| wall.start + wall.along * off + inward * out;
    let through = Mouth::new(End::Item(id), [at(from, 0.0), at(to, 0.0)], inward, Owner::Wall);
    match item.kind {
        ItemKind::Door(_) | ItemKind::Opening(_) => Some(through),
        ItemKind::Window(_) => {
            let Some((radiator, depth, under)) = radiator_under(brief, id) else { return Some(through) };
            let shift = wall.along.dot(left - wall.start) - item.at;
            let ends = [under.0 + shift, under.1 + shift].map(|off| at(off, depth));
            Some(Mouth::new(End::Item(id), ends, inward, Owner::Shape(ShapeId::Item(radiator))))
        }
        ItemKind::Radiator(_) | ItemKind::Fireplace(_) | ItemKind::Socket(_) => None,
    }
}

/// The radiator that stands under most of a window: itself, its depth, and the stretch of wall that both have in common.
fn radiator_under(brief: &Brief, window: ItemId) -> Option<(ItemId, f64, (f64, f64))> {
    let item = brief.room.item(window)?;
    let (from, to) = (item.at, item.at + item.width);
    let mut best: Option<(ItemId, f64, (f64, f64))> = None;
    for (id, other) in brief.room.items().filter(|(_, other)| other.wall == item.wall) {
        let ItemKind::Radiator(radiator) = &other.kind else { continue };
        let under = (from.max(other.at), to.min(other.at + other.width));
        let covers = under.1 - under.0;
        if covers > best.map_or(0.0, |(.., (from, to))| to - from) {
            best = Some((id, radiator.depth, under));
        }
    }
    best
}

/// The edge that people stand before to use a fixed thing; `None` where nobody uses it.
pub(super) fn of_fixed(brief: &Brief, site: &Site, id: FixedId) -> Option<Mouth> {
    let floor = brief.room.used_floor(id)?.moved_out(site.measured_within);
    Some(Mouth::new(End::Fixed(id), [floor.from, floor.to], floor.out, Owner::Shape(ShapeId::Fixed(id))))
}

/// That part of a piece's front that stays at every size down to its least width; of a corner sofa the front of its
/// main run from the return out to the least main run.
pub(super) fn of_piece(brief: &Brief, layout: &Layout, piece: PieceId) -> Option<Mouth> {
    let placed = layout.of(piece)?;
    let least = brief.piece(piece)?.range(Dimension::Width)?.least;
    let (from, to) = stays(placed, least);
    let at = |along: f64| placed.anchor + placed.along() * along + placed.facing * placed.size.depth;
    let owner = Owner::Shape(ShapeId::Part { piece, part: 0 });
    Some(Mouth::new(End::Piece(piece), [at(from), at(to)], placed.facing, owner))
}

fn stays(placed: &Placed, least: f64) -> (f64, f64) {
    let least = least.min(placed.size.width);
    if placed.hand.is_none() {
        return (-least / 2.0, least / 2.0);
    }
    let (from, to) = placed.size.bay();
    let from = from.min(placed.size.width);
    // A U keeps its width, and so its bay.
    let to = if placed.size.second_return.is_some() { to } else { least };
    (from, to.max(from + SHORTEST_FRONT))
}
