//! An outline that diagonals check: the corners that fit best, by least squares, to all that was measured.
//!
//! A length or diagonal counts by what it is off; a stated corner by the arc that its angle is off at the mean wall length.
//! Corners that nobody stated are free. Where the measures do not fix the outline, free corners stay as near to where they
//! were drawn as the measures allow.

use super::{compass, trace};
use crate::point::Point;
use crate::survey::tolerance::{FIRST_DAMPING, LEAST_DAMPING, SINGULAR, STILL, WEAK};

/// Rounds of the adjustment; rooms need fewer than ten.
const ROUNDS: usize = 200;
/// All that was measured of an outline.
#[derive(Debug, Clone, PartialEq)]
pub struct Measures {
    /// Length of each wall, clockwise, mm.
    pub lengths: Vec<f64>,
    /// Inside angle at each wall's right-hand end, degrees, where it was stated.
    pub corners: Vec<Option<f64>>,
    /// Diagonals: from the left end of one wall to the left end of another, and how long, mm.
    pub diagonals: Vec<(usize, usize, f64)>,
}

/// The outline that fits best.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// Left-hand end of each wall; the first at the origin, the second on the x axis.
    pub corners: Vec<Point>,
    /// Length of each wall in the outline, mm.
    pub lengths: Vec<f64>,
    /// Inside angle at each wall's right-hand end in the outline, degrees.
    pub angles: Vec<f64>,
    /// Length of each diagonal in the outline, mm.
    pub diagonals: Vec<f64>,
    /// The measures fix the outline by themselves.
    pub fixed: bool,
}

/// The outline that fits best; `None` where the adjustment finds none.
///
/// ```
/// use elbowroom_model::survey::fit::{Measures, fit};
/// let measures = Measures {
///     lengths: vec![4000.0, 3000.0, 4000.0, 3000.0],
///     corners: vec![None; 4],
///     diagonals: vec![(0, 2, 5000.0)],
/// };
/// let outline = fit(&measures).ok_or("no outline")?;
/// assert!((outline.angles[0] - 90.0).abs() < 1e-6);
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn fit(measures: &Measures) -> Option<Fitted> {
    let start = drawn(measures);
    let mut problem = Problem::of(measures, &start);
    let fixed = problem.is_fixed(&start);
    if !fixed {
        problem.hold_free_corners(&start);
    }
    let corners = problem.solved(start)?;
    let count = corners.len();
    let lengths = (0..count).map(|wall| (corners[(wall + 1) % count] - corners[wall]).norm()).collect();
    let angles = (0..count).map(|wall| angle(&corners, wall).to_degrees()).collect();
    let diagonals = measures.diagonals.iter().map(|(from, to, _)| (corners[*to] - corners[*from]).norm()).collect();
    Some(Fitted { corners, lengths, angles, diagonals, fixed })
}

/// The corners as first drawn: stated angles as they are, the others share what is left.
fn drawn(measures: &Measures) -> Vec<Point> {
    let count = measures.lengths.len();
    let stated: f64 = measures.corners.iter().flatten().sum();
    let free = measures.corners.iter().filter(|corner| corner.is_none()).count();
    let share = if free > 0 { (trace::corner_sum(count) - stated) / free as f64 } else { 0.0 };
    let share = if (10.0..350.0).contains(&share) { share } else { 90.0 };
    let angles: Vec<f64> = measures.corners.iter().map(|corner| corner.unwrap_or(share)).collect();
    let closed = compass::close(&trace::vectors(&measures.lengths, &angles));
    let corners = trace::corners(&closed.legs);
    turned_onto_the_axis(&corners)
}

fn turned_onto_the_axis(corners: &[Point]) -> Vec<Point> {
    let along = corners.get(1).and_then(|second| (*second - corners[0]).unit()).unwrap_or(Point::new(1.0, 0.0));
    corners.iter().map(|corner| Point::new(corner.dot(along), along.cross(*corner))).collect()
}

/// Inside angle at the right-hand end of `wall`, radians, 0 to 2 pi.
fn angle(corners: &[Point], wall: usize) -> f64 {
    let count = corners.len();
    let (before, at, after) = (corners[wall], corners[(wall + 1) % count], corners[(wall + 2) % count]);
    let (first, second) = (at - before, after - at);
    // Straight on is half a turn; a turn to the left opens the corner further.
    std::f64::consts::PI + first.turn_to(second)
}

/// One thing that was measured.
enum Observation {
    Distance {
        from: usize,
        to: usize,
        length: f64,
    },
    /// An angle in radians and what an arc of one radian counts.
    Angle {
        wall: usize,
        angle: f64,
        weight: f64,
    },
}

struct Problem {
    count: usize,
    mean: f64,
    stated: Vec<Option<f64>>,
    observations: Vec<Observation>,
}

impl Problem {
    fn of(measures: &Measures, start: &[Point]) -> Self {
        let count = start.len();
        let mean = measures.lengths.iter().sum::<f64>() / count.max(1) as f64;
        let length = |(wall, length): (usize, &f64)| Observation::Distance {
            from: wall,
            to: (wall + 1) % count,
            length: *length,
        };
        let diagonal =
            |(from, to, length): &(usize, usize, f64)| Observation::Distance { from: *from, to: *to, length: *length };
        let corner = |(wall, corner): (usize, &Option<f64>)| {
            corner.map(|corner| Observation::Angle { wall, angle: corner.to_radians(), weight: mean })
        };
        let mut observations: Vec<Observation> = measures.lengths.iter().enumerate().map(length).collect();
        observations.extend(measures.diagonals.iter().map(diagonal));
        observations.extend(measures.corners.iter().enumerate().filter_map(corner));
        Self { count, mean, stated: measures.corners.clone(), observations }
    }

    /// Unknowns: the second corner's x, and both coordinates of every later one.
    fn unknowns(&self) -> usize {
        2 * self.count - 3
    }

    /// The unknown of a corner's coordinate (0: x, 1: y); `None` where it is held.
    fn unknown(corner: usize, axis: usize) -> Option<usize> {
        match (corner, axis) {
            (0, _) | (1, 1) => None,
            (1, _) => Some(0),
            _ => Some(2 * corner - 3 + axis),
        }
    }

    fn is_fixed(&self, corners: &[Point]) -> bool {
        self.observations.len() >= self.unknowns() && solved(self.normal(corners), 0.0).is_some()
    }

    fn hold_free_corners(&mut self, start: &[Point]) {
        let weight = WEAK * self.mean;
        let free = self.stated.iter().enumerate().filter(|(_, stated)| stated.is_none());
        let held = free.map(|(wall, _)| Observation::Angle { wall, angle: angle(start, wall), weight });
        self.observations.extend(held);
    }

    /// Gauss and Newton's steps, shortened (Levenberg, Marquardt) where a whole one makes the fit worse.
    fn solved(&self, mut corners: Vec<Point>) -> Option<Vec<Point>> {
        let mut damping = FIRST_DAMPING;
        let mut misfit = self.misfit(&corners);
        for _ in 0..ROUNDS {
            let step = solved(self.normal(&corners), damping);
            let Some(step) = step else {
                damping *= 10.0;
                continue;
            };
            let moved = self.moved(&corners, &step);
            let worth = self.misfit(&moved);
            let longest = step.iter().fold(0.0_f64, |most, one| most.max(one.abs()));
            if worth <= misfit {
                corners = moved;
                misfit = worth;
                damping = (damping / 10.0).max(LEAST_DAMPING);
            } else {
                damping *= 10.0;
            }
            if longest <= STILL * self.mean {
                break;
            }
        }
        corners.iter().all(|corner| corner.x.is_finite() && corner.y.is_finite()).then_some(corners)
    }

    fn moved(&self, corners: &[Point], step: &[f64]) -> Vec<Point> {
        let by =
            |corner, axis| Self::unknown(corner, axis).and_then(|unknown| step.get(unknown)).copied().unwrap_or(0.0);
        corners.iter().enumerate().map(|(place, corner)| *corner + Point::new(by(place, 0), by(place, 1))).collect()
    }

    fn misfit(&self, corners: &[Point]) -> f64 {
        self.observations.iter().map(|one| self.row(one, corners).1.powi(2)).sum()
    }

    /// The normal equations at these corners.
    fn normal(&self, corners: &[Point]) -> Normal {
        let size = self.unknowns();
        let (mut matrix, mut right) = (vec![vec![0.0; size]; size], vec![0.0; size]);
        for one in &self.observations {
            let (row, off) = self.row(one, corners);
            for (i, a) in &row {
                right[*i] -= a * off;
                for (j, b) in &row {
                    matrix[*i][*j] += a * b;
                }
            }
        }
        Normal { matrix, right }
    }

    /// How an observation changes with the unknowns, and by how much it is off now.
    fn row(&self, observation: &Observation, corners: &[Point]) -> (Vec<(usize, f64)>, f64) {
        match observation {
            Observation::Distance { from, to, length } => {
                let between = corners[*to] - corners[*from];
                let along = between.unit().unwrap_or(Point::new(1.0, 0.0));
                (sparse(&[(*to, along), (*from, -along)]), between.norm() - length)
            }
            Observation::Angle { wall, angle: stated, weight } => {
                let places = [*wall, (wall + 1) % self.count, (wall + 2) % self.count];
                let [before, at, after] = places.map(|place| corners[place]);
                let off = wrapped(angle(corners, *wall) - stated);
                let turn = |edge: Point| edge.left() * (*weight / edge.dot(edge).max(f64::MIN_POSITIVE));
                let (first, second) = (turn(at - before), turn(after - at));
                // The inside angle grows as the second edge turns left and the first turns right.
                let row = sparse(&[(places[0], first), (places[1], -first - second), (places[2], second)]);
                (row, off * weight)
            }
        }
    }
}

fn sparse(parts: &[(usize, Point)]) -> Vec<(usize, f64)> {
    let unknown = |corner, axis, by| Problem::unknown(corner, axis).map(|unknown| (unknown, by));
    let both = |(corner, by): &(usize, Point)| [unknown(*corner, 0, by.x), unknown(*corner, 1, by.y)];
    parts.iter().flat_map(both).flatten().collect()
}

fn wrapped(angle: f64) -> f64 {
    use std::f64::consts::{PI, TAU};
    (angle + PI).rem_euclid(TAU) - PI
}

/// Normal equations: a symmetric matrix and its right-hand side.
struct Normal {
    matrix: Vec<Vec<f64>>,
    right: Vec<f64>,
}

/// Solves the equations by Cholesky's factors; `None` where they are singular.
fn solved(equations: Normal, damping: f64) -> Option<Vec<f64>> {
    let Normal { mut matrix, mut right } = equations;
    let size = right.len();
    for column in 0..size {
        let whole = matrix[column][column];
        let pivot = whole * (1.0 + damping) - matrix[column][..column].iter().map(|one| one * one).sum::<f64>();
        if pivot.is_nan() || pivot <= SINGULAR * whole {
            return None;
        }
        let root = pivot.sqrt();
        matrix[column][column] = root;
        for below in column + 1..size {
            let dot: f64 = (0..column).map(|before| matrix[below][before] * matrix[column][before]).sum();
            matrix[below][column] = (matrix[below][column] - dot) / root;
        }
    }
    for row in 0..size {
        let dot: f64 = (0..row).map(|before| matrix[row][before] * right[before]).sum();
        right[row] = (right[row] - dot) / matrix[row][row];
    }
    for row in (0..size).rev() {
        let dot: f64 = (row + 1..size).map(|after| matrix[after][row] * right[after]).sum();
        right[row] = (right[row] - dot) / matrix[row][row];
    }
    Some(right)
}
