//! What a search does about rules of comfort that no layout keeps.

use elbowroom_model::{Clearance, Rule};

use super::found::Found;
use crate::rules::{Cause, With};

/// What is done about rules of comfort.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Easing<'a> {
    /// All are kept.
    Kept,
    /// Each may be eased, at a cost above all else.
    MayBeEased,
    /// Those that this plan eases are eased, by no more than there; all others are kept.
    AsIn(&'a Found),
    /// None is asked: each could be eased, where only whether anything fits matters.
    Ignored,
}

impl<'a> Easing<'a> {
    /// As in a plan, which mostly eases nothing.
    #[must_use]
    pub const fn as_in(plan: &'a Found) -> Self {
        if plan.eased.is_empty() { Self::Kept } else { Self::AsIn(plan) }
    }
}

/// A cause as the second check may read it: a nook before a seat or a screen is bounded by several walls, and the search names
/// but one of them.
pub(super) fn as_second_checked(cause: &Cause) -> Cause {
    let of_nooks = matches!(cause.rule, Rule::Clearance(Clearance::FrontOpen | Clearance::ScreenSight));
    if of_nooks && matches!(cause.with, With::Wall(_)) { Cause { with: With::Itself, ..*cause } } else { *cause }
}
