//! A piece with another size, one of its edges held.

use elbowroom_model::{Dimension, Point};

use crate::layout::{Placed, Size};

/// The piece with another size: its back edge and centre line held, of a corner sofa its corner and its backs; where
/// `side` is given (a table's, toward its seat) that side and the centre line square to it.
pub(super) fn resized(placed: &Placed, size: Size, side: Option<Point>) -> Placed {
    let mut placed = Placed { size: placed.size, ..placed.clone() };
    let (wider, deeper) = (size.width - placed.size.width, size.depth - placed.size.depth);
    if let (Some(side), None) = (side, placed.hand) {
        let (left, facing) = (placed.left(), placed.facing);
        if side.dot(facing).abs() >= side.dot(left).abs() {
            // The side toward the seat is its front or its back.
            if side.dot(facing) > 0.0 {
                placed.anchor = placed.anchor - facing * deeper;
            }
        } else {
            // It is an end: the width is held there, the depth about its middle.
            let held = if side.dot(left) > 0.0 { left } else { -left };
            placed.anchor = placed.anchor - held * (wider / 2.0) - facing * (deeper / 2.0);
        }
    }
    placed.size = size;
    placed
}

/// The ways in which a piece can grow by `by` in one dimension: its back edge and either one of its ends held, a table's
/// side toward its seat in place of its back.
pub(super) fn grown(placed: &Placed, dimension: Dimension, by: f64, side: Option<Point>) -> Vec<Placed> {
    let Some(present) = placed.size.get(dimension) else { return Vec::new() };
    let size = placed.size.with(dimension, present + by);
    let held = resized(placed, size, side);
    let moved = |placed: &Placed, way: Point| Placed { anchor: placed.anchor + way * by, ..placed.clone() };
    let across = match (placed.hand, dimension) {
        // The corner is held as it is; the other end where the corner gives way.
        (Some(_), Dimension::Width) => return vec![moved(&held, -placed.along()), held],
        (Some(_), Dimension::Return | Dimension::SecondReturn) => return vec![moved(&held, -placed.facing), held],
        (Some(_), Dimension::Depth | Dimension::ReturnDepth) => return vec![held],
        (None, Dimension::Width) => placed.left(),
        (None, _) => placed.facing,
    };
    let outward = side.unwrap_or(-placed.facing);
    if across.dot(outward).abs() > 0.5 {
        return vec![held];
    }
    vec![moved(&held, across * 0.5), moved(&held, across * -0.5)]
}
