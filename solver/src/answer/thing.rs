//! What distances are measured between and ways lead to.

use elbowroom_model::{Brief, FixedId, ItemId, WallId};

use crate::routes::{End, ShapeId};
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
    /// A piece, by its place in the brief.
    Piece(usize),
}

impl Thing {
    /// What it is called in the room's own words.
    #[must_use]
    pub fn name(self, brief: &Brief) -> &str {
        let room = &brief.room;
        let name = match self {
            Self::Wall(WallId(wall)) => room.walls.get(wall).map(|wall| &wall.name),
            Self::Item(ItemId(item)) => room.items.get(item).map(|item| &item.name),
            Self::Fixed(FixedId(fixed)) => room.fixed.get(fixed).map(|fixed| &fixed.name),
            Self::Piece(piece) => brief.pieces.get(piece).map(|piece| &piece.name),
        };
        name.map_or("", String::as_str)
    }
}

impl From<End> for Thing {
    fn from(end: End) -> Self {
        match end {
            End::Item(item) => Self::Item(item),
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
