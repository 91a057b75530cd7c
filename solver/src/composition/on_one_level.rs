//! A group sits on one level: a seat beyond a step is out of it.

use elbowroom_model::Term;

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::rules::{Pose, on_one_side};

/// No step between the main seat and a second one.
#[derive(Debug)]
pub(super) struct OnOneLevel;

impl PlanTerm for OnOneLevel {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let Some(main) = context.heart.main.filter(|_| pose.role.is_second_seat()) else { return Vec::new() };
        let of_step = |(with, sides): (_, Vec<_>)| {
            let mut ways: Vec<Way> = sides.into_iter().map(Way::of).collect();
            ways.push(Way::flat(Term::BeyondStep));
            Asked::one_of(Term::BeyondStep, pose, with, ways)
        };
        on_one_side(&context.room, main, pose).map(of_step).collect()
    }
}
