//! The fronts of a seat, and its back.

use elbowroom_model::Point;

use super::edge::Edge;
use crate::layout::{Placed, Size};
use crate::verify::checked_layout::{CheckedLayout, InPlace};

impl CheckedLayout<'_> {
    /// The seat that the arrangement is built about, where it stands.
    pub(super) fn main_seat(&self) -> Option<&InPlace<'_>> {
        self.seats().find(|seat| self.is_main(seat))
    }

    pub(super) fn is_main(&self, seat: &InPlace<'_>) -> bool {
        seat.placed.piece == self.arrangement.main_seat
    }
}

/// The front of the main run; of a corner sofa that of the bay, between the return and the free end.
pub(super) fn main_front(placed: &Placed) -> Edge {
    let (left, right) = placed.front();
    Edge::between(left, right, placed.facing)
}

/// The front of a return: its inner side, less the corner.
pub(super) fn return_front(placed: &Placed) -> Option<Edge> {
    let Size { depth, return_length, .. } = placed.size;
    placed.hand?;
    let inner = placed.size.return_depth.unwrap_or(depth);
    let at = |out: f64| placed.anchor + placed.along() * inner + placed.facing * out;
    Some(Edge::between(at(depth), at(return_length?), placed.along()))
}

/// The front of a second return, which looks at the first.
pub(super) fn second_return_front(placed: &Placed) -> Option<Edge> {
    let Size { width, depth, second_return, .. } = placed.size;
    placed.hand?;
    let at = |out: f64| placed.anchor + placed.along() * (width - depth) + placed.facing * out;
    Some(Edge::between(at(depth), at(second_return?), -placed.along()))
}

/// The back of the main run, looking behind.
pub(super) fn main_back(placed: &Placed) -> Edge {
    let half = placed.along() * (placed.size.width / 2.0);
    let middle = placed.back_middle();
    Edge::between(middle - half, middle + half, -placed.facing)
}

/// The back of a return, the corner included, looking behind it.
pub(super) fn return_back(placed: &Placed) -> Option<Edge> {
    placed.hand?;
    let end: Point = placed.anchor + placed.facing * placed.size.return_length?;
    Some(Edge::between(placed.anchor, end, -placed.along()))
}

/// The back of a second return.
pub(super) fn second_return_back(placed: &Placed) -> Option<Edge> {
    placed.hand?;
    let start = placed.anchor + placed.along() * placed.size.width;
    let end: Point = start + placed.facing * placed.size.second_return?;
    Some(Edge::between(start, end, placed.along()))
}
