//! One side of a comparison, and which pieces of two briefs are one.

use elbowroom_model::article::several;
use elbowroom_model::{Brief, Piece, PieceId};

use crate::answer::RankedOption;

/// An option, and the brief that its ids are places in.
#[derive(Debug, Clone, Copy)]
pub struct Side<'a> {
    /// The brief.
    pub brief: &'a Brief,
    /// The option.
    pub option: &'a RankedOption,
}

impl<'a> Side<'a> {
    /// A piece or a wall of its brief.
    pub(super) const fn of<T: Copy>(&self, id: T) -> In<'a, T> {
        In { brief: self.brief, id }
    }
}

/// A piece, or a wall, in the brief that it is a place in.
#[derive(Debug, Clone, Copy)]
pub(super) struct In<'a, T> {
    pub(super) brief: &'a Brief,
    pub(super) id: T,
}

/// Whether two pieces are one or could change places: they have one name, or are of one row of the file. A row that holds
/// one piece only is still that row.
pub(super) fn are_of_one_row(one: In<'_, PieceId>, other: In<'_, PieceId>) -> bool {
    let (Some(one), Some(other)) = (one.brief.piece(one.id), other.brief.piece(other.id)) else { return false };
    let row = |piece: &Piece| several(&piece.name);
    one.name == other.name || ((one.alike.is_some() || other.alike.is_some()) && row(one) == row(other))
}
