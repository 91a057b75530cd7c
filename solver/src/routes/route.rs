//! A route as found.

use elbowroom_model::{Brief, Clearance, FixedId, ItemId, PieceId, Point, WallId};

/// One end of a route.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum End {
    /// A door, opening or window.
    Item(ItemId),
    /// A fixed thing that people use: the edge that they stand before.
    Fixed(FixedId),
    /// A seat, the front of a storage piece, or a desk, by its place in the brief.
    Piece(PieceId),
}

impl End {
    /// Its name in the room's own words.
    #[must_use]
    pub fn name(self, brief: &Brief) -> &str {
        match self {
            Self::Item(item) => brief.room.item_name(item),
            Self::Fixed(fixed) => brief.room.fixed_name(fixed),
            Self::Piece(piece) => brief.piece_name(piece),
        }
    }
}

/// What a shape that stops a walker belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ShapeId {
    /// A stretch of wall (a closed doorway in it counts as wall).
    Wall(WallId),
    /// A fixed thing.
    Fixed(FixedId),
    /// A radiator or fireplace.
    Item(ItemId),
    /// A part of a piece.
    Part {
        /// The piece, by its place in the brief.
        piece: PieceId,
        /// Which of its parts: 0 the main run or the whole, 1 the return.
        part: usize,
    },
    /// An end or the back of one of the two mouths.
    Mouth(End),
}

/// Where a route is narrowest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pinch {
    /// What stands on either side.
    pub between: [ShapeId; 2],
    /// The nearest places on the two, mm.
    pub at: [Point; 2],
}

/// A route of a finished layout.
#[derive(Debug, Clone, PartialEq)]
pub struct Route {
    /// Where it starts: an entrance.
    pub from: End,
    /// Where it leads.
    pub to: End,
    /// The rule that says how wide it must be: walkway or passage.
    pub rule: Clearance,
    /// What it must have, mm: the rule, or what the empty room gives where that is less and the end is no piece.
    pub needs: f64,
    /// Width of the widest disc that can travel it, mm; at most the narrower of its mouths as widened.
    pub width: f64,
    /// Where it is narrowest; `None` where nothing but its own mouths limits it.
    pub pinch: Option<Pinch>,
    /// The chain of shapes that stops anything wider, the pinch among them; empty where nothing but the mouths does.
    pub chain: Vec<ShapeId>,
    /// Shortest walk of the centre of a disc as wide as `needs`, mm, within 1 %; `None` where no such disc passes.
    pub length: Option<f64>,
}
