//! What a problem is asked for.

use elbowroom_model::Rule;

use super::aim::Aim;
use super::easing::Easing;
use super::effort::Effort;

/// What a problem is asked for.
#[derive(Debug, Clone, Copy)]
pub(super) struct Asked<'a> {
    pub(super) aim: Aim<'a>,
    /// A rule that is left aside.
    pub(super) without: Option<Rule>,
    /// What a general solver can be asked for.
    pub(super) plain: bool,
    /// What is done about rules of comfort.
    pub(super) easing: Easing<'a>,
}

impl<'a> Asked<'a> {
    /// For a search.
    pub(super) const fn of(effort: &Effort<'a>) -> Self {
        Self { aim: effort.aim, without: effort.without, plain: false, easing: effort.easing }
    }

    /// For a general solver.
    pub(super) const fn plain(aim: Aim<'a>) -> Self {
        Self { aim, without: None, plain: true, easing: Easing::Kept }
    }

    /// Whether a plan is sought.
    pub(super) const fn is_plan(&self) -> bool {
        matches!(self.aim, Aim::Plan | Aim::PlanOf(_))
    }
}
