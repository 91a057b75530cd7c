//! What an option gains over the room as it stands.

use elbowroom_model::Criterion;

use super::judged_room::JudgedRoom;
use crate::answer::{RankedOption, thousandth};

/// What an option gains in one criterion.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gain {
    /// Which.
    pub criterion: Criterion,
    /// The score of the room as it stands, 0 to 100.
    pub now: f64,
    /// The score of the option.
    pub then: f64,
    /// The score of the option less that of the room; under 0: it loses.
    pub by: f64,
}

/// What `option` gains over the room, criterion by criterion in the order they are told.
#[must_use]
pub fn gains(room: &JudgedRoom, option: &RankedOption) -> Vec<Gain> {
    let gain = |now: &crate::criteria::Judgement| {
        let then = option.judgement(now.criterion)?.score;
        Some(Gain { criterion: now.criterion, now: now.score, then, by: thousandth(then - now.score) })
    };
    room.judgements.iter().filter_map(gain).collect()
}
