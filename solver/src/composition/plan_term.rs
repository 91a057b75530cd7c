//! What a term of a plan is to the search: what it asks of one piece, of two.

use super::asked::Asked;
use super::heart::Heart;
use crate::rules::{Pose, RuleContext};

/// What a term looks at: the room, and the pieces that the others stand about.
#[derive(Debug, Clone, Copy)]
pub(crate) struct TermContext<'a> {
    pub(crate) room: RuleContext<'a>,
    pub(crate) heart: Heart<'a>,
}

/// One term of a plan, or a few that belong together.
pub(crate) trait PlanTerm: Sync {
    /// Of one piece, about the heart of the group.
    fn alone(&self, _context: &TermContext<'_>, _pose: &Pose) -> Vec<Asked> {
        Vec::new()
    }

    /// Of two pieces, about the heart of the group; asked once for each pair.
    fn between(&self, _context: &TermContext<'_>, _first: &Pose, _second: &Pose) -> Vec<Asked> {
        Vec::new()
    }
}
