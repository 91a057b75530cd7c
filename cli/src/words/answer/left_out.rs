//! Why a piece found no room, in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, PieceId};

/// Why `piece` stands nowhere: there is no place worth it where the option `is_proven`, else none was found.
pub(crate) fn left_out(brief: &Brief, piece: PieceId, is_proven: bool) -> String {
    let piece = the(brief.piece_name(piece));
    if is_proven {
        format!("There is no place for {piece} that costs the other pieces less than it brings.")
    } else {
        format!("No place was found for {piece} within the work allowed.")
    }
}
