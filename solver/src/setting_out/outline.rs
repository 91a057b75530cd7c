//! The outline of a piece on the floor: one ring of corners, whatever parts it is made of.

use elbowroom_model::Point;

use super::tolerance::STRAIGHT;
use crate::geometry::joined;

/// Corners of a piece of these parts, clockwise seen from above, the first two the ends of its back; `facing` in degrees.
pub(super) fn corners(parts: &[Vec<Point>], facing: f64) -> Vec<Point> {
    let Some((main, rest)) = parts.split_first() else { return Vec::new() };
    let with = |ring: Vec<Point>, part: &Vec<Point>| joined(&ring, part).map_or(ring, |whole| without_straight(&whole));
    let mut ring = rest.iter().fold(main.clone(), with);
    ring.reverse();
    let facing = facing.to_radians();
    let ahead = Point::new(facing.cos(), facing.sin());
    let count = ring.len();
    // How far behind the middle an edge lies, if it runs across the way the piece faces.
    let behind = |edge: usize| {
        let (start, end) = (ring[edge], ring[(edge + 1) % count]);
        let along = (end - start).unit().unwrap_or_default();
        if along.dot(ahead).abs() > 0.5 { f64::INFINITY } else { start.dot(ahead) }
    };
    let back = (0..count).min_by(|one, other| behind(*one).total_cmp(&behind(*other))).unwrap_or(0);
    ring.rotate_left(back);
    ring
}

/// Two corners and their distance, by which a piece is found square: the diagonals of a rectangle; of runs joined,
/// across each outer corner.
pub(super) fn checks(ring: &[Point]) -> Vec<(usize, usize, f64)> {
    let count = ring.len();
    let across = |one: usize, other: usize| (one, other, (ring[other] - ring[one]).norm());
    if count == 4 {
        return vec![across(0, 2), across(1, 3)];
    }
    if count == 8 {
        // Of three runs, across both outer corners, which are the ends of the back.
        return vec![across(0, 2), across(1, 7)];
    }
    let edge = |place: usize| (ring[(place + 1) % count] - ring[place % count]).norm();
    let reach = |corner: usize| edge(corner + count - 1).min(edge(corner));
    let outer = (0..count).max_by(|one, other| reach(*one).total_cmp(&reach(*other)));
    let sides = |corner: usize| ((corner + count - 1) % count, (corner + 1) % count);
    outer.map(sides).map(|(one, other)| across(one.min(other), one.max(other))).into_iter().collect()
}

/// The ring without corners that go straight on.
fn without_straight(ring: &[Point]) -> Vec<Point> {
    let count = ring.len();
    let turns = |place: &usize| {
        let (before, here, after) = (ring[(place + count - 1) % count], ring[*place], ring[(place + 1) % count]);
        let along = (after - before).unit().unwrap_or_default();
        along.cross(here - before).abs() > STRAIGHT
    };
    (0..count).filter(turns).map(|place| ring[place]).collect()
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::{checks, corners};

    fn ring(corners: &[(f64, f64)]) -> Vec<Point> {
        corners.iter().map(|(x, y)| Point::new(*x, *y)).collect()
    }

    #[test]
    fn three_runs_make_eight_corners_and_two_checks() {
        let main = ring(&[(0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (0.0, 1.0)]);
        let rest = [(0.0, 2.5), (3.0, 2.0)].map(|(x, far)| ring(&[(x, 1.0), (x + 1.0, 1.0), (x + 1.0, far), (x, far)]));
        let [first, second] = rest;
        let whole = corners(&[main, first, second], 90.0);
        assert_eq!(whole.len(), 8, "{whole:?}");
        let mut across: Vec<f64> = checks(&whole).iter().map(|(_, _, across)| *across).collect();
        across.sort_by(f64::total_cmp);
        assert!(
            (across[0] - 4.0_f64.hypot(2.0)).abs() < 1e-9 && (across[1] - 4.0_f64.hypot(2.5)).abs() < 1e-9,
            "{across:?}"
        );
    }

    #[test]
    fn two_runs_make_six_corners() {
        let main = ring(&[(0.0, 0.0), (3.0, 0.0), (3.0, 1.0), (0.0, 1.0)]);
        let rest = ring(&[(0.0, 1.0), (1.0, 1.0), (1.0, 2.5), (0.0, 2.5)]);
        let whole = corners(&[main, rest], 90.0);
        assert_eq!(whole.len(), 6, "{whole:?}");
        assert!(whole.contains(&Point::new(1.0, 1.0)) && !whole.contains(&Point::new(0.0, 1.0)), "{whole:?}");
        let [(_, _, across)] = checks(&whole)[..] else { panic!("one check") };
        assert!((across - 3.0_f64.hypot(2.5)).abs() < 1e-9, "{across}");
    }
}
