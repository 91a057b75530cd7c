//! What a change of the scenario does to its result.

use crate::Outcome;
use crate::comparison::{Trade, trade};
use crate::outcome::OptionFound;

/// One result against another of the same room.
#[derive(Debug, Clone, PartialEq)]
pub struct Changed<'a> {
    /// Options that fit now and did not before, best first.
    pub gained: Vec<&'a OptionFound>,
    /// Options that fitted before and do not now, best first.
    pub lost: Vec<&'a OptionFound>,
    /// The first option before and now, where there is one.
    pub first: [Option<&'a OptionFound>; 2],
    /// What was first before, as it is now; `None` where it does not fit any more.
    pub former_first: Option<&'a OptionFound>,
    /// What is first now, as it was before; `None` where it did not fit.
    pub was: Option<&'a OptionFound>,
    /// One option that fits before and now, followed through the change: what was first before, or else what is first
    /// now; as it is now, and what that gives and takes against what it was.
    pub followed: Option<(&'a OptionFound, Trade)>,
}

/// `now` against `before`. Options are the same where their keys are.
#[must_use]
pub fn changed<'a>(before: &'a Outcome, now: &'a Outcome) -> Changed<'a> {
    let apart = |here: &'a Outcome, there: &'a Outcome| {
        here.options.iter().filter(|option| keyed(there, &option.key).is_none()).collect()
    };
    let first = [before.options.first(), now.options.first()];
    let former_first = first[0].and_then(|option| keyed(now, &option.key));
    let was = first[1].and_then(|option| keyed(before, &option.key));
    let followed = former_first.zip(first[0]).or(first[1].zip(was));
    Changed {
        gained: apart(now, before),
        lost: apart(before, now),
        first,
        former_first,
        was,
        followed: followed.map(|(now, before)| (now, trade(now, before))),
    }
}

fn keyed<'a>(outcome: &'a Outcome, key: &str) -> Option<&'a OptionFound> {
    outcome.options.iter().find(|option| option.key == key)
}
