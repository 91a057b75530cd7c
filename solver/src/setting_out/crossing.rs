//! Corners where two lengths from two fixed points cross.

use elbowroom_model::Point;

use super::measures::{Measures, Side};
use super::points::Points;
use super::sight::Sight;
use crate::geometry::angle_at;

/// Lengths that cross at a sharper angle than this, or a blunter one than its supplement, leave the place unsure, degrees.
const SHARPEST: f64 = 30.0;
/// A millimetre of tape weighs this much against a degree off the square.
const LENGTH_WEIGHS: f64 = 0.005;
/// A length shorter than this is no arc that a tape draws, mm (common practice, no source).
const SHORTEST: f64 = 300.0;
/// What such a length weighs, degrees.
const SHORT_WEIGHS: f64 = 60.0;
/// Points on different walls weigh as much as so many degrees: from two on one wall the place is on one side for sure.
const APART_WEIGHS: f64 = 10.0;

/// Two points by their place in the whole list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Pair {
    first: usize,
    second: usize,
}

/// The two points from which every place of `ring` is found surest; none where some place is seen from no two.
pub(super) fn pair(sight: &Sight<'_>, points: &Points, ring: &[Point]) -> Option<Pair> {
    best(sight, points, ring, SHARPEST)
}

/// The two points from which one place is found surest, however sharply they cross.
pub(super) fn any_pair(sight: &Sight<'_>, points: &Points, place: Point) -> Option<Pair> {
    best(sight, points, &[place], SHARPEST).or_else(|| best(sight, points, &[place], 0.0))
}

fn best(sight: &Sight<'_>, points: &Points, ring: &[Point], sharpest: f64) -> Option<Pair> {
    let seen: Vec<usize> = points
        .findable()
        .filter(|(_, point)| ring.iter().all(|place| sight.is_clear(point.place, *place)))
        .map(|(place, _)| place)
        .collect();
    let mut found: Option<(f64, Pair)> = None;
    for (order, &one) in seen.iter().enumerate() {
        for &other in &seen[order + 1..] {
            let pair = in_turn(points, one, other);
            let Some(cost) = cost(points, pair, ring, sharpest) else { continue };
            if found.is_none_or(|(least, _)| cost < least) {
                found = Some((cost, pair));
            }
        }
    }
    found.map(|(_, pair)| pair)
}

/// On one wall the left-hand end first: what is sought then lies on the right.
fn in_turn(points: &Points, one: usize, other: usize) -> Pair {
    let shared = points.walls_of(other).into_iter().find(|wall| points.walls_of(one).contains(wall));
    // The right-hand end of a wall is the first corner of the next one.
    match shared {
        Some(wall) if other == wall.0 && one != wall.0 => Pair { first: other, second: one },
        _ => Pair { first: one, second: other },
    }
}

fn cost(points: &Points, pair: Pair, ring: &[Point], sharpest: f64) -> Option<f64> {
    let (first, second) = (points.at(pair.first)?, points.at(pair.second)?);
    let mut worst = 0.0_f64;
    for place in ring {
        let crossing = angle_at(*place, first, second).to_degrees();
        if crossing < sharpest || crossing > 180.0 - sharpest {
            return None;
        }
        let [one, other] = [first, second].map(|point| (*place - point).norm());
        let short = if one.min(other) < SHORTEST { SHORT_WEIGHS } else { 0.0 };
        worst = worst.max((crossing - 90.0).abs() + LENGTH_WEIGHS * one.max(other) + short);
    }
    let together = points.walls_of(pair.first).iter().any(|wall| points.walls_of(pair.second).contains(wall));
    Some(worst + if together { 0.0 } else { APART_WEIGHS })
}

/// The measures of one place from two points.
pub(super) fn measures(points: &mut Points, pair: Pair, place: Point) -> Option<Measures> {
    let (first, second) = (points.at(pair.first)?, points.at(pair.second)?);
    let side = if (second - first).cross(place - first) > 0.0 { Side::Left } else { Side::Right };
    Some(Measures::Crossing {
        first: (points.told(pair.first), (place - first).norm()),
        second: (points.told(pair.second), (place - second).norm()),
        side,
        angle: angle_at(place, first, second).to_degrees(),
    })
}
