//! The beam between seat and screen: what is high stands clear of it, and not only of the strip that must be clear.

use elbowroom_model::{Clearance, Point, Term, tables};

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::comfort::{LOW, axis};
use crate::rules::{CostSlot, Linear, LinearOutline, Pose, With};

/// The beam between seat and screen.
#[derive(Debug)]
pub(super) struct Beam;

impl PlanTerm for Beam {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let (Some(main), Some(screen)) = (context.heart.main, context.heart.screen) else { return Vec::new() };
        let is_between = screen.role == Role::Screen && pose.id != main.id && pose.id != screen.id;
        if !is_between || is_low_or_under(pose, screen) {
            return Vec::new();
        }
        let asked = |part| Asked::one_of(Term::Beam, pose, With::Piece(main.id), ways(context, main, pose, part));
        pose.parts.iter().map(asked).collect()
    }
}

/// What is low hides nothing, and what stands under a screen that hangs belongs there. What is higher and between looks wrong
/// even where one sees over it.
fn is_low_or_under(pose: &Pose, screen: &Pose) -> bool {
    let is_under = screen.piece.kind.hangs() && pose.wall().is_some() && pose.wall() == screen.wall();
    pose.is_flat() || pose.piece.height_with_screen() <= LOW || is_under && !pose.piece.kind.is_sat_at()
}

/// To the left of the beam, to its right, or behind the seat's front.
fn ways(context: &TermContext<'_>, main: &Pose, pose: &Pose, part: &LinearOutline) -> Vec<Way> {
    let facing = main.stand.facing;
    let axis = axis(main);
    let ahead = part.furthest(-facing).from(&main.anchor).along(facing).plus(&main.depth(), -1.0);
    // The beam narrows from half the front that one sits along to the strip that must be clear, over the length of the room: the true
    // distance would be no straight line in the places of both.
    let [wide, narrow] =
        [main.piece.bay_of(main.piece.width.usual) / 2.0, context.room.brief.rules.get(Clearance::ScreenSight)];
    let slope = (wide - narrow).max(0.0) / (2.0 * context.room.variables.span).max(1.0);
    let half = Linear::constant(wide.max(narrow) + tables::price(Term::Beam).free).plus(&ahead, -slope);
    let beside = |side: Point| {
        let past = part.furthest(-side).from(&axis).along(side);
        Way::pays(pose, CostSlot::Other, Term::Beam, &half.clone().plus(&past, -1.0))
    };
    let behind = part.furthest(facing).from(&main.anchor).along(facing).plus(&main.depth(), -1.0);
    vec![beside(main.left()), beside(-main.left()), Way::free(vec![behind.at_most(0.0)])]
}
