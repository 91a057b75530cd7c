//! A simple polygon as its convex hull less convex pockets.

use elbowroom_model::Point;
use elbowroom_model::ring::signed_area;

use super::Convex;
use super::tolerance::{ON_EAR, STRAIGHT};

/// The convex hull of a simple polygon and what has to be taken off it.
#[derive(Debug, Clone, PartialEq)]
pub struct HullAndPockets {
    /// The hull.
    pub hull: Convex,
    /// Convex polygons that make up the hull less the polygon; they touch and do not overlap.
    pub pockets: Vec<Convex>,
}

/// Hull and pockets of a simple polygon, corners in either direction.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::hull_and_pockets;
/// // An L: a rectangle less a corner of it, which leaves a triangle of the hull.
/// let ell = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (2.0, 2.0), (2.0, 4.0), (0.0, 4.0)].map(|(x, y)| Point::new(x, y));
/// let found = hull_and_pockets(&ell);
/// assert_eq!((found.hull.area(), found.pockets.len(), found.pockets[0].area()), (14.0, 1, 2.0));
/// ```
#[must_use]
pub fn hull_and_pockets(outline: &[Point]) -> HullAndPockets {
    let mut ring = outline.to_vec();
    if signed_area(&ring) < 0.0 {
        ring.reverse();
    }
    let on_hull = hull_corners(&ring);
    let hull = Convex::counter_clockwise(on_hull.iter().map(|i| ring[*i]));
    let mut pockets = Vec::new();
    for (place, &start) in on_hull.iter().enumerate() {
        let end = on_hull[(place + 1) % on_hull.len()];
        let count = (end + ring.len() - start) % ring.len();
        if count > 1 {
            // The polygon's corners from one hull corner to the next, seen from outside: clockwise about the pocket.
            let chain: Vec<Point> = (0..=count).rev().map(|k| ring[(start + k) % ring.len()]).collect();
            pockets.extend(convex_parts(&chain));
        }
    }
    HullAndPockets { hull, pockets }
}

/// A simple counter-clockwise polygon cut into convex parts: ears are cut off, then neighbours joined where that stays convex.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, convex_parts};
/// let ell = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (2.0, 2.0), (2.0, 4.0), (0.0, 4.0)].map(|(x, y)| Point::new(x, y));
/// assert_eq!(convex_parts(&ell).iter().map(Convex::area).sum::<f64>(), 12.0);
/// ```
#[must_use]
pub fn convex_parts(ring: &[Point]) -> Vec<Convex> {
    let mut parts: Vec<Vec<Point>> = Vec::new();
    for triangle in ears(ring) {
        match parts.iter_mut().find_map(|part| joined(part, &triangle).map(|whole| (part, whole))) {
            Some((part, whole)) => *part = whole,
            None => parts.push(triangle),
        }
    }
    parts.into_iter().map(Convex::counter_clockwise).collect()
}

/// Places in a counter-clockwise ring of the corners of its convex hull, in the ring's order.
fn hull_corners(ring: &[Point]) -> Vec<usize> {
    let lowest = |a: &usize, b: &usize| (ring[*a].x, ring[*a].y).partial_cmp(&(ring[*b].x, ring[*b].y));
    let mut order: Vec<usize> = (0..ring.len()).collect();
    order.sort_by(|a, b| lowest(a, b).unwrap_or(std::cmp::Ordering::Equal));
    let mut found = half_hull(ring, order.iter().copied());
    found.pop();
    let mut upper = half_hull(ring, order.iter().rev().copied());
    upper.pop();
    found.extend(upper);
    found.sort_unstable();
    found.dedup();
    found
}

fn half_hull(ring: &[Point], order: impl Iterator<Item = usize>) -> Vec<usize> {
    let mut chain: Vec<usize> = Vec::new();
    for next in order {
        while let [.., before, last] = chain[..] {
            let along = ring[next] - ring[before];
            if along.cross(ring[last] - ring[before]) < -STRAIGHT * along.norm() {
                break;
            }
            chain.pop();
        }
        chain.push(next);
    }
    chain
}

/// Ear clipping: n - 2 triangles, fewer where corners lie on a line.
fn ears(ring: &[Point]) -> Vec<Vec<Point>> {
    let mut left = ring.to_vec();
    let mut triangles = Vec::new();
    while left.len() > 3 {
        let count = left.len();
        let at =
            |i: usize| Corner { before: left[(i + count - 1) % count], tip: left[i], after: left[(i + 1) % count] };
        let Some(ear) = (0..count).find(|i| at(*i).is_ear_of(&left)) else {
            // Only corners on a line are left over.
            return triangles;
        };
        let Corner { before, tip, after } = at(ear);
        if signed_area(&[before, tip, after]) > STRAIGHT {
            triangles.push(vec![before, tip, after]);
        }
        left.remove(ear);
    }
    if signed_area(&left) > STRAIGHT {
        triangles.push(left);
    }
    triangles
}

/// A corner of a ring between its neighbours.
#[derive(Clone, Copy)]
struct Corner {
    before: Point,
    tip: Point,
    after: Point,
}

impl Corner {
    /// Whether it can be cut off the ring: it turns left, and no other corner lies in it.
    fn is_ear_of(self, ring: &[Point]) -> bool {
        let Self { before, tip, after } = self;
        let turn = (tip - before).cross(after - tip);
        if turn < 0.0 {
            return false;
        }
        let inside = |p: &Point| {
            [(before, tip), (tip, after), (after, before)].iter().all(|(a, b)| (*b - *a).cross(*p - *a) > -ON_EAR)
                && *p != before
                && *p != tip
                && *p != after
        };
        turn == 0.0 || !ring.iter().any(inside)
    }
}

/// Two counter-clockwise polygons that share an edge, joined, where the whole is convex.
fn joined(first: &[Point], second: &[Point]) -> Option<Vec<Point>> {
    let (n, m) = (first.len(), second.len());
    for i in 0..n {
        for k in 0..m {
            if first[i] == second[(k + 1) % m] && first[(i + 1) % n] == second[k] {
                let rest = (2..m).map(|step| second[(k + step) % m]);
                let mut whole: Vec<Point> = (0..n).map(|step| first[(i + 1 + step) % n]).collect();
                whole.extend(rest);
                return is_convex(&whole).then_some(whole);
            }
        }
    }
    None
}

fn is_convex(ring: &[Point]) -> bool {
    let n = ring.len();
    (0..n).all(|i| (ring[(i + 1) % n] - ring[i]).cross(ring[(i + 2) % n] - ring[(i + 1) % n]) >= -STRAIGHT)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(list: &[(f64, f64)]) -> Vec<Point> {
        list.iter().map(|(x, y)| Point::new(*x, *y)).collect()
    }

    #[test]
    fn hull_less_pockets_has_the_area_of_the_polygon() {
        // A breast that juts in, an alcove beside it, and an L: clockwise as rooms are.
        let rooms = [
            points(&[(0., 0.), (10., 0.), (10., -4.), (6., -4.), (6., -9.), (0., -9.)]),
            points(&[(0., 0.), (3., 0.), (3., -1.), (5., -1.), (5., 0.), (9., 0.), (9., -6.), (0., -6.)]),
            points(&[(0., 0.), (9., 2.), (7., -3.), (8., -7.), (5., -5.), (4., -8.), (3., -4.), (0., -6.)]),
        ];
        for room in rooms {
            let HullAndPockets { hull, pockets } = hull_and_pockets(&room);
            let taken: f64 = pockets.iter().map(Convex::area).sum();
            assert!((hull.area() - taken - signed_area(&room).abs()).abs() < 1e-9, "{room:?}: {pockets:?}");
            assert!(pockets.iter().all(|pocket| is_convex(pocket.corners())));
        }
    }

    #[test]
    fn a_convex_room_has_no_pockets() {
        let found = hull_and_pockets(&points(&[(0., 0.), (5., 0.), (10., 0.), (10., -4.), (0., -4.)]));
        assert!(found.pockets.is_empty());
        assert_eq!(found.hull.corners().len(), 4);
    }
}
