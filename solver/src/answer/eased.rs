//! A rule of comfort that no layout of an arrangement keeps, and that an option therefore gives in part.

use elbowroom_model::Rule;

use super::figures::thousandth;
use super::thing::Thing;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::rules::Cause;
use crate::verify::{self, CheckedRoom};

/// A rule of comfort that is kept in part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Eased {
    /// The rule.
    pub rule: Rule,
    /// The piece that lacks it, and what it lacks it from.
    pub between: [Thing; 2],
    /// What the rule asks, mm; `None` where that is no one length.
    pub wanted: Option<f64>,
    /// What the plan gives, mm; `None` where that is no one length.
    pub given: Option<f64>,
}

impl Eased {
    /// What a plan gives of the rules that it eases; what it keeps after all is not told.
    pub(crate) fn all(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement) -> Vec<Self> {
        let told = |cause: &Cause| Self {
            rule: cause.rule,
            between: [Thing::Piece(cause.piece), Thing::kept_from(cause.piece, cause.with)],
            wanted: verify::wanted(checked, layout, arrangement, cause).map(thousandth),
            given: verify::given(checked, layout, arrangement, cause).map(thousandth),
        };
        layout.eased.iter().map(told).collect()
    }
}
