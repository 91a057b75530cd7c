//! The decisions that a layout bears out: what an arrangement names and a layout leaves out decides nothing.

use elbowroom_model::{Brief, Hand, PieceId, SecondPlace};

use super::direction::alike;
use super::enumerate::Enumeration;
use super::naming;
use super::only;
use super::stand::{Arrangement, Choices};
use crate::layout::Layout;

impl Arrangement {
    /// Whether `piece` may not be left out: it is needed, or the options are held to a decision about it.
    #[must_use]
    pub fn must_stand(&self, brief: &Brief, piece: PieceId) -> bool {
        let standing = self.standings.iter().find(|standing| standing.piece == piece);
        brief.piece(piece).is_some_and(|piece| piece.needed)
            || standing.is_some_and(|standing| only::asks_for(brief, standing.role, piece))
    }

    /// The decisions as `layout` bears them out: no wall of a screen that was left out, no place of such a seat.
    #[must_use]
    pub fn choices_in(&self, layout: &Layout) -> Choices {
        let stands = |piece: PieceId| layout.of(piece).is_some();
        let mut choices = self.choices.clone();
        if !self.standings.iter().any(|standing| standing.role.is_screen() && stands(standing.piece)) {
            choices.media_wall = None;
        }
        for row in &mut choices.second_seats {
            row.retain(|seat| stands(seat.piece));
        }
        choices.second_seats.retain(|row| !row.is_empty());
        choices
    }
}

impl Choices {
    /// Whether these make the same option. A main seat that stands free and faces no screen is the same before every wall
    /// that runs the same way, and seats of one row of the file are the same.
    #[must_use]
    pub fn are_same_as(&self, other: &Self, brief: &Brief) -> bool {
        let Self { seat_back, faced, facing, hand, media_wall, second_seats: _ } = self;
        *seat_back == other.seat_back
            && *hand == other.hand
            && *media_wall == other.media_wall
            && alike(*facing, other.facing)
            && (media_wall.is_none() || *faced == other.faced)
            && self.seats_by_row(brief) == other.seats_by_row(brief)
    }

    /// Each second seat by the first of its row.
    fn seats_by_row(&self, brief: &Brief) -> Vec<(PieceId, SecondPlace, Option<Hand>)> {
        let row = |seat: PieceId| brief.piece(seat).and_then(|piece| piece.alike).unwrap_or(seat);
        let seats = self.second_seats.iter().flatten();
        let mut seats: Vec<_> = seats.map(|seat| (row(seat.piece), seat.place, seat.hand)).collect();
        seats.sort_unstable();
        seats
    }
}

impl Enumeration {
    /// The arrangement that makes these decisions, where one was looked at.
    #[must_use]
    pub fn with_choices(&self, brief: &Brief, choices: &Choices) -> Option<&Arrangement> {
        self.arrangements.iter().find(|arrangement| arrangement.choices.are_same_as(choices, brief))
    }

    /// `arrangement` with other decisions, under a key that is none of `more` and no other arrangement's.
    #[must_use]
    pub(crate) fn renamed(
        &self,
        brief: &Brief,
        arrangement: &Arrangement,
        choices: Choices,
        more: &[String],
    ) -> Arrangement {
        let has_screen = arrangement.standings.iter().any(|standing| standing.role.is_screen());
        let dropped = self.dropped.iter().map(|dropped| &dropped.arrangement);
        let known = self.arrangements.iter().chain(dropped).map(|arrangement| &arrangement.key);
        let mut taken: Vec<String> = known.chain(more).cloned().collect();
        let mut key = naming::key(brief, has_screen, &choices);
        let mut keys: Vec<&mut String> = taken.iter_mut().collect();
        keys.push(&mut key);
        naming::distinct(&mut keys);
        Arrangement { key, choices, ..arrangement.clone() }
    }
}
