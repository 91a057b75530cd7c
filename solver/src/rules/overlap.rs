//! Pieces do not overlap; rugs lie under anything, and what hangs hangs over what is lower.

use elbowroom_model::Rule;

use super::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};

/// Pieces do not overlap.
#[derive(Debug)]
pub(super) struct NoOverlap;

impl LayoutRule for NoOverlap {
    fn between(&self, _ground: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        if first.lies_under() || second.lies_under() || first.piece.hangs_over_or_under(&second.piece) {
            return Vec::new();
        }
        let cause = Cause { rule: Rule::Overlap, piece: first.id, with: With::Piece(second.id) };
        let pairs = first.parts.iter().flat_map(|a| second.parts.iter().map(move |b| (a, b)));
        pairs.map(|(a, b)| Requirement { cause, alternatives: separation::apart(a, b, 0.0) }).collect()
    }
}
