//! Whether a disc can travel from a mouth to a target: squares of floor, halved where it is not plain whether the disc
//! fits, until a way through free squares is found or none is left.

use std::collections::VecDeque;

use super::plane::{P, Polygon, add, cross, dot, length, minus, to_shape, unit};

/// Squares are not halved below this, mm: then their middle decides.
const FINEST: f64 = 0.8;
/// How far before a mouth the disc sets out, mm.
const STEP: f64 = 2.0;

/// A stretch of edge that is entered from before.
#[derive(Clone, Copy)]
pub(crate) struct Gate {
    pub(crate) ends: [P; 2],
    pub(crate) out: P,
}

/// Where the disc is bound.
pub(crate) enum Target {
    Gate(Gate),
    Place(P),
}

impl Gate {
    fn along(&self) -> P {
        unit(minus(self.ends[1], self.ends[0]))
    }

    /// Its own coordinates of a place: along the stretch from its first end, and before it.
    fn own(&self, p: P) -> (f64, f64) {
        let from = minus(p, self.ends[0]);
        (dot(from, self.along()), dot(from, self.out))
    }

    /// The part of a shape before its line.
    fn cut(&self, shape: &[P]) -> Option<Polygon> {
        let depth = |p: P| self.own(p).1;
        if shape.iter().all(|&p| depth(p) <= 1e-6) {
            return None;
        }
        let mut part = Polygon::new();
        for (i, &a) in shape.iter().enumerate() {
            let b = shape[(i + 1) % shape.len()];
            if depth(a) >= 0.0 {
                part.push(a);
            }
            if depth(a) * depth(b) < 0.0 && (shape.len() > 2 || i == 0) {
                part.push(add(a, minus(b, a), depth(a) / (depth(a) - depth(b))));
            }
        }
        Some(part)
    }
}

struct Floor {
    gates: Vec<Gate>,
    radius: f64,
    /// Shapes that stop the disc: for each set of mouths that the centre is straight before.
    shapes: Vec<Vec<Polygon>>,
}

#[derive(Clone, Copy, PartialEq)]
enum State {
    Free,
    Blocked,
    Unsure,
}

#[derive(Clone)]
struct Square {
    middle: P,
    half: f64,
    state: State,
    near: Vec<usize>,
    halved: bool,
}

impl Floor {
    fn new(shapes: &[Polygon], gates: Vec<Gate>, radius: f64) -> Self {
        let before = |set: usize| {
            let on = |i: usize| set >> i & 1 == 1;
            let cut = |shape: &Polygon| {
                gates
                    .iter()
                    .enumerate()
                    .filter(|(i, _)| on(*i))
                    .try_fold(shape.clone(), |part, (_, gate)| gate.cut(&part))
            };
            let mut all: Vec<Polygon> = shapes.iter().filter_map(cut).collect();
            for (i, gate) in gates.iter().enumerate() {
                if on(i) {
                    all.extend(gate.ends.map(|end| vec![end]));
                } else {
                    all.extend(cut(&gate.ends.to_vec()));
                }
            }
            all
        };
        let shapes = (0..1 << gates.len()).map(before).collect();
        Self { gates, radius, shapes }
    }

    /// The sets of mouths that places of the square may be straight before.
    fn sets(&self, middle: P, half: f64) -> Vec<usize> {
        let mut sets = vec![0];
        for (i, gate) in self.gates.iter().enumerate() {
            let (x, y) = gate.own(middle);
            let reach = half * (gate.out[0].abs() + gate.out[1].abs());
            let width = length(minus(gate.ends[1], gate.ends[0]));
            let off = x + reach < 0.0 || x - reach > width || y + reach < 0.0 || y - reach > self.radius;
            let on = x - reach >= 0.0 && x + reach <= width && y - reach >= 0.0 && y + reach <= self.radius;
            if on {
                sets.iter_mut().for_each(|set| *set |= 1 << i);
            } else if !off {
                sets.extend(sets.clone().iter().map(|set| set | 1 << i));
            }
        }
        sets
    }

    fn clear(&self, p: P, set: usize) -> f64 {
        self.shapes[set].iter().map(|shape| to_shape(p, shape)).fold(f64::INFINITY, f64::min)
    }

    fn state(&self, middle: P, half: f64) -> State {
        let reach = half * std::f64::consts::SQRT_2;
        let clear: Vec<f64> = self.sets(middle, half).iter().map(|&set| self.clear(middle, set)).collect();
        if clear.iter().all(|clear| *clear >= self.radius + reach) {
            return State::Free;
        }
        if clear.iter().all(|clear| *clear <= self.radius - reach) {
            return State::Blocked;
        }
        if half > FINEST {
            return State::Unsure;
        }
        let set = self.sets(middle, 0.0).into_iter().max().unwrap_or(0);
        if self.clear(middle, set) >= self.radius { State::Free } else { State::Blocked }
    }

    fn square(&self, middle: P, half: f64) -> Square {
        Square { middle, half, state: self.state(middle, half), near: Vec::new(), halved: false }
    }
}

/// Whether a disc of `diameter` can travel from the mouth to the target.
pub(crate) fn travels(shapes: &[Polygon], from: &Gate, to: &Target, diameter: f64) -> bool {
    if diameter <= 0.0 {
        return true;
    }
    let gates = match to {
        Target::Gate(to) => vec![*from, *to],
        Target::Place(_) => vec![*from],
    };
    let floor = Floor::new(shapes, gates, diameter / 2.0);
    let mut squares = coarse(&floor, shapes);
    let ends = |gate: &Gate| gate.ends.map(|end| add(end, gate.out, STEP)).to_vec();
    let start = ends(from);
    let goal = match to {
        Target::Gate(to) => ends(to),
        Target::Place(place) => vec![*place, *place],
    };
    loop {
        let Some(way) = way(&squares, &start, &goal) else { return false };
        let unsure: Vec<usize> = way.into_iter().filter(|&i| squares[i].state == State::Unsure).collect();
        if unsure.is_empty() {
            return true;
        }
        for square in unsure {
            halve(&floor, &mut squares, square);
        }
    }
}

fn coarse(floor: &Floor, shapes: &[Polygon]) -> Vec<Square> {
    const COUNT: usize = 12;
    let (x, y) = shapes
        .iter()
        .flatten()
        .fold(((f64::INFINITY, f64::NEG_INFINITY), (f64::INFINITY, f64::NEG_INFINITY)), |(x, y), p| {
            ((x.0.min(p[0]), x.1.max(p[0])), (y.0.min(p[1]), y.1.max(p[1])))
        });
    let half = (x.1 - x.0).max(y.1 - y.0) / (2 * COUNT) as f64 + 0.37;
    let mut squares = Vec::new();
    for i in 0..COUNT * COUNT {
        let (row, column) = (i / COUNT, i % COUNT);
        let middle = [x.0 + half * (2 * column + 1) as f64, y.0 + half * (2 * row + 1) as f64];
        let mut square = floor.square(middle, half);
        let neighbours = [
            (column > 0).then(|| i.wrapping_sub(1)),
            (column + 1 < COUNT).then_some(i + 1),
            (row > 0).then(|| i.wrapping_sub(COUNT)),
            (row + 1 < COUNT).then_some(i + COUNT),
        ];
        square.near = neighbours.into_iter().flatten().collect();
        squares.push(square);
    }
    squares
}

/// The way from start to goal that crosses the fewest unsure squares and no blocked one.
fn way(squares: &[Square], start: &[P], goal: &[P]) -> Option<Vec<usize>> {
    let open = |i: usize| !squares[i].halved && squares[i].state != State::Blocked;
    let cost = |i: usize| usize::from(squares[i].state == State::Unsure);
    let mut best = vec![usize::MAX; squares.len()];
    let mut before = vec![usize::MAX; squares.len()];
    let mut queue = VecDeque::new();
    for i in (0..squares.len()).filter(|&i| open(i) && touches(&squares[i], start)) {
        best[i] = cost(i);
        if cost(i) == 0 { queue.push_front(i) } else { queue.push_back(i) }
    }
    while let Some(i) = queue.pop_front() {
        if touches(&squares[i], goal) {
            let mut way = vec![i];
            while before[way[way.len() - 1]] != usize::MAX {
                way.push(before[way[way.len() - 1]]);
            }
            return Some(way);
        }
        for &next in squares[i].near.iter().filter(|&&next| open(next)) {
            let there = best[i] + cost(next);
            if there < best[next] {
                best[next] = there;
                before[next] = i;
                if cost(next) == 0 { queue.push_front(next) } else { queue.push_back(next) }
            }
        }
    }
    None
}

/// Whether a segment passes through the square.
fn touches(square: &Square, segment: &[P]) -> bool {
    let (a, b) = (minus(segment[0], square.middle), minus(segment[1], square.middle));
    let apart = |i: usize| a[i].min(b[i]) > square.half || a[i].max(b[i]) < -square.half;
    let along = minus(b, a);
    let off = cross(a, along).abs();
    !apart(0) && !apart(1) && off <= square.half * (along[0].abs() + along[1].abs()) + 1e-12
}

fn halve(floor: &Floor, squares: &mut Vec<Square>, i: usize) {
    let whole = squares[i].clone();
    let half = whole.half / 2.0;
    let first = squares.len();
    for (x, y) in [(-half, -half), (half, -half), (-half, half), (half, half)] {
        squares.push(floor.square([whole.middle[0] + x, whole.middle[1] + y], half));
    }
    squares[i].halved = true;
    let beside = |a: &Square, b: &Square| {
        let reach = a.half + b.half;
        let off = [(a.middle[0] - b.middle[0]).abs(), (a.middle[1] - b.middle[1]).abs()];
        // They share a stretch of edge, not only a corner.
        (off[0] < reach - 1e-9 && off[1] < reach + 1e-9) || (off[1] < reach - 1e-9 && off[0] < reach + 1e-9)
    };
    for child in first..first + 4 {
        for other in whole.near.iter().copied().chain(first..first + 4) {
            if other != child && !squares[other].halved && beside(&squares[child], &squares[other]) {
                squares[child].near.push(other);
                if other < first {
                    squares[other].near.push(child);
                }
            }
        }
    }
}
