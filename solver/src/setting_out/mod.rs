//! Setting out: how a layout is marked on the floor, full size, with a tape and low-tack tape.
//!
//! From the room as measured and one option: the points that a tape starts from, two measures for each corner of each
//! piece, the strips to cut, what stands in for height, and what to walk through. No prose and no rounding to a tape's
//! step: that is the command line's. Nothing here moves a piece.

mod circle;
mod corner;
mod crossing;
mod heights;
mod measures;
mod offsets;
mod outline;
mod points;
mod sight;
mod squareness;
mod strips;
mod tolerance;
mod walk;

use elbowroom_model::{Brief, PieceId};

pub use circle::CircleOut;
pub use corner::CornerOut;
pub use heights::StandIn;
pub use measures::{Measures, Side};
pub use points::{FixedPoint, Mark};
pub use squareness::Checked;
pub use strips::{OVERLAP, Strip, Tape};
pub use walk::WalkStep;

use crate::answer::{OptionPiece, RankedOption};
use crate::setting_out::points::Points;
use crate::setting_out::sight::Sight;

/// A layout ready to be marked on the floor.
#[derive(Debug, Clone, PartialEq)]
pub struct SettingOut {
    /// What a tape starts from: every corner of the room in the order of its walls, then the jambs that are used.
    pub points: Vec<FixedPoint>,
    /// Length of each wall, from one point to the next, mm.
    pub walls: Vec<Checked>,
    /// Diagonals that, with the walls, leave the outline no freedom; in a room of four corners both.
    pub diagonals: Vec<Checked>,
    /// Pieces in the order in which they are marked.
    pub pieces: Vec<PieceOut>,
    /// Where a wheelchair turns, where a rule asks for room for it.
    pub circle: Option<CircleOut>,
    /// What all strips take.
    pub tape: Tape,
    /// What to try once all is marked.
    pub walk: Vec<WalkStep>,
}

/// One piece on the floor.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceOut {
    /// The piece, by its place in the brief.
    pub piece: PieceId,
    /// Its corners, clockwise seen from above; the first two are the ends of its back.
    pub corners: Vec<CornerOut>,
    /// From each corner to the next, in the order of the corners.
    pub strips: Vec<Strip>,
    /// Two corners and how far apart they must be if the piece is square, mm.
    pub checks: Vec<(usize, usize, f64)>,
    /// What stands in for its height.
    pub stand_in: StandIn,
}

/// How `option` is marked on the floor, with rolls of `roll` mm.
#[must_use]
pub fn setting_out(brief: &Brief, option: &RankedOption, roll: f64) -> SettingOut {
    let sight = Sight::of(&brief.room);
    let mut points = Points::of(&brief.room);
    let pieces = in_order(brief, option).into_iter();
    let pieces: Vec<PieceOut> = pieces.map(|piece| piece_out(brief, &sight, &mut points, piece)).collect();
    let circle = option.turning_circle.and_then(|circle| circle::circle_out(brief, &sight, &mut points, circle));
    let (walls, diagonals) = squareness::checks(&brief.room, &sight);
    let round = circle.iter().flat_map(|circle| &circle.strips);
    let tape = strips::tape(pieces.iter().flat_map(|piece| &piece.strips).chain(round), roll);
    SettingOut { points: points.into_used(), walls, diagonals, circle, tape, walk: walk::steps(brief, option), pieces }
}

/// Pieces at walls before those that stand free, seats before what serves them, rugs last: each is then measured from
/// what is bare, and lies beside what is marked.
fn in_order<'a>(brief: &'a Brief, option: &'a RankedOption) -> Vec<OptionPiece<'a>> {
    let turn = |one: &OptionPiece<'_>| {
        let kind = one.piece.kind;
        (kind.is_flat(), one.placed.at_wall.is_none(), !kind.is_seat(), !kind.carries_screen())
    };
    let mut pieces: Vec<OptionPiece<'_>> = option.pieces(brief).collect();
    pieces.sort_by_key(turn);
    pieces
}

fn piece_out(brief: &Brief, sight: &Sight<'_>, points: &mut Points, one: OptionPiece<'_>) -> PieceOut {
    let corners = outline::corners(&one.parts(), one.facing());
    PieceOut {
        piece: one.placed.piece,
        strips: strips::strips(&corners, brief.units),
        checks: outline::checks(&corners),
        stand_in: heights::stand_in(one.piece),
        corners: corner::measured(&brief.room, sight, points, one.placed.at_wall, &corners),
    }
}
