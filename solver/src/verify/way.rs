//! A route that must be there.

use elbowroom_model::Clearance;

use crate::routes::End;

/// A route that must be there.
#[derive(Debug, Clone, Copy)]
pub(super) struct Way {
    pub(super) from: End,
    pub(super) to: End,
    pub(super) rule: Clearance,
    /// What the rule asks, mm.
    pub(super) asks: f64,
}
