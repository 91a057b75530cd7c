//! What one term costs a layout.

use elbowroom_model::{PieceId, Term};

use crate::answer::Thing;
use crate::rules::With;

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
    pub const fn other(&self) -> Thing {
        Thing::kept_from(self.piece, self.with)
    }
}

/// What costs most comes first.
pub(crate) fn dearest_first(told: &mut [TermCost]) {
    told.sort_by(|one, other| other.cost.total_cmp(&one.cost).then(one.term.cmp(&other.term)));
}
