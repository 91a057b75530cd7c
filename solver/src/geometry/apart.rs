//! The clear distance of two convex shapes, by `geo`.

use geo::{Coord, Distance, Euclidean, Line};

use super::Convex;
use super::meets::{flat, meets};

/// Clear distance of two convex shapes (points and segments included), mm; 0 where they touch or overlap.
///
/// [`super::gap`] says where the two are nearest as well; this one is a second way to the same length.
#[must_use]
pub fn apart(first: &Convex, second: &Convex) -> f64 {
    if meets(first, second) {
        return 0.0;
    }
    let others = lines(second);
    let nearest =
        |line: &Line<f64>| others.iter().map(|other| Euclidean.distance(line, other)).fold(f64::INFINITY, f64::min);
    lines(first).iter().map(nearest).fold(f64::INFINITY, f64::min)
}

fn lines(shape: &Convex) -> Vec<Line<f64>> {
    if let Some(line) = flat(shape) {
        return vec![line];
    }
    let edges = shape.edges();
    edges
        .map(|edge| Line::new(Coord { x: edge.start.x, y: edge.start.y }, Coord { x: edge.end.x, y: edge.end.y }))
        .collect()
}
