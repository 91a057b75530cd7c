//! The most one dimension could be if every other piece gave way down to its least.

use elbowroom_model::{Brief, Dimension, PieceId};

use super::tolerance::NO_GAIN;
use crate::arrangement::Arrangement;
use crate::layout::Layout;
use crate::routes::Floor;
use crate::search::{Aim, Easing, Effort, RoomContext, search};

/// Which dimension is made as large as it can be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AloneAsked<'a> {
    /// The layout whose pieces stand.
    pub layout: &'a Layout,
    /// The piece, by its place in the brief.
    pub piece: PieceId,
    /// The dimension.
    pub dimension: Dimension,
    /// What is done about rules of comfort.
    pub easing: Easing<'a>,
    /// Nodes at most.
    pub nodes: usize,
}

/// The most that a dimension of a piece could be, mm, with the pieces of a layout in place; and the programs it took.
/// Never less than it is in that layout.
#[must_use]
pub fn alone(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    asked: AloneAsked<'_>,
) -> Option<(f64, usize)> {
    let AloneAsked { layout, piece, dimension, easing, nodes } = asked;
    let together = layout.of(piece)?.size.get(dimension)?;
    let range = range_of(room.brief, piece, dimension)?;
    if together >= range.1 - NO_GAIN {
        return Some((together, 0));
    }
    let to_beat = together - range.0 + NO_GAIN;
    let aim = Aim::Alone(piece, dimension, layout);
    let found = search(room, floor, arrangement, Effort { to_beat, easing, ..Effort::of(aim, nodes) });
    let size = found.found.map_or(together, |found| found.objective + range.0);
    Some((size.max(together).min(range.1), found.programs))
}

fn range_of(brief: &Brief, piece: PieceId, dimension: Dimension) -> Option<(f64, f64)> {
    let range = brief.piece(piece)?.range(dimension)?;
    Some((range.least, range.most))
}
