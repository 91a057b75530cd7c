//! Nothing but rugs stands close before a doorway or an opening, however wide.

use elbowroom_model::{Clearance, ItemKind, Stance};

use super::figure;
use crate::arrangement::face;
use crate::geometry::Convex;
use crate::rules::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};
use crate::site::WallPlace;

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
            let Some(stance) = stance(&item.kind) else { continue };
            let Some(WallPlace { left, right, inward }) = context.site.place_of(context.brief, id) else { continue };
            if stance != Stance::Open && turns_its_back(pose, inward) {
                continue;
            }
            let out = inward * reach;
            let zone = Convex::counter_clockwise([left, right, right + out, left + out]);
            let cause = Cause { rule: Clearance::BeforeOpening.into(), piece: pose.id, with: With::Item(id) };
            found.extend(pose.each_part(cause, |part| separation::out_of_polygon(part, &zone)));
        }
        found
    }
}

/// How the room stands to what lies beyond a doorway or an opening; `None` for what is none.
const fn stance(kind: &ItemKind) -> Option<Stance> {
    match kind {
        ItemKind::Door(_) => Some(Stance::Open),
        ItemKind::Opening(opening) => Some(opening.stance),
        _ => None,
    }
}

/// A free seat that parts the room from what lies behind it.
fn turns_its_back(pose: &Pose, inward: elbowroom_model::Point) -> bool {
    pose.wall().is_none() && pose.piece.kind.is_seat() && face(-inward, pose.stand.facing)
}
