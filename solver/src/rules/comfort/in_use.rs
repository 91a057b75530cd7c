//! Nothing but rugs stands before a fixed thing where people use it.

use elbowroom_model::Rule;

use crate::geometry::Convex;
use crate::rules::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};

/// The floor before what people use.
#[derive(Debug)]
pub(super) struct InUse;

impl LayoutRule for InUse {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.is_flat() {
            return Vec::new();
        }
        let each = context.brief.room.used_floors().flat_map(|(id, floor)| {
            let zone = Convex::counter_clockwise(floor.moved_out(context.site.measured_within).corners());
            let cause = Cause { rule: Rule::Use, piece: pose.id, with: With::Fixed(id) };
            let asked: Vec<Requirement> =
                pose.each_part(cause, |part| separation::out_of_polygon(part, &zone)).collect();
            asked
        });
        each.collect()
    }
}
