//! A rug keeps clear of what would trip over it, or stand half on it: doors that swing in, and pieces that are none of its
//! group.

use elbowroom_model::Term;

use super::asked::Asked;
use super::floor_before::out_of;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Relation;
use crate::geometry::Convex;
use crate::rules::{Pose, With, apart};
use crate::site::Swing;

/// A rug out of the way of leaves and of what stands at walls.
#[derive(Debug)]
pub(super) struct ClearOfOthers;

impl PlanTerm for ClearOfOthers {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        if !is_rug(pose) {
            return Vec::new();
        }
        let swings = context.room.site.swings.iter();
        swings.map(|swing| out_of(pose, &about_swing(swing), Term::RugInSwing, swing.item)).collect()
    }

    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        under_other(first, second).into_iter().chain(under_other(second, first)).collect()
    }
}

fn is_rug(pose: &Pose) -> bool {
    matches!(pose.stand.relation, Relation::Under { .. })
}

/// What a leaf sweeps, with its rim as two straight edges a little outside of it.
fn about_swing(swing: &Swing) -> Convex {
    // Where the tangents at both ends of the rim meet the one at its middle.
    let cut = swing.radius * std::f64::consts::FRAC_PI_8.tan();
    let at = |along: f64, inward: f64| swing.hinge + swing.along * along + swing.inward * inward;
    let radius = swing.radius;
    let quarter = [at(0.0, 0.0), at(radius, 0.0), at(radius, cut), at(cut, radius), at(0.0, radius)];
    let quarter = Convex::counter_clockwise(quarter);
    if swing.turn >= std::f64::consts::FRAC_PI_2 {
        return quarter;
    }
    // A leaf that opens less than another quarter turn past the first.
    let past_end = swing.past_end();
    quarter.clipped(past_end, swing.hinge.dot(past_end)).unwrap_or(quarter)
}

/// Dining tables, storage, media units and other groups stand off the rug of the group.
fn under_other(rug: &Pose, other: &Pose) -> Option<Asked> {
    let kind = other.piece.kind;
    let is_unit = kind.carries_screen() && !kind.hangs();
    let is_other = other.piece.group.is_some() || kind.is_dined_at() || is_unit || kind.is_storage();
    if !is_rug(rug) || !is_other {
        return None;
    }
    let free = apart(rug.main(), other.main(), 0.0);
    Some(Asked::or_flat(Term::RugUnderOther, rug, With::Piece(other.id), free))
}
