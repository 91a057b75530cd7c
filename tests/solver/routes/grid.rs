//! A second opinion on routes, of the tests' own: the floor in squares of 20 mm, each with its clearance; the way whose
//! least clearance is greatest, and the shortest way over squares that are clear enough.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use elbowroom_model::Point;

/// Side of a square, mm.
pub(crate) const STEP: f64 = 20.0;

/// A mouth as the second opinion needs it: the stretch as widened, and the way to the walker.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Doorstep {
    pub(crate) ends: [Point; 2],
    pub(crate) before: Point,
}

/// The floor of a room that lies within x and y of 0 and `most`.
pub(crate) struct Grid {
    across: usize,
    up: usize,
    /// Twice the clearance of each square's middle.
    width: Vec<f64>,
    doorsteps: [Doorstep; 2],
}

impl Grid {
    /// `walls` and the sides of `things` as corners in order.
    pub(crate) fn new(most: Point, walls: &[[Point; 2]], things: &[Vec<Point>], doorsteps: [Doorstep; 2]) -> Self {
        let (across, up) = ((most.x / STEP) as usize, (most.y / STEP) as usize);
        let mut grid = Self { across, up, width: Vec::new(), doorsteps };
        grid.width = (0..across * up).map(|place| 2.0 * grid.clearance(grid.at(place), walls, things)).collect();
        grid
    }

    /// Diameter of the widest disc that gets from the one mouth to the other, to about two squares.
    pub(crate) fn widest(&self) -> f64 {
        let best = self.run(|so_far, _, to| so_far.min(self.width[to]), f64::INFINITY, |width| width);
        best.unwrap_or(0.0)
    }

    /// Length of the shortest way over squares where a disc of this diameter has room; steps go eight ways.
    pub(crate) fn length(&self, diameter: f64) -> Option<f64> {
        let step = |so_far: f64, from: usize, to: usize| {
            if self.width[to] < diameter { f64::INFINITY } else { so_far + (self.at(to) - self.at(from)).norm() }
        };
        self.run(step, 0.0, |length| -length)
    }

    /// Best-first over the squares; `worth` says which is better.
    fn run(&self, step: impl Fn(f64, usize, usize) -> f64, first: f64, worth: impl Fn(f64) -> f64) -> Option<f64> {
        let mut best = vec![f64::NEG_INFINITY; self.width.len()];
        let mut open = BinaryHeap::new();
        for place in (0..self.width.len()).filter(|place| self.is_at(*place, 0)) {
            let start = step(first, place, place);
            if worth(start) > f64::NEG_INFINITY {
                open.push(Open { worth: worth(start), so_far: start, place });
            }
        }
        while let Some(Open { worth: now, so_far, place }) = open.pop() {
            if now <= best[place] {
                continue;
            }
            best[place] = now;
            if self.is_at(place, 1) {
                return Some(so_far);
            }
            for next in self.neighbours(place) {
                let after = step(so_far, place, next);
                if worth(after) > best[next] && worth(after) > f64::NEG_INFINITY && !self.steps_through(place, next) {
                    open.push(Open { worth: worth(after), so_far: after, place: next });
                }
            }
        }
        None
    }

    fn at(&self, place: usize) -> Point {
        let (column, row) = (place % self.across, place / self.across);
        Point::new((column as f64 + 0.5) * STEP, (row as f64 + 0.5) * STEP)
    }

    /// The square lies straight before the mouth, with its middle within one step of the line.
    fn is_at(&self, place: usize, mouth: usize) -> bool {
        let (along, ahead, width) = self.doorsteps[mouth].place(self.at(place));
        (0.0..=width).contains(&along) && (0.0..=STEP).contains(&ahead)
    }

    fn neighbours(&self, place: usize) -> impl Iterator<Item = usize> + '_ {
        let (column, row) = ((place % self.across) as isize, (place / self.across) as isize);
        let shifts = (-1..=1).flat_map(|x| (-1..=1).map(move |y| (x, y))).filter(|shift| *shift != (0, 0));
        shifts.filter_map(move |(x, y)| {
            let (column, row) = (column + x, row + y);
            let inside = column >= 0 && row >= 0 && column < self.across as isize && row < self.up as isize;
            inside.then(|| row as usize * self.across + column as usize)
        })
    }

    /// Nobody steps through a mouth's stretch.
    fn steps_through(&self, from: usize, to: usize) -> bool {
        self.doorsteps.iter().any(|doorstep| {
            let (from, to) = (doorstep.place(self.at(from)), doorstep.place(self.at(to)));
            let over = (from.1 >= 0.0) != (to.1 >= 0.0);
            let middle = (from.0 + to.0) / 2.0;
            over && middle > 0.0 && middle < from.2
        })
    }

    fn clearance(&self, at: Point, walls: &[[Point; 2]], things: &[Vec<Point>]) -> f64 {
        let before: Vec<_> = self.doorsteps.iter().filter(|doorstep| doorstep.is_before(at)).collect();
        let mut least = f64::INFINITY;
        for doorstep in &self.doorsteps {
            let [start, end] = doorstep.ends;
            let ends = (start - at).norm().min((end - at).norm());
            let seen_from_behind = if doorstep.is_before(at) { f64::INFINITY } else { off_segment(at, start, end) };
            least = least.min(ends).min(seen_from_behind);
        }
        let sides = things.iter().flat_map(|thing| (0..thing.len()).map(|i| [thing[i], thing[(i + 1) % thing.len()]]));
        for [start, end] in walls.iter().copied().chain(sides) {
            // What lies behind a mouth's line does not count for one who is straight before it.
            let part = before.iter().try_fold((start, end), |part, doorstep| doorstep.part_before(part));
            if let Some((start, end)) = part {
                least = least.min(off_segment(at, start, end));
            }
        }
        let inside = |thing: &&Vec<Point>| {
            (0..thing.len()).all(|i| (thing[(i + 1) % thing.len()] - thing[i]).cross(at - thing[i]) >= 0.0)
        };
        if things.iter().any(|thing| inside(&thing)) { 0.0 } else { least }
    }
}

impl Doorstep {
    /// Along the stretch, before its line, and the stretch's length.
    fn place(&self, at: Point) -> (f64, f64, f64) {
        let [start, end] = self.ends;
        let width = (end - start).norm();
        let along = (end - start) * (1.0 / width);
        (along.dot(at - start), self.before.dot(at - start), width)
    }

    fn is_before(&self, at: Point) -> bool {
        let (along, ahead, width) = self.place(at);
        ahead >= 0.0 && (0.0..=width).contains(&along)
    }

    /// The part of a side that lies before the line; `None` where all of it lies in the line or behind.
    fn part_before(&self, (start, end): (Point, Point)) -> Option<(Point, Point)> {
        let (from, to) = (self.place(start).1, self.place(end).1);
        if from < 1e-6 && to < 1e-6 {
            return None;
        }
        let crossing = || start + (end - start) * (from / (from - to));
        match (from < 0.0, to < 0.0) {
            (true, _) => Some((crossing(), end)),
            (_, true) => Some((start, crossing())),
            _ => Some((start, end)),
        }
    }
}

fn off_segment(at: Point, start: Point, end: Point) -> f64 {
    let along = end - start;
    let share = (at - start).dot(along) / along.dot(along).max(1e-12);
    (start + along * share.clamp(0.0, 1.0) - at).norm()
}

struct Open {
    worth: f64,
    so_far: f64,
    place: usize,
}

impl Ord for Open {
    fn cmp(&self, other: &Self) -> Ordering {
        self.worth.total_cmp(&other.worth).then(self.place.cmp(&other.place))
    }
}

impl PartialOrd for Open {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Open {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Open {}
