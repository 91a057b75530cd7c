//! Where a piece stands in the room as it is.

use crate::point::Point;
use crate::room::{Room, WallId};

/// Where a piece stands, as the file has it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StandsAt {
    /// With its back to a wall.
    Wall {
        /// The wall.
        wall: WallId,
        /// From the wall's left end, as one faces it from inside, to the piece's nearer end, mm.
        from: f64,
        /// From the wall to its back, mm.
        off: f64,
    },
    /// Anywhere in the room.
    Place {
        /// Middle of its back (of a corner sofa: of the main run's), plan coordinates, mm.
        back: Point,
        /// Unit vector that it faces.
        facing: Point,
    },
}

/// The back of a piece that stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BackOf {
    /// Its middle (of a corner sofa: of the main run's back), plan coordinates, mm.
    pub middle: Point,
    /// Unit vector from the back to the front.
    pub facing: Point,
}

impl StandsAt {
    /// Where the back of a piece so wide (mm) stands; `None` where the room has no such wall.
    #[must_use]
    pub fn back(&self, room: &Room, width: f64) -> Option<BackOf> {
        match *self {
            Self::Wall { wall, from, off } => {
                let wall = room.wall(wall)?;
                let middle = wall.point_at(from + width / 2.0) + wall.inward() * off;
                Some(BackOf { middle, facing: wall.inward() })
            }
            Self::Place { back, facing } => Some(BackOf { middle: back, facing }),
        }
    }
}
