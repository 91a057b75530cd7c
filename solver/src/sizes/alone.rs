//! The most one dimension could be if every other piece gave way down to its least.

use elbowroom_model::{Brief, Dimension, PieceId};

use super::tolerance::NO_GAIN;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::routes::Floor;
use crate::search::{Aim, Effort, RoomContext, search};

/// The most that `dimension` of `piece` could be, mm, with the pieces of `layout` in place; and the programs it took.
/// Never less than it is in `layout`.
#[must_use]
pub fn alone(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    layout: &Layout,
    piece: PieceId,
    dimension: Dimension,
    nodes: usize,
) -> Option<(f64, usize)> {
    let together = layout.of(piece)?.size.get(dimension)?;
    let range = range_of(room.brief, piece, dimension)?;
    if together >= range.1 - NO_GAIN {
        return Some((together, 0));
    }
    let to_beat = together - range.0 + NO_GAIN;
    let aim = Aim::Alone(piece, dimension, layout);
    let found = search(room, floor, arrangement, Effort { aim, to_beat, nodes, without: None });
    let size = found.found.map_or(together, |found| found.objective + range.0);
    Some((size.max(together).min(range.1), found.programs))
}

fn range_of(brief: &Brief, piece: PieceId, dimension: Dimension) -> Option<(f64, f64)> {
    let range = brief.piece(piece)?.range(dimension)?;
    Some((range.least, range.most))
}
