//! The checked whole: all that the solver gets.

use crate::aim::SizesAim;
use crate::dimension::Dimension;
use crate::household::Household;
use crate::notice::Notice;
use crate::only::{Only, Wanted};
use crate::order::Order;
use crate::piece::{Piece, PieceId};
use crate::room::Room;
use crate::rules::{Clearance, Rules};
use crate::wishes::Wishes;

/// A measured room, what should stand in it, the rules in force and what counts.
///
/// A `Brief` that came out of the reader is sound: the outline is simple, clockwise and closed, items lie on their
/// walls, every name is unique, every range runs forward, and there is at least one seat.
#[derive(Debug, Clone, PartialEq)]
pub struct Brief {
    /// The room as closed.
    pub room: Room,
    /// The pieces, in the file's order, a row with a count spread out.
    pub pieces: Vec<Piece>,
    /// What the sizes of plans aim at, where a piece has no aim of its own.
    pub sizes: SizesAim,
    /// The clearances in force.
    pub rules: Rules,
    /// How much each criterion counts.
    pub wishes: Wishes,
    /// Assumptions made, corrections, cautions: what the reader of a result must be told.
    pub notices: Vec<Notice>,
    /// The decisions that alone are looked at, within what the file wants; empty: all of them.
    pub only: Vec<Only>,
    /// The decisions that the file wants, and those that it does not.
    pub wanted: Wanted,
    /// Who lives in the room.
    pub household: Household,
    /// Whom it is planned for.
    pub order: Order,
    /// The unit of length that the file speaks.
    pub units: crate::unit::Unit,
    /// The way in; `None` where nothing is said of it.
    pub way: Option<crate::way_in::Way>,
}

impl Brief {
    /// Whether a clearance is asked of this room: of dining tables' places only where the file says how many a table seats,
    /// between groups only where there are several, of the floor beside latches only where a profile or the file sets it.
    #[must_use]
    pub fn asks(&self, clearance: Clearance) -> bool {
        match clearance {
            Clearance::BetweenGroups => self.pieces.iter().any(|piece| piece.group.is_some()),
            Clearance::DiningPlaces => self.pieces.iter().any(|piece| piece.seats.is_some()),
            by_profile if by_profile.is_by_profile() => self.rules.figure(by_profile).figure.is_some(),
            _ => true,
        }
    }

    /// Whether both pieces belong to the same group.
    #[must_use]
    pub fn are_of_one_group(&self, one: PieceId, other: PieceId) -> bool {
        let group = |id: PieceId| self.piece(id).and_then(|piece| piece.group.as_deref());
        group(one) == group(other)
    }

    /// The piece named by `id`, `None` where the brief has no such piece.
    #[must_use]
    pub fn piece(&self, id: PieceId) -> Option<&Piece> {
        self.pieces.get(id.0)
    }

    /// The same, to change it.
    pub fn piece_mut(&mut self, id: PieceId) -> Option<&mut Piece> {
        self.pieces.get_mut(id.0)
    }

    /// The size that the file gives as the aim of `piece` in one dimension, mm; `None`: what is usual.
    #[must_use]
    pub fn aimed(&self, piece: &Piece, dimension: Dimension) -> Option<f64> {
        piece.aimed(dimension, self.sizes)
    }

    /// Pieces with their ids, in the file's order.
    pub fn pieces(&self) -> impl DoubleEndedIterator<Item = (PieceId, &Piece)> + ExactSizeIterator + Clone {
        self.pieces.iter().enumerate().map(|(place, piece)| (PieceId(place), piece))
    }

    /// The ids of all pieces, in the file's order.
    pub fn piece_ids(&self) -> impl DoubleEndedIterator<Item = PieceId> + ExactSizeIterator + Clone + use<> {
        (0..self.pieces.len()).map(PieceId)
    }

    /// The name of a piece; empty where the brief has no such piece.
    #[must_use]
    pub fn piece_name(&self, id: PieceId) -> &str {
        self.piece(id).map_or("", |piece| piece.name.as_str())
    }
}
