//! The two measures that find a place on the floor.

use elbowroom_model::WallId;

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
