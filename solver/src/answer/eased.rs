//! A rule of comfort that no layout of an arrangement keeps, and that an option therefore gives in part.

use elbowroom_model::{Brief, PieceId, Rule};

use super::thing::Thing;
use crate::rules::{Cause, With};

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
    /// A cause that was eased, and what the plan gives of it.
    pub(crate) fn of(brief: &Brief, cause: &Cause, given: Option<f64>) -> Self {
        let wanted = cause.rule.clearance().map(|clearance| brief.rules.get(clearance));
        Self { rule: cause.rule, between: [Thing::Piece(cause.piece), other(cause.piece, cause.with)], wanted, given }
    }
}

/// What a piece stands to.
pub(crate) fn other(piece: PieceId, with: With) -> Thing {
    match with {
        With::Wall(wall) => Thing::Wall(wall),
        With::Item(item) => Thing::Item(item),
        With::Fixed(fixed) => Thing::Fixed(fixed),
        With::Piece(other) => Thing::Piece(other),
        // No rule of comfort is asked of a way.
        With::Itself | With::Route(_) => Thing::Piece(piece),
    }
}
