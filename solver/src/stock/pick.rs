//! Rows of the stock in the places of what a room asks for.

/// A row of the stock in a place of what a room asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Pick {
    /// Place in what the room asks for.
    pub(super) asked: usize,
    /// Row of the stock.
    pub(super) row: usize,
}

/// What stands in a room together, by places.
pub(super) type Set = Vec<Pick>;

/// Pieces that have no place together in a room.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct RefusedSet {
    /// They, or what a room cannot tell from them.
    pub(super) picks: Set,
    /// What may stand beside them and gives them no place.
    pub(super) beside: Vec<Pick>,
    /// It is proven; otherwise the work ended first, and they are not served since nobody knows.
    pub(super) is_decided: bool,
}
