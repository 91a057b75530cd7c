//! What a change of the scenario does to its result.

use crate::answer::{Answer, RankedOption};
use crate::comparison::{Counterpart, Side, Trade, counterpart, trade};

/// One result against another of the same room. Options are the same where what stands in both of them stands alike: an
/// optional seat or screen that came or went makes no other option of one.
#[derive(Debug, Clone, PartialEq)]
pub struct Changed<'a> {
    /// Options that fit now and did not before, best first.
    pub gained: Vec<&'a RankedOption>,
    /// Options that fitted before and do not now, best first.
    pub lost: Vec<&'a RankedOption>,
    /// Options that fit now and did before with other pieces, best first, each with what it was.
    pub otherwise: Vec<(&'a RankedOption, Counterpart<'a>)>,
    /// Options that fitted before and do now with other pieces only, as an option that is not what they were: best first,
    /// each with what it is.
    pub merged: Vec<(&'a RankedOption, Counterpart<'a>)>,
    /// The first option before and now, where there is one.
    pub first: [Option<&'a RankedOption>; 2],
    /// What was first before, as it is now; `None` where it does not fit any more. Here is before, there is now.
    pub former_first: Option<Counterpart<'a>>,
    /// What is first now, as it was before; `None` where it did not fit. Here is now, there is before.
    pub was: Option<Counterpart<'a>>,
    /// One option that fits before and now, followed through the change: what was first before, or else what is first
    /// now; as it is now, and what that gives and takes against what it was.
    pub followed: Option<(&'a RankedOption, Trade)>,
}

impl Changed<'_> {
    /// The same option is first before and now.
    #[must_use]
    pub fn first_stays(&self) -> bool {
        let [before, now] = self.first.map(|option| option.map(|option| option.rank));
        let there = |found: &Option<Counterpart<'_>>| found.as_ref().map(|found| found.option.rank);
        before.is_some() && there(&self.was) == before && there(&self.former_first) == now
    }
}

/// `now` against `before`.
#[must_use]
pub fn changed<'a>(before: &'a Answer, now: &'a Answer) -> Changed<'a> {
    let as_was = |option: &RankedOption| counterpart(Side { brief: &now.brief, option }, before);
    let as_is = |option: &RankedOption| counterpart(Side { brief: &before.brief, option }, now);
    let first = [before.options.first(), now.options.first()];
    let otherwise = now.options.iter().filter_map(|option| Some((option, as_was(option)?)));
    let merged = before.options.iter().filter_map(|option| Some((option, as_is(option)?)));
    let is_another =
        |option: &RankedOption, is: &RankedOption| as_was(is).is_none_or(|was| was.option.rank != option.rank);
    let (former_first, was) = (first[0].and_then(as_is), first[1].and_then(as_was));
    let followed = former_first.as_ref().map(|is| is.option).zip(first[0]);
    let followed = followed.or(first[1].zip(was.as_ref().map(|was| was.option)));
    let against = |(is, was): (&'a RankedOption, &'a RankedOption)| {
        let (is_side, was_side) = (Side { brief: &now.brief, option: is }, Side { brief: &before.brief, option: was });
        (is, trade(is_side, was_side))
    };
    Changed {
        gained: now.options.iter().filter(|option| as_was(option).is_none()).collect(),
        lost: before.options.iter().filter(|option| as_is(option).is_none()).collect(),
        otherwise: otherwise.filter(|(_, was)| !was.is_whole()).collect(),
        merged: merged.filter(|(option, is)| !is.is_whole() && is_another(option, is.option)).collect(),
        first,
        former_first,
        was,
        followed: followed.map(against),
    }
}
