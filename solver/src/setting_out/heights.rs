//! What stands in for a piece's height while only its outline is on the floor.

use elbowroom_model::Piece;
use elbowroom_model::{screen_height, screen_width};

/// From this height on a piece is shown by something upright instead of a stack, mm (common practice, no source).
const UPRIGHT_FROM: f64 = 1200.0;

/// What to put on the floor for a piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StandIn {
    /// It lies flat: a sheet.
    Flat,
    /// A seat: boxes along its back, to this height, mm.
    Back {
        /// mm.
        height: f64,
        /// Of two runs: both have backs.
        both: bool,
    },
    /// Boxes over the outline to this height, and what stands on them: a screen's width and height, mm.
    Block {
        /// mm.
        height: f64,
        /// mm.
        screen: Option<(f64, f64)>,
    },
    /// It hangs on its wall: heights above the floor of its lower edge, its middle and its upper edge, mm.
    Hung {
        /// mm.
        lower: f64,
        /// mm.
        middle: f64,
        /// mm.
        upper: f64,
    },
    /// Something upright of this height at its front, mm.
    Upright {
        /// mm.
        height: f64,
    },
}

/// What stands in for `piece`.
pub(super) fn stand_in(piece: &Piece) -> StandIn {
    let height = piece.height;
    if piece.kind.is_flat() {
        return StandIn::Flat;
    }
    if let Some(middle) = piece.hung_centre() {
        return StandIn::Hung { lower: piece.lower_edge(), middle, upper: piece.height_with_screen() };
    }
    if piece.kind.is_seat() {
        return StandIn::Back { height, both: has_two_backs(piece) };
    }
    if height >= UPRIGHT_FROM {
        return StandIn::Upright { height };
    }
    StandIn::Block { height, screen: piece.screen.map(|it| (screen_width(it), screen_height(it))) }
}

fn has_two_backs(piece: &Piece) -> bool {
    piece.kind.has_return() && !piece.chaise
}
