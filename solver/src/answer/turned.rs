//! How far a chair is turned, and toward what.

use elbowroom_model::{Brief, PieceId};

use super::option::RankedOption;

/// What is turned by less stands square, degrees: nobody sees it.
const SQUARE: f64 = 1.0;

/// A chair that stands turned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnedPiece {
    /// From the nearest way square to the main seat, degrees.
    pub degrees: f64,
    /// What it is turned to: the coffee table, or the main seat where there is none.
    pub toward: PieceId,
}

impl RankedOption {
    /// How a piece is turned that may be; `None` where it stands square.
    #[must_use]
    pub fn turned(&self, brief: &Brief, piece: PieceId) -> Option<TurnedPiece> {
        let placed = self.layout.of(piece).filter(|placed| placed.at_wall.is_none())?;
        let main = self.layout.of(self.main_seat)?;
        let off = main.facing.turn_to(placed.facing).to_degrees().rem_euclid(90.0);
        let degrees = off.min(90.0 - off);
        let is_table = |id: PieceId| brief.piece(id).is_some_and(|piece| piece.kind.stands_before_seat());
        let table = self.layout.placed.iter().map(|placed| placed.piece).find(|id| is_table(*id));
        let may_turn = brief.piece(piece).is_some_and(|piece| piece.turned.may_turn());
        (may_turn && degrees >= SQUARE).then_some(TurnedPiece { degrees, toward: table.unwrap_or(self.main_seat) })
    }
}
