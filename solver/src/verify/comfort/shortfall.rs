//! What a layout falls short of a rule of comfort, as it is told.

use elbowroom_model::Rule;

use super::measure::Measure;
use crate::answer::Thing;
use crate::rules::{Cause, With};

/// A rule of comfort that a layout keeps in part only.
#[derive(Debug, Clone, PartialEq)]
pub struct Shortfall {
    /// The rule.
    pub rule: Rule,
    /// The piece that lacks it or stands in its way, and the other; twice the same where there is no other.
    pub between: [Thing; 2],
    /// What the rule asks, mm; `None` where that is no one length.
    pub wanted: Option<f64>,
    /// What the layout gives, mm; `None` where that is no one length.
    pub given: Option<f64>,
}

impl Shortfall {
    /// As a cause: the piece, and what it lacks the rule from.
    pub(crate) fn cause(&self) -> Option<Cause> {
        let [one, other] = self.between;
        let (piece, other) = match (one, other) {
            (Thing::Piece(piece), other) | (other, Thing::Piece(piece)) => (piece, other),
            _ => return None,
        };
        let with = match other {
            Thing::Wall(wall) => With::Wall(wall),
            Thing::Item(item) => With::Item(item),
            Thing::Fixed(fixed) => With::Fixed(fixed),
            Thing::Piece(other) if other == piece => With::Itself,
            Thing::Piece(other) => With::Piece(other),
        };
        Some(Cause { rule: self.rule, piece, with })
    }

    pub(super) fn of(measure: Measure) -> Self {
        let Measure { rule, between, wanted, given, .. } = measure;
        let between = match between[..] {
            [first, second, ..] => [first, second],
            [only] => [only, only],
            // No measure is of nothing.
            [] => return Self { rule, between: [Thing::Piece(elbowroom_model::PieceId(0)); 2], wanted, given },
        };
        Self { rule, between, wanted, given }
    }
}
