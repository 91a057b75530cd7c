//! What makes a plan that keeps every rule a good one: terms that cost, each one file, as rows of the program.
//!
//! A term is asked of a piece about the heart of the group (main seat, screen, table), or of two pieces. What it costs
//! stands in `model/data/composition.yaml`. Whether a layout may be so at all is for `rules`; how a room is judged for a
//! client is for `criteria`.

mod aims;
mod asked;
mod at_wall;
mod axis;
mod beam;
mod heart;
mod pairs;
mod rug;
mod screen;
mod second_seats;
mod small;
mod storage;
mod term_cost;
mod told;
mod worth;

pub(crate) use aims::Aims;
pub(crate) use asked::Asked;
pub(crate) use heart::Heart;
pub use term_cost::TermCost;
pub(crate) use told::told;
pub(crate) use worth::worth;

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

/// Every term, in the order in which they are asked.
pub(crate) static TERMS: &[&dyn PlanTerm] = &[
    &screen::ScreenBefore,
    &beam::Beam,
    &axis::OnAxis,
    &second_seats::SecondSeats,
    &pairs::Pairs,
    &at_wall::AtWall,
    &small::AtSeatsEnd,
    &rug::UnderGroup,
    &storage::BesideStorage,
];
