//! The screens that the main seat sees: straight ahead, or from its return.

use super::edge::Edge;
use super::seat_front::{main_front, return_front};
use crate::arrangement::Role;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::group::{face, is_opposite};

/// A screen and the seat that watches it.
pub(super) struct Watched<'s> {
    pub(super) seat: &'s InPlace<'s>,
    pub(super) media: &'s InPlace<'s>,
    /// The front of the run that faces the screen.
    pub(super) run: Edge,
    /// The return faces it, and the main run sees it to a side.
    pub(super) beside: bool,
}

impl<'s> Watched<'s> {
    /// What the main seat watches: as the arrangement says, or, where it says nothing, as the pieces stand.
    pub(super) fn all(scene: &'s CheckedLayout<'_>) -> Vec<Self> {
        let Some(seat) = scene.main_seat() else { return Vec::new() };
        scene.screens().filter_map(|media| Self::of(scene, seat, media)).collect()
    }

    fn of(scene: &CheckedLayout<'_>, seat: &'s InPlace<'s>, media: &'s InPlace<'s>) -> Option<Self> {
        let beside = match role(scene, media) {
            Some(Role::Screen) => false,
            Some(Role::ScreenBeside) => true,
            Some(_) => return None,
            None if face(seat, media) => false,
            None if is_before_return(seat, media) => true,
            None => return None,
        };
        let run = if beside { return_front(seat.placed)? } else { main_front(seat.placed) };
        Some(Self { seat, media, run, beside })
    }

    /// The front of the screen.
    pub(super) fn screen(&self) -> Edge {
        main_front(self.media.placed)
    }
}

fn role(scene: &CheckedLayout<'_>, media: &InPlace<'_>) -> Option<Role> {
    let mut standings = scene.arrangement.standings.iter();
    standings.find(|standing| standing.piece == media.placed.piece).map(|standing| standing.role)
}

/// Whether the return faces the screen.
fn is_before_return(seat: &InPlace<'_>, media: &InPlace<'_>) -> bool {
    let run = return_front(seat.placed);
    run.is_some_and(|run| is_opposite(run.out, media.placed.facing) && run.ahead(main_front(media.placed).middle) > 0.0)
}
