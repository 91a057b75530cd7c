//! A plan in its room, and who plays which part in it.

use crate::support::checker::plane::dot;

use super::room::Room;
use super::standing::Standing;

/// Unit vectors whose product is under this face each other: within 10 degrees, as the result format has it.
const OPPOSITE: f64 = -0.984_8;

/// A plan in its room.
#[derive(Debug, Clone)]
pub(crate) struct Scene {
    pub(crate) room: Room,
    pub(crate) kept: Kept,
    pub(crate) pieces: Vec<Standing>,
    /// The main seat, by its place in `pieces`; `None` where no seat stands.
    pub(crate) main: Option<usize>,
}

/// The clearances of the room that the judge asks for, mm.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Kept {
    pub(crate) seat_to_table: f64,
    pub(crate) walkway: f64,
}

impl Scene {
    pub(crate) fn main(&self) -> Option<&Standing> {
        self.pieces.get(self.main?)
    }

    /// What carries the screen: what hangs before what stands under it.
    pub(crate) fn screen(&self) -> Option<&Standing> {
        let hung = self.pieces.iter().find(|piece| piece.kind == "wall-screen");
        hung.or_else(|| self.pieces.iter().find(|piece| piece.is_screen()))
    }

    /// The table before the main seat.
    pub(crate) fn table(&self) -> Option<&Standing> {
        self.pieces.iter().find(|piece| piece.kind == "coffee-table")
    }

    pub(crate) fn seats(&self) -> Vec<&Standing> {
        self.pieces.iter().filter(|piece| piece.is_seat()).collect()
    }

    /// Every seat but the main one.
    pub(crate) fn others(&self) -> Vec<&Standing> {
        let others =
            self.pieces.iter().enumerate().filter(|(place, piece)| Some(*place) != self.main && piece.is_seat());
        others.map(|(_, piece)| piece).collect()
    }

    /// Whether the main seat and what carries the screen look at each other.
    pub(crate) fn faces_screen(&self) -> bool {
        self.main().zip(self.screen()).is_some_and(|(main, screen)| dot(main.facing, screen.facing) < OPPOSITE)
    }
}

/// Whether two pieces look at each other or away from each other.
pub(crate) fn opposite(one: &Standing, other: &Standing) -> bool {
    dot(one.facing, other.facing) < OPPOSITE
}
