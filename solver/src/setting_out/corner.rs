//! The two measures that set out a corner of a piece.

use elbowroom_model::{Point, Room, WallId};

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

/// Two measures that find a place; points by their place in the list that is told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Measures {
    /// Along a wall from a corner of the room, then square out from it.
    Offsets {
        /// The corner where the tape starts.
        from: usize,
        /// The wall.
        wall: WallId,
        /// Along it, mm.
        along: f64,
        /// Out from it, mm.
        out: f64,
    },
    /// Where two lengths from two points cross.
    Crossing {
        /// A point and the length from it, mm.
        first: (usize, f64),
        /// Another.
        second: (usize, f64),
        /// On which side of the line from the first to the second.
        side: Side,
        /// The angle at which they cross, degrees, 0 to 180: the nearer to 90, the surer.
        angle: f64,
    },
}

/// A side, as one stands on the first point and looks toward the second.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The left.
    Left,
    /// The right.
    Right,
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
