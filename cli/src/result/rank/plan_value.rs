//! What a plan costs: terms of composition, and rules of comfort that it keeps in part only.

use elbowroom_model::{Brief, Rule};
use elbowroom_solver::answer::{Eased, Thing};
use elbowroom_solver::composition::TermCost;
use serde::Serialize;

use crate::words::answer::{eased as eased_words, term as term_words};

/// What one term costs.
#[derive(Debug, Serialize)]
pub(in crate::result) struct TermResult<'a> {
    /// Its name.
    term: &'static str,
    /// The piece that pays, and what it stands to.
    pieces: [&'a str; 2],
    /// By how much it is off beyond what is free, mm.
    off: f64,
    /// In millimetres of shortfall of a piece that counts 3.
    cost: f64,
    /// The same in a sentence.
    sentence: String,
}

impl<'a> TermResult<'a> {
    /// What is told of a term.
    pub(in crate::result) fn of(brief: &'a Brief, told: &TermCost) -> Self {
        let pieces = [Thing::Piece(told.piece), told.other()].map(|thing| thing.name(brief));
        Self { term: told.term.key(), pieces, off: told.off, cost: told.cost, sentence: term_words(brief, told) }
    }
}

/// A rule of comfort that is kept in part.
#[derive(Debug, Serialize)]
pub(super) struct EasedResult<'a> {
    /// The rule.
    rule: Rule,
    /// Names of the two.
    between: [&'a str; 2],
    /// What the rule asks, mm; null where that is no one length.
    wanted: Option<f64>,
    /// What the plan gives, mm.
    given: Option<f64>,
    /// The same in a sentence.
    sentence: String,
}

impl<'a> EasedResult<'a> {
    /// What is told of a rule that was eased.
    pub(super) fn of(brief: &'a Brief, eased: &Eased) -> Self {
        let between = eased.between.map(|thing| thing.name(brief));
        let sentence = eased_words(brief, eased);
        Self { rule: eased.rule, between, wanted: eased.wanted, given: eased.given, sentence }
    }
}
