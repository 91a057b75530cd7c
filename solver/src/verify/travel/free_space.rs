//! The free places for the centre of a disc, slab by slab.

use elbowroom_model::Point;

use super::crossing::crossings;
use super::gate::Gate;
use super::rounded::Rounded;
use crate::geometry::{Convex, Segment};
use crate::verify::tolerance::{STEP, TOGETHER};

/// Which doorsteps a place lies on: bit 0 the first mouth's, bit 1 the second's.
type Region = usize;

/// Obstacles as they count in each region.
pub(super) struct FreeSpace {
    gates: Vec<Gate>,
    doorsteps: Vec<Rounded>,
    /// Grown obstacles, for each region.
    grown: Vec<Vec<Rounded>>,
    /// From below to above all of them.
    y: (f64, f64),
}

impl FreeSpace {
    pub(super) fn new(obstacles: &[Convex], gates: Vec<Gate>, radius: f64) -> Self {
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
    pub(super) fn places_on(&self, gate: usize) -> Vec<Point> {
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
    pub(super) fn free_at(&self, x: f64) -> Vec<(f64, f64)> {
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
    pub(super) fn lines(&self) -> Vec<f64> {
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
