//! The free places for the centre of a disc, slab by slab.

use elbowroom_model::Point;

use super::crossing::crossings;
use super::gate::Gate;
use super::rounded::Rounded;
use crate::geometry::{Convex, Segment};
use crate::verify::tolerance::{BESIDE, SHARED, STEP, TOGETHER};

/// Where a disc is bound.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::verify) enum Target {
    /// Any place of a mouth.
    Gate(Gate),
    /// One place for its centre.
    Place(Point),
}

/// Whether a disc of `diameter` can travel from the mouth to the target and touch no obstacle.
pub(in crate::verify) fn travels(obstacles: &[Convex], from: &Gate, to: &Target, diameter: f64) -> bool {
    if diameter <= 0.0 {
        return true;
    }
    let gates = match to {
        Target::Gate(to) => vec![*from, *to],
        Target::Place(_) => vec![*from],
    };
    let space = FreeSpace::new(obstacles, gates, diameter / 2.0);
    let starts = space.places_on(0);
    let ends = match to {
        Target::Gate(_) => space.places_on(1),
        Target::Place(place) => vec![*place],
    };
    if starts.is_empty() || ends.is_empty() {
        return false;
    }
    Slabs::of(&space).joined(&space, &starts, &ends)
}

/// Which doorsteps a place lies on: bit 0 the first mouth's, bit 1 the second's.
type Region = usize;

/// Obstacles as they count in each region.
struct FreeSpace {
    gates: Vec<Gate>,
    doorsteps: Vec<Rounded>,
    /// Grown obstacles, for each region.
    grown: Vec<Vec<Rounded>>,
    /// From below to above all of them.
    y: (f64, f64),
}

impl FreeSpace {
    fn new(obstacles: &[Convex], gates: Vec<Gate>, radius: f64) -> Self {
        let doorsteps: Vec<Rounded> =
            gates.iter().map(|gate| Rounded::new(gate.doorstep(radius).corners(), 0.0)).collect();
        let grown = (0..1 << gates.len()).map(|region| grown(obstacles, &gates, &doorsteps, region, radius)).collect();
        let mut space = Self { gates, doorsteps, grown, y: (0.0, 0.0) };
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for shape in space.grown.iter().flatten() {
            (low, high) = (low.min(shape.y.0), high.max(shape.y.1));
        }
        space.y = (low - 1.0, high + 1.0);
        space
    }

    /// The middle of each stretch of a mouth on which the disc can set out, a hair before it.
    fn places_on(&self, gate: usize) -> Vec<Point> {
        // Turned so that the mouth stands upright, its places are the free stretches of one vertical line.
        let mouth = &self.gates[gate];
        let (origin, up) = (mouth.place(0.0, STEP), (mouth.ends[1] - mouth.ends[0]).unit());
        let Some(up) = up else { return Vec::new() };
        let other = 1 - gate;
        let on_other = |along: f64| {
            let place = origin + up * along;
            self.doorsteps.get(other).is_some_and(|step| step.covers(place, 0.0))
        };
        let mut cuts = vec![0.0, mouth.length()];
        let probe = [origin, origin + up * mouth.length()];
        cuts.extend(self.doorsteps.get(other).into_iter().flat_map(|step| shares(step, probe)));
        cuts.sort_by(f64::total_cmp);
        let mut free = Vec::new();
        for pair in cuts.windows(2).filter(|pair| pair[1] - pair[0] > STEP) {
            let region = (1 << gate) | if on_other((pair[0] + pair[1]) / 2.0) { 1 << other } else { 0 };
            let blocked = self.grown[region].iter().filter_map(|shape| chord_along(shape, origin, up));
            push_free(&mut free, (pair[0], pair[1]), blocked.collect());
        }
        let long_enough = free.into_iter().filter(|(from, to)| to - from > 10.0 * STEP);
        long_enough.map(|(from, to)| origin + up * ((from + to) / 2.0)).collect()
    }

    /// Free stretches of the vertical line at `x`, upward.
    fn free_at(&self, x: f64) -> Vec<(f64, f64)> {
        let steps: Vec<Option<(f64, f64)>> = self.doorsteps.iter().map(|step| step.chord(x)).collect();
        let mut cuts = vec![self.y.0, self.y.1];
        cuts.extend(steps.iter().flatten().flat_map(|&(from, to)| [from, to]));
        cuts.sort_by(f64::total_cmp);
        let mut free = Vec::new();
        for pair in cuts.windows(2).filter(|pair| pair[0] < pair[1]) {
            let middle = (pair[0] + pair[1]) / 2.0;
            let on = |step: &Option<(f64, f64)>| step.is_some_and(|(from, to)| from < middle && middle < to);
            let region: Region = steps.iter().enumerate().map(|(i, step)| usize::from(on(step)) << i).sum();
            let blocked = self.grown[region].iter().filter_map(|shape| shape.chord(x));
            push_free(&mut free, (pair[0], pair[1]), blocked.collect());
        }
        free
    }

    /// Where the order of stretches can change, from left to right.
    fn lines(&self) -> Vec<f64> {
        let mut lines = Vec::new();
        let mut places = Vec::new();
        for shapes in &self.grown {
            for (i, shape) in shapes.iter().enumerate() {
                lines.extend([shape.x.0, shape.x.1]);
                for step in &self.doorsteps {
                    places.clear();
                    crossings(shape, step, &mut places);
                    lines.extend(places.iter().map(|place| place.x));
                }
                for (j, other) in shapes.iter().enumerate().skip(i + 1) {
                    places.clear();
                    crossings(shape, other, &mut places);
                    let hidden = |place: &Point| {
                        let others = shapes.iter().enumerate().filter(|(k, _)| *k != i && *k != j);
                        others.into_iter().any(|(_, shape)| shape.covers(*place, TOGETHER))
                    };
                    lines.extend(places.iter().filter(|place| !hidden(place)).map(|place| place.x));
                }
            }
        }
        lines.extend(self.doorsteps.iter().flat_map(|step| step.lines.iter().map(|line| line.start.x)));
        if let [first, second] = self.doorsteps.as_slice() {
            places.clear();
            crossings(first, second, &mut places);
            lines.extend(places.iter().map(|place| place.x));
        }
        lines.sort_by(f64::total_cmp);
        lines
    }
}

/// Obstacles as they count while the centre is in `region`, grown; off the doorsteps all, on them those within reach.
fn grown(obstacles: &[Convex], gates: &[Gate], doorsteps: &[Rounded], region: Region, radius: f64) -> Vec<Rounded> {
    let on = |i: usize| region >> i & 1 == 1;
    let part = |corners: &[Point]| {
        let here = gates.iter().enumerate().filter(|(i, _)| on(*i));
        here.map(|(_, gate)| gate).try_fold(corners.to_vec(), |part, gate| gate.part_before(&part))
    };
    let mut shapes: Vec<Vec<Point>> = obstacles.iter().filter_map(|shape| part(shape.corners())).collect();
    for (i, gate) in gates.iter().enumerate() {
        if on(i) {
            shapes.extend(gate.ends.map(|end| vec![end]));
        } else {
            shapes.extend(part(&gate.stretch()));
        }
    }
    let near = |shape: &Rounded| doorsteps.iter().enumerate().all(|(i, step)| !on(i) || shape.near(step));
    shapes.iter().map(|corners| Rounded::new(corners, radius)).filter(near).collect()
}

/// Adds what is left of `stretch` once the blocked stretches are taken out; one that carries the last on is joined to it.
fn push_free(free: &mut Vec<(f64, f64)>, stretch: (f64, f64), mut blocked: Vec<(f64, f64)>) {
    blocked.sort_by(|a, b| a.0.total_cmp(&b.0));
    blocked.push((stretch.1, stretch.1));
    let mut from = stretch.0;
    for (low, high) in blocked {
        let to = low.min(stretch.1);
        if to > from {
            match free.last_mut() {
                Some(last) if last.1 >= from && from == stretch.0 => last.1 = to,
                _ => free.push((from, to)),
            }
        }
        from = from.max(high);
    }
}

/// Where a line from `origin` in the direction `along` lies in the shape.
fn chord_along(shape: &Rounded, origin: Point, along: Point) -> Option<(f64, f64)> {
    let (mut from, mut to) = (f64::INFINITY, f64::NEG_INFINITY);
    for arc in &shape.arcs {
        let centre = arc.centre - origin;
        let foot = centre.dot(along);
        let off = centre.cross(along);
        let squared = arc.radius * arc.radius - off * off;
        if squared > 0.0 {
            let half = squared.sqrt();
            (from, to) = (from.min(foot - half), to.max(foot + half));
        }
    }
    for &Segment { start, end } in &shape.lines {
        let (start, end) = (start - origin, end - origin);
        let (first, last) = (along.cross(start), along.cross(end));
        if first * last < 0.0 {
            let place = (start + (end - start) * (first / (first - last))).dot(along);
            (from, to) = (from.min(place), to.max(place));
        }
    }
    (from < to).then_some((from, to))
}

/// Where a segment meets the boundary of a sharp shape, from its start, mm.
fn shares(shape: &Rounded, probe: [Point; 2]) -> Vec<f64> {
    let segment = Rounded::new(&probe, 0.0);
    let mut places = Vec::new();
    crossings(shape, &segment, &mut places);
    places.into_iter().map(|place| (place - probe[0]).norm()).collect()
}

/// A free stretch of a slab: one cell, seen at both of the slab's sides.
struct Cell {
    left: (f64, f64),
    right: (f64, f64),
}

/// The cells of each slab and which of them are one.
struct Slabs {
    /// Where each slab starts and ends, and its first cell.
    slabs: Vec<(f64, f64, usize)>,
    cells: Vec<Cell>,
    parents: Vec<usize>,
}

impl Slabs {
    fn of(space: &FreeSpace) -> Self {
        let mut all = Self { slabs: Vec::new(), cells: Vec::new(), parents: Vec::new() };
        let lines = space.lines();
        for pair in lines.windows(2).filter(|pair| pair[1] - pair[0] > TOGETHER) {
            all.add(space, pair[0], pair[1], 6);
        }
        all.join();
        all
    }

    /// Adds the slab; where rounding hides a stretch on one side, its two halves.
    fn add(&mut self, space: &FreeSpace, from: f64, to: f64, halvings: usize) {
        let (left, right) = (space.free_at(from + BESIDE), space.free_at(to - BESIDE));
        if left.len() != right.len() && halvings > 0 && to - from > 4.0 * TOGETHER {
            let middle = (from + to) / 2.0;
            self.add(space, from, middle, halvings - 1);
            self.add(space, middle, to, halvings - 1);
            return;
        }
        self.slabs.push((from, to, self.cells.len()));
        self.cells.extend(left.into_iter().zip(right).map(|(left, right)| Cell { left, right }));
    }

    fn join(&mut self) {
        self.parents = (0..self.cells.len()).collect();
        for i in 1..self.slabs.len() {
            let (before, here) = (self.slabs[i - 1].2, self.slabs[i].2);
            let end = self.slabs.get(i + 1).map_or(self.cells.len(), |slab| slab.2);
            for first in before..here {
                for second in here..end {
                    let (a, b) = (self.cells[first].right, self.cells[second].left);
                    if a.1.min(b.1) - a.0.max(b.0) > SHARED {
                        let (first, second) = (self.root(first), self.root(second));
                        self.parents[second] = first;
                    }
                }
            }
        }
    }

    fn root(&self, mut cell: usize) -> usize {
        while self.parents[cell] != cell {
            cell = self.parents[cell];
        }
        cell
    }

    /// The cell that a free place lies in.
    fn cell_of(&self, space: &FreeSpace, place: Point) -> Option<usize> {
        let slab = self.slabs.partition_point(|slab| slab.0 < place.x).checked_sub(1)?;
        let end = self.slabs.get(slab + 1).map_or(self.cells.len(), |slab| slab.2);
        let free = space.free_at(place.x);
        let stretch = free.iter().position(|&(from, to)| from <= place.y && place.y <= to)?;
        let cell = self.slabs[slab].2 + stretch;
        (cell < end).then_some(cell)
    }

    /// Whether a way leads from one of the starts to one of the ends.
    fn joined(&self, space: &FreeSpace, starts: &[Point], ends: &[Point]) -> bool {
        let roots = |places: &[Point]| -> Vec<usize> {
            places.iter().filter_map(|place| Some(self.root(self.cell_of(space, *place)?))).collect()
        };
        let ends = roots(ends);
        roots(starts).iter().any(|start| ends.contains(start))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::Value;

    fn point(value: &Value) -> Point {
        Point::new(value[0].as_f64().unwrap(), value[1].as_f64().unwrap())
    }

    fn points(value: &Value) -> Vec<Point> {
        value.as_array().unwrap().iter().map(point).collect()
    }

    fn gate(mouth: &Value, case: &Value) -> Gate {
        let widened = points(&mouth["widened"]);
        let along = (widened[1] - widened[0]).unit().unwrap();
        let middle = (widened[0] + widened[1]) * 0.5;
        // Before a wall lies the room; before a shape the side that it does not lie on.
        let shape = |owner: u64| Convex::counter_clockwise(points(&case["shapes"][owner as usize]));
        let out = match mouth["owner"].as_u64() {
            Some(owner) if (shape(owner).middle() - middle).cross(along) > 0.0 => along.left(),
            Some(_) => along.right(),
            None => {
                let walls = crate::geometry::Outline::within(&points(&case["walls"]));
                let before = middle + along.left();
                let near = |aside: f64| before + along * aside;
                let speck = Convex::counter_clockwise([near(-0.1), near(0.1), before + along.left() * 0.1]);
                if walls.covers(&speck) { along.left() } else { along.right() }
            }
        };
        Gate { ends: [widened[0], widened[1]], out }
    }

    fn obstacles(case: &Value) -> Vec<Convex> {
        let walls = points(&case["walls"]);
        let wall = |i: usize| Convex::counter_clockwise([walls[i], walls[(i + 1) % walls.len()]]);
        let mut all: Vec<Convex> = (0..walls.len()).map(wall).collect();
        let own: Vec<u64> =
            case["mouths"].as_array().unwrap().iter().filter_map(|mouth| mouth["own_table"].as_u64()).collect();
        for (i, shape) in case["shapes"].as_array().unwrap().iter().enumerate() {
            if !own.contains(&(i as u64)) {
                all.push(Convex::counter_clockwise(points(shape)));
            }
        }
        all
    }

    /// The 120 cases of widest routes that were measured by dilation, 0.1 mm.
    #[test]
    fn a_disc_as_wide_as_measured_travels_and_a_wider_one_does_not() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/routes.json");
        let cases: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
        let mut wrong = Vec::new();
        for case in cases.as_array().unwrap() {
            let [first, second] = [0, 1].map(|i| gate(&case["mouths"][i], case));
            let shapes = obstacles(case);
            let width = case["width"].as_f64().unwrap();
            let travels = |diameter: f64| travels(&shapes, &first, &Target::Gate(second), diameter);
            if (width > 0.5 && !travels(width - 0.5)) || travels(width + 0.5) {
                wrong.push(format!("{} {}: {width}", case["id"], case["note"]));
            }
        }
        assert!(wrong.is_empty(), "{} wrong: {wrong:#?}", wrong.len());
    }
}
