//! What distances are measured between and ways lead to.

use elbowroom_model::{Brief, FixedId, ItemId, PieceId, WallId};

use crate::routes::{End, ShapeId};
use crate::rules::With;
use crate::site::BodyId;

/// Something that is or stands in a room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Thing {
    /// A wall.
    Wall(WallId),
    /// Something on a wall.
    Item(ItemId),
    /// What stands there for good.
    Fixed(FixedId),
    /// A piece.
    Piece(PieceId),
}

impl Thing {
    /// What a piece stands to or keeps from; itself where that is no thing.
    #[must_use]
    pub const fn kept_from(piece: PieceId, with: With) -> Self {
        match with {
            With::Wall(wall) => Self::Wall(wall),
            With::Item(item) => Self::Item(item),
            With::Fixed(fixed) => Self::Fixed(fixed),
            With::Piece(other) => Self::Piece(other),
            With::Itself | With::Route(_) => Self::Piece(piece),
        }
    }

    /// What it is called in the room's own words.
    #[must_use]
    pub fn name(self, brief: &Brief) -> &str {
        match self {
            Self::Wall(wall) => brief.room.wall_name(wall),
            Self::Item(item) => brief.room.item_name(item),
            Self::Fixed(fixed) => brief.room.fixed_name(fixed),
            Self::Piece(piece) => brief.piece_name(piece),
        }
    }
}

impl From<End> for Thing {
    fn from(end: End) -> Self {
        match end {
            End::Item(item) => Self::Item(item),
            End::Fixed(fixed) => Self::Fixed(fixed),
            End::Piece(piece) => Self::Piece(piece),
        }
    }
}

impl From<ShapeId> for Thing {
    fn from(shape: ShapeId) -> Self {
        match shape {
            ShapeId::Wall(wall) => Self::Wall(wall),
            ShapeId::Fixed(fixed) => Self::Fixed(fixed),
            ShapeId::Item(item) => Self::Item(item),
            ShapeId::Part { piece, .. } => Self::Piece(piece),
            ShapeId::Mouth(end) => end.into(),
        }
    }
}

impl From<BodyId> for Thing {
    fn from(body: BodyId) -> Self {
        match body {
            BodyId::Fixed(fixed) => Self::Fixed(fixed),
            BodyId::Item(item) => Self::Item(item),
        }
    }
}
