//! What a change of the scenario does to its result.

use crate::answer::{Answer, RankedOption};
use crate::comparison::{Side, Trade, trade};

/// One result against another of the same room.
#[derive(Debug, Clone, PartialEq)]
pub struct Changed<'a> {
    /// Options that fit now and did not before, best first.
    pub gained: Vec<&'a RankedOption>,
    /// Options that fitted before and do not now, best first.
    pub lost: Vec<&'a RankedOption>,
    /// The first option before and now, where there is one.
    pub first: [Option<&'a RankedOption>; 2],
    /// What was first before, as it is now; `None` where it does not fit any more.
    pub former_first: Option<&'a RankedOption>,
    /// What is first now, as it was before; `None` where it did not fit.
    pub was: Option<&'a RankedOption>,
    /// One option that fits before and now, followed through the change: what was first before, or else what is first
    /// now; as it is now, and what that gives and takes against what it was.
    pub followed: Option<(&'a RankedOption, Trade)>,
}

/// `now` against `before`. Options are the same where their keys are.
#[must_use]
pub fn changed<'a>(before: &'a Answer, now: &'a Answer) -> Changed<'a> {
    let apart = |here: &'a Answer, there: &'a Answer| {
        here.options.iter().filter(|option| there.keyed(&option.key).is_none()).collect()
    };
    let first = [before.options.first(), now.options.first()];
    let former_first = first[0].and_then(|option| now.keyed(&option.key));
    let was = first[1].and_then(|option| before.keyed(&option.key));
    let followed = former_first.zip(first[0]).or(first[1].zip(was));
    let against = |(is, was): (&'a RankedOption, &'a RankedOption)| {
        let (is_side, was_side) = (Side { brief: &now.brief, option: is }, Side { brief: &before.brief, option: was });
        (is, trade(is_side, was_side))
    };
    Changed {
        gained: apart(now, before),
        lost: apart(before, now),
        first,
        former_first,
        was,
        followed: followed.map(against),
    }
}
