//! Places at one distance from two shapes: where a round thing held between both can stand.

use elbowroom_model::Point;

use super::crossing::is_on;
use super::tolerance::TANGENT;
use super::{Convex, Segment};

/// Places that lie at `distance` from both shapes, and some that lie nearer to one of them: a caller checks each. No place
/// at `distance` from both is missed where their outlines, moved outward by `distance`, cross.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Segment, equidistant};
/// let wall = |from: (f64, f64), to: (f64, f64)| Segment::new(Point::new(from.0, from.1), Point::new(to.0, to.1)).shape();
/// let found = equidistant(&wall((0.0, 3000.0), (0.0, 0.0)), &wall((0.0, 0.0), (4000.0, 0.0)), 750.0);
/// assert!(found.contains(&Point::new(750.0, 750.0)));
/// ```
#[must_use]
pub fn equidistant(first: &Convex, second: &Convex, distance: f64) -> Vec<Point> {
    let (first, second) = (MovedOut::of(first, distance), MovedOut::of(second, distance));
    let mut places = Vec::new();
    for &edge in &first.edges {
        places.extend(second.edges.iter().filter_map(|other| edges_meet(edge, *other)));
        places.extend(second.corners.iter().flat_map(|corner| edge_meets_circle(edge, *corner, distance)));
    }
    for &corner in &first.corners {
        places.extend(second.edges.iter().flat_map(|edge| edge_meets_circle(*edge, corner, distance)));
        places.extend(second.corners.iter().flat_map(|other| circles_meet(corner, *other, distance)));
    }
    places
}

/// A shape's outline moved outward: its edges as moved, and its corners, round each of which a circle runs.
struct MovedOut {
    edges: Vec<Segment>,
    corners: Vec<Point>,
}

impl MovedOut {
    fn of(shape: &Convex, distance: f64) -> Self {
        let moved = |edge: Segment| {
            let out = edge.vector().right().unit()? * distance;
            Some(Segment::new(edge.start + out, edge.end + out))
        };
        let mut edges: Vec<_> = shape.edges().filter_map(moved).collect();
        if shape.corners().len() == 2 {
            edges.extend(shape.edges().filter_map(|edge| moved(Segment::new(edge.end, edge.start))));
        }
        Self { edges, corners: shape.corners().to_vec() }
    }
}

fn edges_meet(edge: Segment, other: Segment) -> Option<Point> {
    let crossing = edge.crossing(other).filter(|crossing| crossing.is_near_both())?;
    Some(edge.at(crossing.of_first))
}

fn edge_meets_circle(edge: Segment, centre: Point, radius: f64) -> impl Iterator<Item = Point> {
    let along = edge.vector();
    let squared = along.dot(along);
    let nearest = (centre - edge.start).dot(along) / squared;
    let off = (edge.at(nearest) - centre).norm();
    // A line that touches the circle meets it once; rounding may say a hair beyond.
    let half = ((radius - off) * (radius + off)).max(0.0).sqrt() / squared.sqrt();
    let meets = off <= radius * (1.0 + TANGENT);
    let shares = [nearest - half, nearest + half].into_iter();
    shares.filter(move |share| meets && is_on(*share)).map(move |share| edge.at(share))
}

fn circles_meet(first: Point, second: Point, radius: f64) -> impl Iterator<Item = Point> {
    let apart = second - first;
    let half = apart.norm() / 2.0;
    let meets = half > 0.0 && half <= radius * (1.0 + TANGENT);
    let out = ((radius - half) * (radius + half)).max(0.0).sqrt();
    let middle = first + apart * 0.5;
    let side = apart.left().unit().unwrap_or_default() * out;
    [middle + side, middle - side].into_iter().filter(move |_| meets)
}

#[cfg(test)]
mod tests {
    use super::super::{Convex, gap};
    use super::equidistant;
    use elbowroom_model::Point;

    fn block(x: f64, y: f64, width: f64, depth: f64) -> Convex {
        let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
        Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    }

    #[test]
    fn a_circle_held_by_two_walls_of_a_corner_stands_at_its_radius_from_both() {
        let wall = |ends: [(f64, f64); 2]| Convex::counter_clockwise(ends.map(|(x, y)| Point::new(x, y)));
        let found = equidistant(&wall([(0.0, 0.0), (0.0, 3000.0)]), &wall([(0.0, 3000.0), (4000.0, 3000.0)]), 750.0);
        assert!(found.iter().any(|place| (*place - Point::new(750.0, 2250.0)).norm() < 1e-9));
    }

    #[test]
    fn places_between_two_blocks_are_as_far_from_one_as_from_the_other() {
        let (first, second) = (block(0.0, 0.0, 900.0, 500.0), block(1500.0, 800.0, 700.0, 700.0));
        let found = equidistant(&first, &second, 600.0);
        let at = |shape: &Convex, place: Point| gap(shape, &Convex::counter_clockwise([place])).clear;
        let mut held: Vec<Point> = Vec::new();
        for place in found {
            let touches = [&first, &second].iter().all(|shape| (at(shape, place) - 600.0).abs() < 1e-6);
            if touches && held.iter().all(|other| (*other - place).norm() > 1e-6) {
                held.push(place);
            }
        }
        assert_eq!(held.len(), 2, "{held:?}");
    }
}
