//! Which routes a layout must have.

use elbowroom_model::{Brief, Clearance, ItemId, ItemKind, PieceId};

use super::End;

/// A route that must be there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Demand {
    /// An entrance.
    pub from: ItemId,
    /// Where it leads.
    pub to: End,
    /// The rule that says how wide: walkway or passage.
    pub rule: Clearance,
}

/// A dozen entrances among forty shapes: rooms that people live in take less.
const USUAL_WORK_OF_ROUTES: usize = 8_000;

/// About what it takes to measure the routes of a layout in which every piece stands: each route meets each shape.
/// In [`USUAL_WORK_OF_ROUTES`], at least one.
pub(crate) fn work_of_routes(brief: &Brief) -> usize {
    let shapes = shapes_of_room(brief) + brief.pieces.len();
    (demands_with(brief, brief.piece_ids()).len() * shapes / USUAL_WORK_OF_ROUTES).max(1)
}

/// What a walker, or a piece along a wall, may meet in the empty room.
pub(crate) fn shapes_of_room(brief: &Brief) -> usize {
    brief.room.walls.len() + brief.room.items.len() + brief.room.fixed.len()
}

/// The routes that a room in which these pieces stand must have.
pub(super) fn demands_with(brief: &Brief, pieces: impl Iterator<Item = PieceId> + Clone) -> Vec<Demand> {
    let mut all = Vec::new();
    let used: Vec<End> = brief.room.used_floors().map(|(id, _)| End::Fixed(id)).collect();
    for from in entrances(brief) {
        for (id, item) in brief.room.items() {
            let doorway = item.kind.leads_to().is_some() && id != from && !(is_entrance(brief, id) && id < from);
            if doorway {
                all.push(Demand { from, to: End::Item(id), rule: Clearance::Walkway });
            } else if must_reach(brief, &item.kind) {
                all.push(Demand { from, to: End::Item(id), rule: Clearance::Passage });
            }
        }
        all.extend(used.iter().map(|to| Demand { from, to: *to, rule: Clearance::Passage }));
        let led_to = pieces.clone().filter(|piece| is_led_to(brief, *piece));
        all.extend(led_to.map(|piece| Demand { from, to: End::Piece(piece), rule: Clearance::Passage }));
    }
    all
}

/// The doorways that one comes in by.
pub(crate) fn entrances(brief: &Brief) -> Vec<ItemId> {
    brief.room.items().filter(|(id, _)| is_entrance(brief, *id)).map(|(id, _)| id).collect()
}

fn is_entrance(brief: &Brief, item: ItemId) -> bool {
    let leads_to = brief.room.item(item).and_then(|item| item.kind.leads_to());
    leads_to.is_some_and(elbowroom_model::LeadsTo::is_entrance)
}

fn must_reach(brief: &Brief, kind: &ItemKind) -> bool {
    let ItemKind::Window(window) = kind else { return false };
    window.must_reach || (brief.rules.reach_opening_windows && window.opens)
}

/// A way must lead to seats, storage fronts and desks.
fn is_led_to(brief: &Brief, piece: PieceId) -> bool {
    brief.piece(piece).is_some_and(elbowroom_model::Piece::is_led_to)
}
