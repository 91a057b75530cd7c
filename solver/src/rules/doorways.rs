//! Doors swing free, and one can stand just inside a doorway.

use elbowroom_model::{Clearance, Rule};

use super::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};

/// No part enters a door's swing.
#[derive(Debug)]
pub(super) struct DoorSwing;

/// No part enters a landing.
#[derive(Debug)]
pub(super) struct DoorLanding;

impl LayoutRule for DoorSwing {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.lies_under() {
            return Vec::new();
        }
        let swings = context.site.swings.iter();
        let each = swings.flat_map(|swing| {
            let cause = Cause { rule: Rule::DoorSwing, piece: pose.id, with: With::Item(swing.item) };
            pose.each_part(cause, |part| separation::out_of_swing(part, swing))
        });
        let folds = context.site.folds.iter().flat_map(|fold| {
            let cause = Cause { rule: Rule::DoorSwing, piece: pose.id, with: With::Item(fold.item) };
            pose.each_part(cause, |part| separation::out_of_polygon(part, &fold.zone))
        });
        each.chain(folds).collect()
    }
}

impl LayoutRule for DoorLanding {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.lies_under() {
            return Vec::new();
        }
        let landings = context.site.landings.iter().filter(|landing| landing.zone.area() > 0.0);
        let each = landings.flat_map(|landing| {
            let cause = Cause { rule: Clearance::DoorLanding.into(), piece: pose.id, with: With::Item(landing.item) };
            pose.each_part(cause, |part| separation::out_of_polygon(part, &landing.zone))
        });
        each.collect()
    }
}
