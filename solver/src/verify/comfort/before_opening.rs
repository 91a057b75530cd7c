//! Nothing but rugs stands close before a doorway or an opening.

use elbowroom_model::{Clearance, ItemKind, Stance, WallItem};

use super::edge::{Edge, Reach};
use super::measure::{Lengths, Measure};
use super::solid_wall::is_doorway;
use crate::answer::Thing;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::checked_room::WIDEST_WITH_LANDING;
use crate::verify::group::is_opposite;
use crate::verify::tolerance::COMFORT;

const RULE: Clearance = Clearance::BeforeOpening;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let wanted = scene.rule(RULE);
    if wanted <= 0.0 {
        return Vec::new();
    }
    let mut all = Vec::new();
    for (id, item) in scene.brief.room.items().filter(|(_, item)| is_doorway(item)) {
        let Some(edge) = Edge::of_item(scene.brief, item) else { continue };
        for piece in scene.standing_but(&[]).filter(|piece| !turns_its_back(scene, piece, item, &edge)) {
            if let Some(given) = edge.nearest_of(&piece.parts) {
                let between = [piece.thing(), Thing::Item(id)];
                all.push(Measure::at_least(RULE, Wrong::BeforeOpening, &between, &Lengths { wanted, given }));
            }
        }
    }
    all
}

/// A free seat may turn its back on a wide opening that need not be kept in sight, where a walkway stays beside it.
fn turns_its_back(scene: &CheckedLayout<'_>, piece: &InPlace<'_>, item: &WallItem, edge: &Edge) -> bool {
    let may_be_backed = match &item.kind {
        ItemKind::Opening(opening) => item.width > WIDEST_WITH_LANDING && opening.stance != Stance::Open,
        _ => false,
    };
    let is_free_seat = piece.piece.kind.is_seat() && piece.placed.at_wall.is_none();
    may_be_backed
        && is_free_seat
        && is_opposite(-edge.out, piece.placed.facing)
        && way_beside(piece, edge) >= scene.rule(Clearance::Walkway) - COMFORT
}

/// The widest stretch of the opening that the piece leaves free on one side.
fn way_beside(piece: &InPlace<'_>, edge: &Edge) -> f64 {
    let ahead = Reach { from: 0.0, to: f64::INFINITY };
    let covered = piece.parts.iter().filter_map(|part| edge.covered(part, ahead));
    let half = edge.length / 2.0;
    let (mut from, mut to) = (half, -half);
    for part in covered {
        (from, to) = (from.min(part.from), to.max(part.to));
    }
    (from + half).max(half - to)
}
