//! What a problem is asked for.

use elbowroom_model::Rule;

use super::aim::Aim;
use super::easing::Easing;
use super::effort::Effort;
use super::still::Still;
use crate::program::Row;
use crate::rules::Cause;

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
    /// What sizes alone leave open is settled where the aim has it settled.
    pub(super) may_settle_ties: bool,
    /// Rows that hold besides.
    pub(super) besides: &'a [(Row, Cause)],
    /// What keeps its place.
    pub(super) still: Option<&'a Still<'a>>,
}

impl<'a> Asked<'a> {
    /// For a search.
    pub(super) const fn of(effort: &Effort<'a>) -> Self {
        let Effort { aim, without, easing, besides, still, .. } = *effort;
        Self { aim, without, plain: false, easing, may_settle_ties: true, besides, still }
    }

    /// For a general solver.
    pub(super) const fn plain(aim: Aim<'a>, may_settle_ties: bool) -> Self {
        Self { aim, without: None, plain: true, easing: Easing::Kept, may_settle_ties, besides: &[], still: None }
    }

    /// Whether a plan is sought.
    pub(super) const fn is_plan(&self) -> bool {
        matches!(self.aim, Aim::Plan | Aim::PlanOf(_))
    }
}
