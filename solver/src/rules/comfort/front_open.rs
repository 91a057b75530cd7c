//! No wall and no fixed thing stands close before a seat.

use elbowroom_model::{Clearance, Rule};

use super::figure::figure;
use super::fronts::{ENDS, before_main};
use crate::arrangement::Role;
use crate::rules::{LayoutRule, Pose, Requirement, RuleContext};

/// Before a seat that is not the main one half as much is kept (common practice, no source).
const OF_OTHERS: f64 = 0.5;

/// Floor before a seat that no wall cuts off.
#[derive(Debug)]
pub(super) struct FrontOpen;

impl LayoutRule for FrontOpen {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(reach) = figure(context, Clearance::FrontOpen).filter(|_| pose.piece.kind.is_seat()) else {
            return Vec::new();
        };
        let reach = if pose.role == Role::MainSeat { reach } else { OF_OTHERS * reach };
        let zone = before_main(pose, ENDS, reach);
        let rule = Rule::Clearance(Clearance::FrontOpen);
        let mut found = context.inside(&zone, pose.id, rule, 0.0);
        found.extend(context.off_bodies(&zone, pose.id, rule, 0.0, |body| body.shape.area() > 0.0));
        // Nobody gets up onto a step.
        found.extend(context.off_steps(&zone, pose.id, rule));
        found
    }
}
