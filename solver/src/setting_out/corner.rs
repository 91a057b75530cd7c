//! The two measures that set out a corner of a piece.

use elbowroom_model::{Point, Room, WallId};

use super::measures::Measures;
use super::points::Points;
use super::sight::Sight;
use super::{crossing, offsets};

/// A corner on the floor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CornerOut {
    /// Where, plan coordinates.
    pub place: Point,
    /// How it is found.
    pub measures: Measures,
}

/// How each corner of `ring` is found: all from one wall where that can be done (the one that a piece stands at before
/// others), else all from two points, else each in the way that suits it.
pub(super) fn measured(
    room: &Room,
    sight: &Sight<'_>,
    points: &mut Points,
    at_wall: Option<WallId>,
    ring: &[Point],
) -> Vec<CornerOut> {
    let baseline = offsets::baseline(room, sight, points, at_wall, ring);
    let pair = crossing::pair(sight, points, ring);
    let mut found = Vec::with_capacity(ring.len());
    for &place in ring {
        let one = [place];
        let measures = baseline
            .map(|baseline| offsets::measures(room, points, baseline, place))
            .or_else(|| pair.and_then(|pair| crossing::measures(points, pair, place)))
            .or_else(|| {
                let baseline = offsets::baseline(room, sight, points, at_wall, &one)?;
                Some(offsets::measures(room, points, baseline, place))
            })
            .or_else(|| crossing::measures(points, crossing::any_pair(sight, points, place)?, place));
        found.extend(measures.map(|measures| CornerOut { place, measures }));
    }
    found
}
