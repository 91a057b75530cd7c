//! What each term costs a plan that was found.

use elbowroom_model::{PieceId, Term};

use super::{Asked, TERMS, TermContext};
use crate::answer::{Thing, other};
use crate::rules::{Pose, With};

/// What costs less than this is not told.
const WORTH_TELLING: f64 = 1.0;

/// What one term costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TermCost {
    /// The term.
    pub term: Term,
    /// The piece that pays.
    pub piece: PieceId,
    /// What it stands to.
    pub with: With,
    /// By how much it is off beyond what is free, mm; 0 where that is no length.
    pub off: f64,
    /// What it costs, in millimetres of shortfall of a piece that counts 3.
    pub cost: f64,
}

impl TermCost {
    /// What the piece stands to.
    #[must_use]
    pub fn other(&self) -> Thing {
        other(self.piece, self.with)
    }
}

/// All terms that cost a plan something, what costs most first.
pub(crate) fn told(context: &TermContext<'_>, poses: &[&Pose], values: &[f64]) -> Vec<TermCost> {
    let mut asked: Vec<Asked> = Vec::new();
    for (order, pose) in poses.iter().enumerate() {
        asked.extend(TERMS.iter().flat_map(|term| term.alone(context, pose)));
        for other in &poses[..order] {
            asked.extend(TERMS.iter().flat_map(|term| term.between(context, other, pose)));
        }
    }
    let mut found: Vec<TermCost> = asked.iter().filter_map(|asked| asked.told(values)).collect();
    found.retain(|told| told.cost > WORTH_TELLING);
    found.sort_by(|one, other| other.cost.total_cmp(&one.cost).then(one.term.cmp(&other.term)));
    found
}
