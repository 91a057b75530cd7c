//! Nothing stands in what is kept clear before a heater or fire, nor in what is there for good, nor, where it is
//! taller than the sill, before a window.

use elbowroom_model::{Clearance, ItemKind, Rule};

use super::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, hung, separation};
use crate::geometry::Convex;
use crate::site::{Body, BodyId, ClearZone, WallPlace};

/// Out of what is kept clear before a heater or fire; rugs only out of a fire's.
#[derive(Debug)]
pub(super) struct KeepClear;

/// Out of what stands there for good; a rug may lie under a radiator.
#[derive(Debug)]
pub(super) struct OutOfFixed;

/// What is taller than a sill keeps away from the window.
#[derive(Debug)]
pub(super) struct WindowFront;

impl LayoutRule for KeepClear {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let counts = |zone: &&ClearZone| zone.reach > 0.0 && (zone.fire || !pose.lies_under());
        let each = context.site.clear_zones.iter().filter(counts).flat_map(|zone| {
            let cause = Cause { rule: Rule::KeepClear, piece: pose.id, with: With::Item(zone.item) };
            let over = hung::over_fire(context, pose, zone);
            pose.each_part(cause, move |part| {
                separation::out_of_clear_zone(part, zone).into_iter().chain(over.clone()).collect()
            })
        });
        each.collect()
    }
}

impl LayoutRule for OutOfFixed {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let spares =
            |body: &Body| (pose.lies_under() && is_radiator(context, body.id)) || hung::is_over(context, pose, body);
        let counts = |body: &Body| !spares(body) && body.shape.area() > 0.0;
        let parts = pose.parts.iter();
        let off_bodies = parts.flat_map(|part| context.off_bodies(part, pose.id, Rule::Fixed, 0.0, counts));
        off_bodies.chain(off_steps(context, pose)).collect()
    }
}

/// Nothing that takes floor stands across a step.
fn off_steps(context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
    if pose.piece.kind.hangs() {
        return Vec::new();
    }
    pose.parts.iter().flat_map(|part| context.off_steps(part, pose.id, Rule::Fixed)).collect()
}

fn is_radiator(context: &RuleContext<'_>, id: BodyId) -> bool {
    let BodyId::Item(item) = id else { return false };
    context.brief.room.item(item).is_some_and(|item| matches!(item.kind, ItemKind::Radiator(_)))
}

impl LayoutRule for WindowFront {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let asked = context.brief.rules.get(Clearance::WindowFront);
        // Whatever is asked, nothing hangs on glass.
        let reach = if pose.piece.kind.hangs() { asked.max(hung::ON_GLASS) } else { asked };
        let mut found = Vec::new();
        for (id, item) in context.brief.room.items() {
            let ItemKind::Window(window) = &item.kind else { continue };
            if pose.piece.height_with_screen() <= window.sill || reach <= 0.0 {
                continue;
            }
            let Some(WallPlace { left, right, inward }) = context.site.place_of(context.brief, id) else { continue };
            let zone = Convex::counter_clockwise([left, right, right + inward * reach, left + inward * reach]);
            let cause = Cause { rule: Clearance::WindowFront.into(), piece: pose.id, with: With::Item(id) };
            found.extend(pose.each_part(cause, |part| separation::out_of_polygon(part, &zone)));
        }
        found
    }
}
