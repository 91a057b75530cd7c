//! Places at one distance from two shapes: where a round thing held between both can stand.

use elbowroom_model::Point;

use super::Convex;

/// Places that lie at `distance` from both shapes, and some that lie nearer to one of them: a caller checks each. No place
/// at `distance` from both is missed where their outlines, moved outward by `distance`, cross.
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
    edges: Vec<(Point, Point)>,
    corners: Vec<Point>,
}

impl MovedOut {
    fn of(shape: &Convex, distance: f64) -> Self {
        let moved = |(start, end): (Point, Point)| {
            let out = (end - start).right().unit()? * distance;
            Some((start + out, end + out))
        };
        let mut edges: Vec<_> = shape.edges().filter_map(moved).collect();
        if shape.corners().len() == 2 {
            edges.extend(shape.edges().filter_map(|(start, end)| moved((end, start))));
        }
        Self { edges, corners: shape.corners().to_vec() }
    }
}

/// Share of an edge's length by which a meeting may lie beyond its end.
const BEYOND: f64 = 1e-8;

fn edges_meet((a, b): (Point, Point), (c, d): (Point, Point)) -> Option<Point> {
    let (along, other) = (b - a, d - c);
    let turn = along.cross(other);
    let (t, s) = ((c - a).cross(other) / turn, (c - a).cross(along) / turn);
    let range = -BEYOND..=1.0 + BEYOND;
    (range.contains(&t) && range.contains(&s)).then(|| a + along * t)
}

fn edge_meets_circle((start, end): (Point, Point), centre: Point, radius: f64) -> impl Iterator<Item = Point> {
    let along = end - start;
    let squared = along.dot(along);
    let nearest = (centre - start).dot(along) / squared;
    let off = (start + along * nearest - centre).norm();
    // A line that touches the circle meets it once; rounding may say a hair beyond.
    let half = ((radius - off) * (radius + off)).max(0.0).sqrt() / squared.sqrt();
    let meets = off <= radius * (1.0 + BEYOND);
    let range = -BEYOND..=1.0 + BEYOND;
    let shares = [nearest - half, nearest + half].into_iter();
    shares.filter(move |share| meets && range.contains(share)).map(move |share| start + along * share)
}

fn circles_meet(first: Point, second: Point, radius: f64) -> impl Iterator<Item = Point> {
    let apart = second - first;
    let half = apart.norm() / 2.0;
    let meets = half > 0.0 && half <= radius * (1.0 + BEYOND);
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
