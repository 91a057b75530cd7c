//! The screen stands on the axis of the main seat that faces it.

use elbowroom_model::Clearance;

use super::figure::figure;
use super::fronts::{axis, middle_of_screen, seat_and_screen};
use crate::arrangement::Role;
use crate::rules::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, faces_one};

/// The screen on the axis of the seat that faces it.
#[derive(Debug)]
pub(super) struct ScreenAxis;

impl LayoutRule for ScreenAxis {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        if figure(context, Clearance::ScreenAxis).is_none() {
            return Vec::new();
        }
        let faced = seat_and_screen(first, second).filter(|(_, screen)| screen.role == Role::Screen);
        let Some((seat, screen)) = faced else { return Vec::new() };
        let most = context.brief.screen_axis(faces_one(context, seat.stand.facing).is_some());
        let off = middle_of_screen(screen).from(&axis(seat)).along(seat.left());
        let rows = vec![off.at_most(most), off.at_least(-most)];
        let cause = Cause { rule: Clearance::ScreenAxis.into(), piece: screen.id, with: With::Piece(seat.id) };
        vec![Requirement::always(cause, rows)]
    }
}
