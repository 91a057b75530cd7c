//! Every part stands within the walls.

use elbowroom_model::Rule;

use super::{Ground, LayoutRule, Pose, Requirement};

/// Every part stands within the walls.
#[derive(Debug)]
pub(super) struct WithinWalls;

impl LayoutRule for WithinWalls {
    fn alone(&self, ground: &Ground<'_>, pose: &Pose) -> Vec<Requirement> {
        pose.parts.iter().flat_map(|part| ground.inside(part, pose.id, Rule::Room, 0.0)).collect()
    }
}
