//! A set of pieces of the stock in a room: the room with these very pieces.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Piece, PieceId, SizeRange};

use super::{Asked, Owned};
use crate::shop::stand_in;

/// A room with the very pieces that serve it.
pub(super) struct Served {
    /// What serves has its own sizes and no others; the rest is there as it was asked for.
    pub(super) brief: Brief,
    /// What nothing serves, in the order of the brief.
    pub(super) unserved: Vec<PieceId>,
}

/// The room of `base` with the rows of the stock that serve what is `asked` for.
pub(super) fn served(
    base: &Brief,
    asked: &[Asked],
    stock: &[Owned],
    row_of: &dyn Fn(usize) -> Option<usize>,
) -> Served {
    let (mut brief, mut unserved) = (base.clone(), Vec::new());
    for (place, asked) in asked.iter().enumerate() {
        let listed = row_of(place).and_then(|row| stock.get(row)).map(|owned| &owned.piece);
        for id in &asked.pieces {
            match (listed, brief.piece_mut(*id)) {
                (Some(listed), Some(piece)) => *piece = in_place_of(piece, listed),
                _ => unserved.push(*id),
            }
        }
    }
    unserved.sort_unstable();
    Served { brief, unserved }
}

/// The piece as the stock has it. Of a corner sofa whose hand nobody says either is taken.
fn in_place_of(piece: &Piece, listed: &ListedPiece) -> Piece {
    let hands = if listed.hands.is_empty() { piece.hands.clone() } else { listed.hands.clone() };
    stand_in(piece, &ListedPiece { hands, ..listed.clone() })
}

impl Served {
    /// The room with what serves it, and nothing else.
    pub(super) fn alone(&self) -> Brief {
        self.with_any(&[])
    }

    /// The same with these of what nothing serves, which must stand and may have any size that is asked for.
    pub(super) fn with_any(&self, there: &[PieceId]) -> Brief {
        let mut brief = self.brief.clone();
        for id in there {
            if let Some(piece) = brief.piece_mut(*id) {
                (piece.needed, piece.steps) = (true, Vec::new());
            }
        }
        let absent = self.unserved.iter().filter(|id| !there.contains(id));
        absent.rev().fold(brief, |brief, id| crate::refusal::without(&brief, *id))
    }

    /// The same with all else where there is room for it, and what serves as large as that leaves room for: whatever lies
    /// between is served by one plan.
    pub(super) fn with_room_for_more(&self, base: &Brief) -> Brief {
        let mut brief = self.brief.clone();
        for (id, was) in base.pieces() {
            let Some(piece) = brief.piece_mut(id) else { continue };
            if self.unserved.contains(&id) {
                piece.needed = false;
                continue;
            }
            for dimension in Dimension::ALL {
                if let Some((range, was)) = piece.range_mut(*dimension).zip(was.range(*dimension)) {
                    let most = was.most.max(range.least);
                    *range = SizeRange { least: range.least, usual: was.usual.clamp(range.least, most), most };
                }
            }
        }
        brief
    }
}
