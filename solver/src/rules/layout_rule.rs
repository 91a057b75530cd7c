//! What a rule is to the search: what it asks of the room, of one piece, of two.

use super::{Pose, Requirement, RuleContext};

/// What one rule asks of a layout.
pub trait LayoutRule: Sync {
    /// Of the room as such.
    fn room(&self, _ground: &RuleContext<'_>) -> Vec<Requirement> {
        Vec::new()
    }

    /// Of one piece by itself.
    fn alone(&self, _ground: &RuleContext<'_>, _pose: &Pose) -> Vec<Requirement> {
        Vec::new()
    }

    /// Of two pieces; asked once for each pair, in either order.
    fn between(&self, _ground: &RuleContext<'_>, _first: &Pose, _second: &Pose) -> Vec<Requirement> {
        Vec::new()
    }
}
