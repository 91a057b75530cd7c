//! One arrangement as all of its searches see it, and what they learn for each other.

use super::barriers::Barriers;
use super::room_context::RoomContext;
use super::term_cells::TermCells;
use crate::arrangement::Arrangement;
use crate::routes::Floor;

/// One arrangement as all of its searches see it.
pub struct ArrangementContext<'a> {
    /// What the room gives to all of its arrangements.
    pub room: &'a RoomContext<'a>,
    /// The room as walkers see it.
    pub floor: &'a Floor,
    /// What is searched.
    pub arrangement: &'a Arrangement,
    /// What bars ways, as far as it is known.
    pub(super) barriers: Barriers,
    /// What the terms of a plan asked so far.
    pub(super) terms: TermCells,
}

impl<'a> ArrangementContext<'a> {
    /// The context of an arrangement, of which nothing is known yet.
    #[must_use]
    pub fn of(room: &'a RoomContext<'a>, floor: &'a Floor, arrangement: &'a Arrangement) -> Self {
        Self { room, floor, arrangement, barriers: Barriers::default(), terms: TermCells::default() }
    }
}
