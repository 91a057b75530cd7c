//! The ways two convex shapes can stand apart by a gap, as alternatives of linear rows.
//!
//! Two convex shapes are apart exactly when an edge of one of them separates them, or, where a gap is asked for, when a
//! corner of one is far enough from a corner of the other. So the alternatives are one for each edge normal of both,
//! and one sector for each corner between two normals.

use std::f64::consts::FRAC_1_SQRT_2;
use std::sync;

use elbowroom_model::Point;

use super::linear::LinearPoint;
use super::linear_outline::LinearOutline;
use super::nearly_square::nearly_square;
use super::requirement::{Alternative, Arc};
use super::tolerance::{SAME_DIRECTION, SAME_REACH};
use crate::geometry::Convex;
use crate::site::{ClearZone, Swing};

/// The ways `second` can stand `gap` away from `first`. Where they are square to each other but for what no tape shows,
/// rectangles about them stand in for them.
#[must_use]
pub(crate) fn apart(first: &LinearOutline, second: &LinearOutline, gap: f64) -> Vec<Alternative> {
    match nearly_square(first, second) {
        Some([first, second]) => exactly_apart(&first, &second, gap),
        None => exactly_apart(first, second, gap),
    }
}

fn exactly_apart(first: &LinearOutline, second: &LinearOutline, gap: f64) -> Vec<Alternative> {
    let directions = directions_between(first, second);
    if gap > 0.0
        && let Some(quarters) = quarters(&directions)
    {
        return quarter_ways(first, second, &directions, quarters, gap);
    }
    let mut ways: Vec<Alternative> = directions.iter().map(|m| beyond(first, second, *m, gap)).collect();
    if gap > 0.0 {
        let sectors = sectors(&directions);
        ways.extend(sectors.into_iter().map(|(from, to)| {
            let middle = (from + to).unit().unwrap_or(from);
            let between = sync::Arc::new(second.furthest(-middle).from(first.furthest(middle)));
            Arc { between, radius: gap, from, to }.as_alternative()
        }));
    }
    ways
}

/// The four directions that all of these are of, where they are square to one another.
fn quarters(directions: &[Point]) -> Option<[Point; 4]> {
    let first = *directions.first()?;
    let quarters = [first, first.left(), -first, first.right()];
    directions.iter().all(|m| quarters.iter().any(|quarter| same(*m, *quarter))).then_some(quarters)
}

/// The ways `second` can stand `gap` away within an eighth of a turn of each of four directions that the edges of both are
/// square to: in that direction alone it is then away by the gap's share of an eighth.
fn quarter_ways(
    first: &LinearOutline,
    second: &LinearOutline,
    edges: &[Point],
    quarters: [Point; 4],
    gap: f64,
) -> Vec<Alternative> {
    let diagonals = quarters.map(|quarter| (quarter + quarter.left()) * FRAC_1_SQRT_2);
    let between = diagonals.map(|middle| sync::Arc::new(second.furthest(-middle).from(first.furthest(middle))));
    let way = |i: usize| {
        let (towards, before, after) = (quarters[i], (i + 3) % 4, i);
        let along = between[after].along(towards);
        let arc = |corner: usize, from, to| Arc { between: sync::Arc::clone(&between[corner]), radius: gap, from, to };
        let mut finer = Vec::with_capacity(3);
        if edges.iter().any(|edge| same(*edge, towards)) {
            finer.push(Alternative::of_rows(vec![along.at_least(gap)]));
        }
        finer.push(arc(before, diagonals[before], towards).as_alternative());
        finer.push(arc(after, towards, diagonals[after]).as_alternative());
        Alternative { rows: vec![along.at_least(gap * FRAC_1_SQRT_2)], arc: None, finer, cost: 0.0 }
    };
    (0..4).map(way).collect()
}

/// `second` lies beyond `first` in direction `towards`, `gap` away.
#[must_use]
pub(crate) fn beyond(first: &LinearOutline, second: &LinearOutline, towards: Point, gap: f64) -> Alternative {
    let between = second.furthest(-towards).from(first.furthest(towards));
    Alternative::of_rows(vec![between.along(towards).at_least(gap)])
}

/// The ways `shape` can keep out of a fixed convex polygon.
#[must_use]
pub(crate) fn out_of_polygon(shape: &LinearOutline, polygon: &Convex) -> Vec<Alternative> {
    apart(&LinearOutline::fixed(polygon), shape, 0.0)
}

/// The ways `shape` can keep out of what a leaf sweeps.
#[must_use]
pub(super) fn out_of_swing(shape: &LinearOutline, swing: &Swing) -> Vec<Alternative> {
    let behind = swing.past_end();
    let round = Round { corner: swing.hinge, radius: swing.radius, from: swing.along, to: swing.end(), behind };
    // What the leaf sweeps first lies before a part that goes on from there, and a wall before no other.
    let before = swing.goes_on.then_some(-swing.inward);
    out_of_round(shape, &[round], before)
}

/// The ways `shape` can keep out of what is kept clear before a heater or fire.
#[must_use]
pub(super) fn out_of_clear_zone(shape: &LinearOutline, zone: &ClearZone) -> Vec<Alternative> {
    if !zone.fire {
        return out_of_polygon(shape, &zone.before());
    }
    let (left, right) = zone.front;
    let along = zone.inward.left();
    let round = |corner, from, to| Round { corner, radius: zone.reach, from, to, behind: -zone.inward };
    // The wall runs from its left to its right end in direction `along`, as seen from inside.
    let ends = [round(right, along, zone.inward), round(left, zone.inward, -along)];
    out_of_round(shape, &ends, None)
}

/// A sector of a disc, of a quarter turn at most.
struct Round {
    corner: Point,
    radius: f64,
    from: Point,
    to: Point,
    /// Outward normal of the flat side that a shape can stand behind.
    behind: Point,
}

impl Round {
    /// The furthest it reaches in `direction`.
    fn reach(&self, direction: Point) -> f64 {
        let (first, last) = turned(self.from, self.to);
        let rim = if first.cross(direction) >= 0.0 && direction.cross(last) >= 0.0 {
            self.radius
        } else {
            self.radius * first.dot(direction).max(last.dot(direction)).max(0.0)
        };
        self.corner.dot(direction) + rim
    }
}

/// The two directions in counter-clockwise order.
fn turned(from: Point, to: Point) -> (Point, Point) {
    if from.cross(to) >= 0.0 { (from, to) } else { (to, from) }
}

/// A direction in which a shape can stand beyond round things, and the halves of the sectors that adjoin it.
struct Side {
    towards: Point,
    /// The furthest that the round things reach.
    reach: f64,
    halves: Vec<Arc>,
}

impl Side {
    /// Beyond it or in one of the halves, the coarse of which goes before: beyond the chord of the widest half.
    fn way(self, shape: &LinearOutline) -> Alternative {
        let place = shape.furthest(-self.towards).along(self.towards);
        let beyond = Alternative::of_rows(vec![place.at_least(self.reach)]);
        if self.halves.is_empty() {
            return beyond;
        }
        let lost = |half: &Arc| half.radius * (1.0 - half.angle().cos());
        let coarse = self.reach - self.halves.iter().map(lost).fold(0.0, f64::max);
        let halves = self.halves.into_iter().map(Arc::as_alternative);
        let finer = std::iter::once(beyond).chain(halves).collect();
        Alternative { rows: vec![place.at_least(coarse)], arc: None, finer, cost: 0.0 }
    }
}

/// The ways `shape` can keep out of the convex hull of one or two sectors; `before`: outward normal of one more flat side.
fn out_of_round(shape: &LinearOutline, rounds: &[Round], before: Option<Point>) -> Vec<Alternative> {
    let reach = |m: Point| rounds.iter().map(|round| round.reach(m)).fold(f64::NEG_INFINITY, f64::max);
    let mut flats: Vec<Point> = shape.normals.iter().map(|normal| -*normal).collect();
    flats.extend(rounds.iter().flat_map(|round| [round.from, round.to]));
    flats.extend(rounds.iter().map(|round| round.behind));
    flats.extend(before);
    let side = |towards| Side { towards, reach: reach(towards), halves: Vec::new() };
    let mut sides: Vec<Side> = distinct(flats).into_iter().map(side).collect();
    let mut ways = Vec::new();
    for round in rounds {
        for sector in round_sectors(shape, round) {
            for (half, end) in sector.towards_ends() {
                let adjoins = |side: &&mut Side| {
                    let rim = round.corner.dot(side.towards) + round.radius;
                    same(side.towards, end) && rim > side.reach - SAME_REACH
                };
                match sides.iter_mut().find(adjoins) {
                    Some(side) => side.halves.push(half),
                    None => ways.push(half.as_alternative()),
                }
            }
        }
    }
    ways.extend(sides.into_iter().map(|side| side.way(shape)));
    ways
}

/// The sectors of one quarter disc, cut where the shape's own corner changes.
fn round_sectors(shape: &LinearOutline, round: &Round) -> Vec<Arc> {
    let (first, last) = turned(round.from, round.to);
    let inside = |m: &Point| first.cross(*m) > SAME_DIRECTION && m.cross(last) > SAME_DIRECTION;
    let mut cuts: Vec<Point> = shape.normals.iter().map(|normal| -*normal).filter(inside).collect();
    cuts.push(first);
    cuts.push(last);
    cuts.sort_by(|a, b| turn(first, *a).total_cmp(&turn(first, *b)));
    let sector = |pair: &[Point]| {
        let (from, to) = (pair[0], pair[1]);
        let middle = (from + to).unit().unwrap_or(from);
        let between = sync::Arc::new(shape.furthest(-middle).from(&LinearPoint::fixed(round.corner)));
        Arc { between, radius: round.radius, from, to }
    };
    cuts.windows(2).map(sector).collect()
}

/// Edge normals of `first` and inward normals of `second`: every direction in which an edge can separate them.
fn directions_between(first: &LinearOutline, second: &LinearOutline) -> Vec<Point> {
    let both = first.normals.iter().copied().chain(second.normals.iter().map(|normal| -*normal));
    let found = distinct(both.collect());
    if found.is_empty() {
        // Two points: any four directions a quarter apart will do.
        let x = Point::new(1.0, 0.0);
        return vec![x, x.left(), -x, -x.left()];
    }
    found
}

/// The sectors between neighbouring directions, none wider than a quarter.
fn sectors(directions: &[Point]) -> Vec<(Point, Point)> {
    let mut sorted = directions.to_vec();
    if let Some(&first) = directions.first() {
        let mut quarters = vec![first, first.left(), -first, first.right()];
        quarters.retain(|quarter| sorted.iter().all(|m| !same(*m, *quarter)));
        sorted.extend(quarters);
        sorted.sort_by(|a, b| turn(first, *a).total_cmp(&turn(first, *b)));
    }
    (0..sorted.len()).map(|i| (sorted[i], sorted[(i + 1) % sorted.len()])).collect()
}

/// Angle from `first` to `m`, counter-clockwise, 0 up to a full turn.
fn turn(first: Point, m: Point) -> f64 {
    let angle = first.turn_to(m);
    if angle < -SAME_DIRECTION { angle + std::f64::consts::TAU } else { angle }
}

fn same(a: Point, b: Point) -> bool {
    a.cross(b).abs() < SAME_DIRECTION && a.dot(b) > 0.0
}

/// The same directions, each once, in the order they came.
fn distinct(directions: Vec<Point>) -> Vec<Point> {
    let mut found: Vec<Point> = Vec::with_capacity(directions.len());
    for m in directions {
        if found.iter().all(|other| !same(*other, m)) {
            found.push(m);
        }
    }
    found
}
