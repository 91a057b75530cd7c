//! How near the sweep of each door leaf comes to the furniture.

use elbowroom_model::{Brief, ItemId, Piece, PieceId, Point};

use crate::geometry::{Segment, gap_to_segment};
use crate::layout::Layout;

/// The piece that the leaf of a door comes nearest to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeafGap {
    /// The door.
    pub item: ItemId,
    /// The piece.
    pub piece: PieceId,
    /// The nearest places of the two: of what the leaf sweeps, of the piece.
    pub at: [Point; 2],
    /// How far they are apart, mm, to two millimetres: the sweep is told by chords.
    pub clear: f64,
}

/// The nearest piece to a leaf that sweeps the floor within `swept`; `None` where no piece stands in the room.
pub(crate) fn nearest(brief: &Brief, layout: &Layout, item: ItemId, swept: &[Point]) -> Option<LeafGap> {
    let stands = |piece: PieceId| brief.piece(piece).is_some_and(Piece::stops_walkers);
    let edges = || swept.iter().zip(swept.iter().cycle().skip(1)).map(|(start, end)| Segment::new(*start, *end));
    let pieces = layout.placed.iter().filter(|placed| stands(placed.piece));
    let parts = pieces.flat_map(|placed| placed.parts().into_iter().map(|part| (placed.piece, part)));
    let gaps = parts.flat_map(|(piece, part)| {
        edges().map(move |edge| {
            let gap = gap_to_segment(&part, edge);
            LeafGap { item, piece, at: [gap.at[1], gap.at[0]], clear: gap.clear }
        })
    });
    gaps.min_by(|one, other| one.clear.total_cmp(&other.clear))
}
