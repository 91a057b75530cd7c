//! The least change that would bring in a needed piece that does not get in at its least sizes.

use elbowroom_model::{Brief, Rounding};

use super::cap::Blocked;
use crate::refusal::{Change, DoesNotGetIn, Lever, Refusal, Why};

impl Blocked {
    /// Why there is no option.
    pub(crate) fn refusal(&self) -> Refusal {
        let why = Why::DoesNotGetIn(DoesNotGetIn { piece: self.piece, fails: self.fails });
        Refusal { key: "way".to_owned(), why }
    }
}

/// For a single piece that does not get in: the brief with the least of its sizes lowered to what would, and that change.
/// Of several stopped pieces no single change helps.
pub(crate) fn eased(brief: &Brief, blocked: &[Blocked]) -> Option<(Brief, Change)> {
    let [one] = blocked else { return None };
    let (piece, (dimension, to)) = (brief.piece(one.piece)?, one.remedy?);
    let to = brief.units.rounded(to, Rounding::Down);
    let from = piece.range(dimension)?.least;
    let mut eased = brief.clone();
    let lowered = eased.piece_mut(one.piece)?;
    lowered.range_mut(dimension)?.least = to;
    Some((eased, Change { lever: Lever::GetsIn(one.piece, dimension), from, to }))
}
