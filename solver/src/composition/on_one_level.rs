//! A group sits on one level: a seat beyond a step is out of it.

use elbowroom_model::Term;

use super::asked::Asked;
use super::plan_term::{PlanTerm, TermContext};
use crate::rules::{Pose, on_one_side};

/// No step between the main seat and a second one.
#[derive(Debug)]
pub(super) struct OnOneLevel;

impl PlanTerm for OnOneLevel {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main.filter(|_| pose.role.is_second_seat()) else { return Vec::new() };
        let of_step = |(with, sides)| Asked::or_flat(Term::BeyondStep, pose, with, sides);
        on_one_side(&context.room, main, pose).map(of_step).collect()
    }
}
