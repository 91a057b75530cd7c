//! A rule of comfort that no layout of an arrangement keeps, and that an option therefore gives in part.

use elbowroom_model::Rule;

use super::figures::thousandth;
use super::thing::Thing;
use crate::verify::Shortfall;

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
    /// How many rules are kept in part, each by the piece that lacks it: a nook of two walls is one.
    pub(crate) fn count(eased: &[Self]) -> usize {
        let lacks = |one: &Self| (one.rule, one.between[0]);
        (0..eased.len()).filter(|at| !eased[..*at].iter().any(|other| lacks(other) == lacks(&eased[*at]))).count()
    }
}

impl From<Shortfall> for Eased {
    fn from(Shortfall { rule, between, wanted, given }: Shortfall) -> Self {
        let [wanted, given] = [wanted, given].map(|figure| figure.map(thousandth));
        Self { rule, between, wanted, given }
    }
}
