//! The clear distance of two convex shapes, by `geo`.

use geo::{Coord, Distance, Euclidean, Line};

use super::Convex;
use super::meets::{flat, meets};

/// Clear distance of two convex shapes (points and segments included), mm; 0 where they touch or overlap.
///
/// [`super::gap`] says where the two are nearest as well; this one is a second way to the same length.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, apart};
/// # let block = |x: f64, y: f64, width: f64, depth: f64| {
/// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
/// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
/// # };
/// let (sofa, table) = (block(0.0, 0.0, 900.0, 900.0), block(1200.0, 1300.0, 500.0, 500.0));
/// assert_eq!(apart(&sofa, &table), 500.0);
/// ```
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
