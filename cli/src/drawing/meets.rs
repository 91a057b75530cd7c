//! Whether outlines on a sheet meet.

use super::tolerance::TOUCH;
use super::{At, edges};

/// Whether any of a block lies in an outline, which may be any simple one.
pub(super) fn lies_in(outline: &[At], block: &[At; 4]) -> bool {
    edges(outline).any(|edge| meet(&edge, block)) || block.iter().any(|corner| corner.is_in(outline))
}

/// Whether two convex outlines (a line is one of two corners) have more than an edge in common: no line along an edge of
/// either has them on its two sides.
pub(crate) fn meet(one: &[At], other: &[At]) -> bool {
    let reach = |ring: &[At], way: At| {
        let along = ring.iter().map(|corner| corner.dot(way));
        along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
    };
    edges(one).chain(edges(other)).all(|[start, end]| {
        let way = (end - start).right();
        let ((low, high), (least, most)) = (reach(one, way), reach(other, way));
        low < most - TOUCH && least < high - TOUCH || way.length() == 0.0
    })
}

/// Lines this near to each other that run the same way are seen as one, mm.
const NEAR: f64 = 0.6;
/// The sine of the angle up to which they run the same way.
const ASIDE: f64 = 0.2;

/// Whether a line lies along another, so that the two are seen as one.
pub(super) fn runs_along(line: [At; 2], other: [At; 2]) -> bool {
    let [way, along] = [line, other].map(|[from, to]| (to - from).unit());
    let (side, [from, to]) = (way.right(), line);
    let wide = side * NEAR;
    side.dot(along).abs() < ASIDE && meet(&other, &[from + wide, to + wide, to - wide, from - wide])
}
