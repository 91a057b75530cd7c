//! What a search makes as large as it can be.

use elbowroom_model::{Dimension, PieceId};

use super::found::Found;
use crate::layout::Layout;

/// What is made as large as it can be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Aim<'a> {
    /// The size value of all pieces.
    Together,
    /// The size value of these pieces, by their places in the brief, all of which must stand; the others are left out.
    These(&'a [PieceId]),
    /// One dimension of one piece, while the same pieces stand as in this layout.
    Alone(PieceId, Dimension, &'a Layout),
    /// The order of the room, while every piece of this layout keeps at least its size.
    Tidy(&'a Layout),
    /// Nothing: any layout will do.
    Any,
    /// The plan that composes best, of all pieces.
    Plan,
    /// The same of these pieces, all of which must stand; the others are left out.
    PlanOf(&'a [PieceId]),
    /// The largest pieces, those of this plan under its stands, none smaller.
    Within(&'a Found),
}
