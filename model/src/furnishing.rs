//! A room furnished with what may stand in for its pieces.

use crate::brief::Brief;
use crate::piece::{Piece, PieceId};

/// In how many ways a room of these pieces can be furnished, as it was asked for included.
pub(crate) fn furnishings(pieces: &[Piece]) -> usize {
    let rows = pieces.iter().enumerate().filter(|(place, piece)| is_first(*place, piece));
    rows.map(|(_, piece)| piece.instead.len() + 1).fold(1, usize::saturating_mul)
}

/// Whether a piece is alone in its row, or the first of it.
fn is_first(place: usize, piece: &Piece) -> bool {
    piece.alike.is_none_or(|first| first == PieceId(place))
}

impl Brief {
    /// The room with what may stand in for its pieces in their places, alone and together; not as it was asked for, and
    /// nothing where nothing may stand in. Ids are those of this brief in each of them.
    ///
    /// ```
    /// let text = "
    /// units: cm
    /// walls: [{ length: 420 }, { length: 360 }, { length: 420 }, { length: 360 }]
    /// pieces: [{ kind: corner-sofa, instead: [sofa] }, { kind: coffee-table }]
    /// ";
    /// let brief = elbowroom_model::scenario::read(text, None).map_err(|faults| format!("{faults:#?}"))?;
    /// let others = brief.other_furnishings();
    /// assert_eq!(others.len(), 1);
    /// assert_eq!(others[0].pieces[0].name, "sofa");
    /// assert_eq!(others[0].pieces[1], brief.pieces[1]);
    /// # Ok::<(), String>(())
    /// ```
    #[must_use]
    pub fn other_furnishings(&self) -> Vec<Self> {
        let mut all = vec![self.clone()];
        let rows = self.pieces().filter(|(id, piece)| is_first(id.0, piece) && !piece.instead.is_empty());
        for (first, piece) in rows {
            let with = |which: usize| all.iter().map(move |brief| brief.with_stand_in(first, which));
            let more: Vec<Self> = (0..piece.instead.len()).flat_map(with).collect();
            all.extend(more);
        }
        all.split_off(1)
    }

    /// The brief with the stand-in of place `which` for `first` and all pieces of its row.
    fn with_stand_in(&self, first: PieceId, which: usize) -> Self {
        let mut changed = self.clone();
        let is_of_row = |id: PieceId, piece: &Piece| id == first || piece.alike == Some(first);
        for (id, piece) in self.pieces().filter(|(id, piece)| is_of_row(*id, piece)) {
            let Some(stand_in) = piece.instead.get(which) else { continue };
            if let Some(place) = changed.piece_mut(id) {
                *place = stand_in.clone();
            }
            let seats = changed.pieces.iter_mut().flat_map(|other| &mut other.at);
            seats.filter(|seat| **seat == piece.name).for_each(|seat| seat.clone_from(&stand_in.name));
        }
        changed
    }
}
