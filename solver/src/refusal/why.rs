//! Why an arrangement is not among the options, as data.

use elbowroom_model::{Clearance, ItemId, PieceId, Rule};

use crate::arrangement::NoRoom;
use crate::layout::Size;
use crate::rules::Cause;
use crate::verify::Breach;
use crate::way_in::Failed;

/// An arrangement that is not among the options.
#[derive(Debug, Clone, PartialEq)]
pub struct Refusal {
    /// Stable name of the arrangement; `way` where a piece does not get in, whatever the arrangement.
    pub key: String,
    /// Why.
    pub why: Why,
}

/// Why an arrangement is not among the options.
#[derive(Debug, Clone, PartialEq)]
pub enum Why {
    /// There is less room than its pieces need at their least.
    NoRoom(NoRoom),
    /// Without this one rule there is a layout.
    OneRule(Box<Reason>),
    /// No rule alone is to blame: one reason for each rule that left no place, the most blamed first.
    SeveralRules(Vec<Reason>),
    /// The work allowed was used up before a layout was found or all were ruled out: nobody knows whether it fits.
    NotDecided,
    /// The layout that was found did not pass the second check.
    NotVerified(Breach),
    /// A piece that is needed does not get in at its least sizes.
    DoesNotGetIn(DoesNotGetIn),
}

/// A piece that does not get in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoesNotGetIn {
    /// Its place in the brief.
    pub piece: PieceId,
    /// Where it fails.
    pub fails: Failed,
}

/// A rule that leaves no place, with the figures that tell why.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reason {
    /// The rule, the piece that must obey and what it keeps from.
    pub cause: Cause,
    /// The least sizes of the piece, mm.
    pub least: Option<Size>,
    /// What the rule asks, where that is one length.
    pub asked: Option<AskedLength>,
    /// How much less it would have to ask, mm, where that is known.
    pub short_by: Option<f64>,
}

/// One length that a rule asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AskedLength {
    /// What sets it.
    pub by: Asked,
    /// mm.
    pub length: f64,
}

/// What sets the length that a rule asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Asked {
    /// A clearance.
    Clearance(Clearance),
    /// What stays clear of one heater or fire.
    KeepClear(ItemId),
}

impl Refusal {
    /// The rule that fails; [`Rule::Work`] where nothing was decided.
    #[must_use]
    pub fn rule(&self) -> Rule {
        match &self.why {
            Why::NoRoom(reason) => reason.rule,
            Why::OneRule(reason) => reason.cause.rule,
            Why::SeveralRules(reasons) => reasons.first().map_or(Rule::Room, |reason| reason.cause.rule),
            Why::NotDecided => Rule::Work,
            Why::NotVerified(breach) => breach.rule,
            Why::DoesNotGetIn(_) => Rule::Way,
        }
    }

    /// What is missing, mm; `None` where it is no one length.
    #[must_use]
    pub fn short_by(&self) -> Option<f64> {
        match &self.why {
            Why::NoRoom(reason) => Some(reason.short_by()),
            Why::OneRule(reason) => reason.short_by,
            Why::SeveralRules(_) | Why::NotDecided => None,
            Why::NotVerified(breach) => Some(breach.short_by),
            Why::DoesNotGetIn(stopped) => stopped.fails.short_by,
        }
    }
}
