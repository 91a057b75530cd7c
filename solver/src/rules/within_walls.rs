//! Every part stands within the walls.

use elbowroom_model::Rule;

use super::{LayoutRule, Pose, Requirement, RuleContext};

/// Every part stands within the walls.
#[derive(Debug)]
pub(super) struct WithinWalls;

impl LayoutRule for WithinWalls {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        pose.parts.iter().flat_map(|part| context.inside(part, pose.id, Rule::Room, 0.0)).collect()
    }
}
