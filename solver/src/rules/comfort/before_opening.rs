//! Nothing but rugs stands close before a doorway or an opening, however wide.

use elbowroom_model::{Clearance, ItemKind, Point, Stance, WallItem};

use super::figure::figure;
use crate::arrangement::face;
use crate::geometry::Convex;
use crate::rules::{Alternative, Cause, LayoutRule, LinearOutline, Pose, Requirement, RuleContext, With, separation};
use crate::site::{WIDEST_OPENING_WITH_LANDING, WallPlace};

/// Free floor before every doorway and opening.
#[derive(Debug)]
pub(super) struct BeforeOpening;

impl LayoutRule for BeforeOpening {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(reach) = figure(context, Clearance::BeforeOpening).filter(|_| !pose.is_flat()) else {
            return Vec::new();
        };
        let mut found = Vec::new();
        for (id, item) in context.brief.room.items() {
            let (ItemKind::Door(_) | ItemKind::Opening(_)) = &item.kind else { continue };
            let Some(place) = context.site.place_of(context.brief, id) else { continue };
            let WallPlace { left, right, inward } = place;
            let out = inward * reach;
            let zone = Convex::counter_clockwise([left, right, right + out, left + out]);
            let beside = if may_be_backed(pose, item, inward) { way_beside(context, pose, place) } else { Vec::new() };
            let cause = Cause { rule: Clearance::BeforeOpening.into(), piece: pose.id, with: With::Item(id) };
            let ways = |part: &LinearOutline| {
                separation::out_of_polygon(part, &zone).into_iter().chain(beside.iter().cloned()).collect()
            };
            found.extend(pose.each_part(cause, ways));
        }
        found
    }
}

/// A free seat may part the room from what lies behind it, where that is wide and need not be kept in sight.
fn may_be_backed(pose: &Pose, item: &WallItem, inward: Point) -> bool {
    let is_passed = match &item.kind {
        ItemKind::Opening(opening) => item.width > WIDEST_OPENING_WITH_LANDING && opening.stance != Stance::Open,
        _ => false,
    };
    is_passed && pose.wall().is_none() && pose.piece.kind.is_seat() && face(-inward, pose.stand.facing)
}

/// A walkway of the opening is left free on one side of the whole piece.
fn way_beside(context: &RuleContext<'_>, pose: &Pose, WallPlace { left, right, .. }: WallPlace) -> Vec<Alternative> {
    let walkway = context.brief.rules.get(Clearance::Walkway);
    let Some(along) = (right - left).unit() else { return Vec::new() };
    let rows = |towards: Point, end: Point| {
        let free = |part: &LinearOutline| part.furthest(towards).along(towards).at_most(end.dot(towards) - walkway);
        Alternative::of_rows(pose.parts.iter().map(free).collect())
    };
    vec![rows(along, right), rows(-along, left)]
}
