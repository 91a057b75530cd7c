//! Floor that is to stay open, for play: not where others work.

use elbowroom_model::Term;

use super::asked::Asked;
use super::plan_term::{PlanTerm, TermContext};
use crate::geometry::Convex;
use crate::rules::{Pose, With, out_of_polygon};

/// Open floor out of the floor before what people use.
#[derive(Debug)]
pub(super) struct OpenFloor;

impl PlanTerm for OpenFloor {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if !pose.piece.kind.stays_open() {
            return Vec::new();
        }
        let used = context.room.brief.room.used_floors().map(|(id, floor)| {
            let zone = Convex::counter_clockwise(floor.corners());
            Asked::or_flat(Term::OpenFloorInUse, pose, With::Fixed(id), out_of_polygon(pose.main(), &zone))
        });
        used.collect()
    }
}
