//! The room as the judge sees it: an outline as measured, doorways, windows, what heats, and what stands for good.

use crate::support::checker::plane::{P, Polygon, add, common, dot, edges, minus, turning};

use super::standing::Run;

/// The room.
#[derive(Debug, Clone)]
pub(crate) struct Room {
    /// Counter-clockwise.
    pub(crate) outline: Polygon,
    pub(crate) doorways: Vec<Doorway>,
    pub(crate) windows: Vec<[P; 2]>,
    /// Radiators and fires, each as a convex shape.
    pub(crate) heaters: Vec<Polygon>,
    /// The middle of the front of each fire.
    pub(crate) hearths: Vec<P>,
    pub(crate) blocks: Vec<Block>,
}

/// A door or an opening.
#[derive(Debug, Clone)]
pub(crate) struct Doorway {
    pub(crate) name: String,
    pub(crate) ends: [P; 2],
    /// Into the room.
    pub(crate) inward: P,
    /// No door, and nobody wants it kept in sight: a seat may turn its back on it.
    pub(crate) may_be_backed: bool,
}

/// What stands for good, a fire with its breast too.
#[derive(Debug, Clone)]
pub(crate) struct Block {
    pub(crate) name: String,
    /// Convex, counter-clockwise.
    pub(crate) shape: Polygon,
    /// Infinite where nobody measured it.
    pub(crate) height: f64,
}

/// Area of a simple polygon, mm2.
pub(crate) fn area(polygon: &[P]) -> f64 {
    turning(polygon).abs() / 2.0
}

/// Area that two polygons share, mm2; the second is convex.
pub(crate) fn shared_area(any: &[P], convex: &[P]) -> f64 {
    area(&common(any, convex))
}

impl Room {
    /// How much of a convex shape lies beyond the walls, mm2.
    pub(crate) fn beyond(&self, shape: &[P]) -> f64 {
        area(shape) - shared_area(&self.outline, shape)
    }

    /// How far it is from a run's line to the nearest wall ahead of it, within the run's width less `inset` at each end;
    /// infinite where there is none.
    pub(crate) fn to_wall(&self, run: &Run, inset: f64) -> f64 {
        nearest(&self.outline, run, inset)
    }

    /// The same to the nearest fixed thing.
    pub(crate) fn to_block(&self, run: &Run, inset: f64) -> f64 {
        self.blocks.iter().map(|block| nearest(&block.shape, run, inset)).fold(f64::INFINITY, f64::min)
    }
}

/// How much of a segment lies before a run's width and from `near` to `far` ahead of it, mm along the segment.
pub(crate) fn stretch_before(run: &Run, [from, to]: [P; 2], near: f64, far: f64) -> f64 {
    let half = run.width / 2.0;
    let ends = [from, to].map(|p| [run.aside(p), run.ahead(p)]);
    let within = clipped(ends, 0, -half, half).and_then(|part| clipped(part, 1, near, far));
    within.map_or(0.0, |[a, b]| (a[0] - b[0]).hypot(a[1] - b[1]))
}

/// How far ahead of a run the nearest edge of a polygon lies, between the run's ends less `inset`.
fn nearest(polygon: &[P], run: &Run, inset: f64) -> f64 {
    /// What stands against a run may seem to lie so far behind it, mm.
    const ROUNDED: f64 = 10.0;
    let half = run.width / 2.0 - inset;
    let parts = edges(polygon).filter_map(|(from, to)| {
        let ends = [from, to].map(|p| [run.aside(p), run.ahead(p)]);
        clipped(clipped(ends, 0, -half, half)?, 1, -ROUNDED, f64::INFINITY)
    });
    parts.map(|[a, b]| a[1].min(b[1]).max(0.0)).fold(f64::INFINITY, f64::min)
}

/// The part of a segment whose coordinate on an axis is from `low` to `high`.
fn clipped([from, to]: [P; 2], axis: usize, low: f64, high: f64) -> Option<[P; 2]> {
    let along = to[axis] - from[axis];
    if along.abs() < 1e-9 {
        return (low..=high).contains(&from[axis]).then_some([from, to]);
    }
    let (a, b) = ((low - from[axis]) / along, (high - from[axis]) / along);
    let (start, end) = (a.min(b).max(0.0), a.max(b).min(1.0));
    let at = |share: f64| add(from, minus(to, from), share);
    (start < end).then(|| [at(start), at(end)])
}

impl Doorway {
    /// Its width.
    pub(crate) fn width(&self) -> f64 {
        let along = minus(self.ends[1], self.ends[0]);
        dot(along, along).sqrt()
    }

    /// As a run that looks into the room.
    pub(crate) fn as_run(&self) -> Run {
        let middle = add(self.ends[0], minus(self.ends[1], self.ends[0]), 0.5);
        Run { middle, facing: self.inward, width: self.width() }
    }
}
