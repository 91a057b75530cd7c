//! Two seats that are not one piece keep an arm's room between them, unless they stand back to back.

use elbowroom_model::Clearance;

use super::figure::figure;
use crate::arrangement::face;
use crate::rules::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};

/// Room between two seats.
#[derive(Debug)]
pub(super) struct BetweenSeats;

impl LayoutRule for BetweenSeats {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let Some(gap) = figure(context, Clearance::BetweenSeats) else { return Vec::new() };
        if !first.piece.kind.is_seat() || !second.piece.kind.is_seat() {
            return Vec::new();
        }
        let cause = Cause { rule: Clearance::BetweenSeats.into(), piece: first.id, with: With::Piece(second.id) };
        let back_to_back = face(first.stand.facing, second.stand.facing);
        let mut found = Vec::new();
        for one in &first.parts {
            for other in &second.parts {
                let mut alternatives = separation::apart(one, other, gap);
                if back_to_back {
                    alternatives.push(separation::beyond(one, other, -first.stand.facing, 0.0));
                }
                found.push(Requirement { cause, alternatives });
            }
        }
        found
    }
}
