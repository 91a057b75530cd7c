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
    /// The squares beside it, without those that were halved.
    near: Vec<usize>,
    /// Whether it lies at the start, and at the goal.
    lies: [bool; 2],
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
    let ends = |gate: &Gate| gate.ends.map(|end| add(end, gate.out, STEP));
    let goal = match to {
        Target::Gate(to) => ends(to),
        Target::Place(place) => [*place, *place],
    };
    let mut squares = Squares::coarse(Floor::new(shapes, gates, diameter / 2.0), shapes, [ends(from), goal]);
    loop {
        let Some(way) = squares.way() else { return false };
        let unsure: Vec<usize> = way.into_iter().filter(|&i| squares.all[i].state == State::Unsure).collect();
        if unsure.is_empty() {
            return true;
        }
        for square in unsure {
            squares.halve(square);
        }
    }
}

/// The floor in squares.
struct Squares {
    floor: Floor,
    /// Where the disc sets out, and where it is bound.
    ends: [[P; 2]; 2],
    all: Vec<Square>,
    /// Those that lie at the start and have not been halved.
    starts: Vec<usize>,
    /// Of each square, on the way that was looked for last: unsure squares so far, and the one before it.
    reached: Vec<(usize, usize)>,
}

const NOT_REACHED: (usize, usize) = (usize::MAX, usize::MAX);

impl Squares {
    fn coarse(floor: Floor, shapes: &[Polygon], ends: [[P; 2]; 2]) -> Self {
        const COUNT: usize = 12;
        let (x, y) = shapes
            .iter()
            .flatten()
            .fold(((f64::INFINITY, f64::NEG_INFINITY), (f64::INFINITY, f64::NEG_INFINITY)), |(x, y), p| {
                ((x.0.min(p[0]), x.1.max(p[0])), (y.0.min(p[1]), y.1.max(p[1])))
            });
        let half = (x.1 - x.0).max(y.1 - y.0) / (2 * COUNT) as f64 + 0.37;
        let mut squares = Self { floor, ends, all: Vec::new(), starts: Vec::new(), reached: Vec::new() };
        for i in 0..COUNT * COUNT {
            let (row, column) = (i / COUNT, i % COUNT);
            let middle = [x.0 + half * (2 * column + 1) as f64, y.0 + half * (2 * row + 1) as f64];
            squares.add(middle, half, [true, true]);
            let neighbours = [
                (column > 0).then(|| i.wrapping_sub(1)),
                (column + 1 < COUNT).then_some(i + 1),
                (row > 0).then(|| i.wrapping_sub(COUNT)),
                (row + 1 < COUNT).then_some(i + COUNT),
            ];
            squares.all[i].near = neighbours.into_iter().flatten().collect();
        }
        squares
    }

    /// One more square; `may_lie`: whether it may lie at either end.
    fn add(&mut self, middle: P, half: f64, may_lie: [bool; 2]) {
        let state = self.floor.state(middle, half);
        let mut square = Square { middle, half, state, near: Vec::new(), lies: [false, false] };
        square.lies = [0, 1].map(|end| may_lie[end] && touches(&square, &self.ends[end]));
        if square.lies[0] {
            self.starts.push(self.all.len());
        }
        self.all.push(square);
        self.reached.push(NOT_REACHED);
    }

    /// The way from start to goal that crosses the fewest unsure squares and no blocked one.
    fn way(&mut self) -> Option<Vec<usize>> {
        self.reached.fill(NOT_REACHED);
        let mut queue = VecDeque::new();
        for place in 0..self.starts.len() {
            self.reach(self.starts[place], (0, usize::MAX), &mut queue);
        }
        while let Some(i) = queue.pop_front() {
            if self.all[i].lies[1] {
                let before = |&at: &usize| Some(self.reached[at].1).filter(|&before| before != usize::MAX);
                return Some(std::iter::successors(Some(i), before).collect());
            }
            for place in 0..self.all[i].near.len() {
                self.reach(self.all[i].near[place], (self.reached[i].0, i), &mut queue);
            }
        }
        None
    }

    /// Goes on to a square from the one before it, after so many unsure ones.
    fn reach(&mut self, i: usize, (after, before): (usize, usize), queue: &mut VecDeque<usize>) {
        let (count, first) = match self.all[i].state {
            State::Blocked => return,
            State::Free => (after, true),
            State::Unsure => (after + 1, false),
        };
        if count < self.reached[i].0 {
            self.reached[i] = (count, before);
            if first { queue.push_front(i) } else { queue.push_back(i) }
        }
    }

    fn halve(&mut self, i: usize) {
        let whole = self.all[i].clone();
        let half = whole.half / 2.0;
        let first = self.all.len();
        for (x, y) in [(-half, -half), (half, -half), (-half, half), (half, half)] {
            self.add([whole.middle[0] + x, whole.middle[1] + y], half, whole.lies);
        }
        self.starts.retain(|&start| start != i);
        for &other in &whole.near {
            self.all[other].near.retain(|&near| near != i);
        }
        for child in first..first + 4 {
            for other in whole.near.iter().copied().chain(first..first + 4) {
                if other != child && self.all[child].is_beside(&self.all[other]) {
                    self.all[child].near.push(other);
                    if other < first {
                        self.all[other].near.push(child);
                    }
                }
            }
        }
    }
}

impl Square {
    /// Whether they share a stretch of edge, not only a corner.
    fn is_beside(&self, other: &Self) -> bool {
        let reach = self.half + other.half;
        let off = [(self.middle[0] - other.middle[0]).abs(), (self.middle[1] - other.middle[1]).abs()];
        (off[0] < reach - 1e-9 && off[1] < reach + 1e-9) || (off[1] < reach - 1e-9 && off[0] < reach + 1e-9)
    }
}

/// Whether a segment passes through the square.
fn touches(square: &Square, segment: &[P; 2]) -> bool {
    let (a, b) = (minus(segment[0], square.middle), minus(segment[1], square.middle));
    let apart = |i: usize| a[i].min(b[i]) > square.half || a[i].max(b[i]) < -square.half;
    let along = minus(b, a);
    let off = cross(a, along).abs();
    !apart(0) && !apart(1) && off <= square.half * (along[0].abs() + along[1].abs()) + 1e-12
}
