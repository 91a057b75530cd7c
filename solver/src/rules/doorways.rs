//! Doors swing free, and one can stand just inside a doorway, and beside the latch of a door that one pulls.

use elbowroom_model::{Clearance, Rule};

use super::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};
use crate::site::Landing;

/// No part enters a door's swing.
#[derive(Debug)]
pub(super) struct DoorSwing;

/// No part enters a landing.
#[derive(Debug)]
pub(super) struct DoorLanding;

/// No part enters the floor before a door that one pulls, nor beside its latch.
#[derive(Debug)]
pub(super) struct LatchSide;

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
        out_of(&context.site.landings, Clearance::DoorLanding, pose)
    }
}

impl LayoutRule for LatchSide {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        out_of(&context.site.latch_sides, Clearance::LatchSide, pose)
    }
}

fn out_of(landings: &[Landing], rule: Clearance, pose: &Pose) -> Vec<Requirement> {
    if pose.lies_under() {
        return Vec::new();
    }
    let landings = landings.iter().filter(|landing| landing.zone.area() > 0.0);
    let each = landings.flat_map(|landing| {
        let cause = Cause { rule: rule.into(), piece: pose.id, with: With::Item(landing.item) };
        pose.each_part(cause, |part| separation::out_of_polygon(part, &landing.zone))
    });
    each.collect()
}
