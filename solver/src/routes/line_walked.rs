//! The line of a way as a plan shows it: to a seat round the table that one steps in past, not over it.

use elbowroom_model::{Brief, PieceId, Point};

use super::floor::{Floor, Tables};
use super::stop::Stop;
use super::walk::walk_between;
use super::widest::widest_between;
use super::{Demand, ShapeId};
use crate::geometry::{Segment, gap_to_segment};
use crate::layout::Layout;

/// The least room in which one still steps in sideways, mm. Common practice, no source.
const SIDEWAYS: f64 = 200.0;

/// So much narrower than the widest way is a disc that is walked along it, mm: rounding does not stop it then.
const PASSES: f64 = 0.01;

/// A way as a plan shows it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LineWalked {
    /// Its line from mouth to mouth, plan coordinates, mm; empty where none is known.
    pub line: Vec<Point>,
    /// It passes a table at the seat that it leads to, with less room there than the way needs.
    pub steps_in: bool,
}

impl Floor {
    /// The line that one walks on a route.
    #[must_use]
    pub fn line_walked(&self, brief: &Brief, layout: &Layout, demand: &Demand) -> LineWalked {
        let Some(mouths) = self.mouths(brief, layout, demand) else { return LineWalked::default() };
        let needs = self.needs(brief, demand);
        let tables = Self::tables(brief, layout, demand);
        let left_out = tables.left_out(brief, layout);
        let line = |things: &[Stop], wide: f64| walk_between(&self.walls, &mouths, things, wide).map(|walk| walk.line);
        let straight = line(&self.things(brief, layout, tables), needs).unwrap_or_default();
        let all = self.things(brief, layout, Tables::All);
        let passes_by =
            |line: &[Point]| all.iter().filter(|stop| is_of(stop, &left_out)).all(|table| keeps_off(line, table));
        if passes_by(&straight) {
            return LineWalked { line: straight, steps_in: false };
        }
        let width = widest_between(&self.walls, &mouths, &all, needs).width.min(needs);
        let lacks = needs - width + PASSES;
        // As wide as the way needs up to the table, and by it with the room that there is; else as wide as passes all the way.
        let smaller = |stop: &Stop| match is_of(stop, &left_out) {
            true => stop.shape.pulled_in(lacks).map(|shape| Stop::new(stop.id, shape)),
            false => Some(stop.clone()),
        };
        let by_the_table = || {
            let things: Vec<Stop> = all.iter().filter_map(smaller).collect();
            line(&things, needs).filter(|line| passes_by(line))
        };
        let found = (width >= SIDEWAYS).then(|| by_the_table().or_else(|| line(&all, width - PASSES))).flatten();
        match found {
            Some(line) => LineWalked { line, steps_in: width < needs - PASSES },
            None => LineWalked { line: straight, steps_in: false },
        }
    }
}

fn is_of(stop: &Stop, pieces: &[PieceId]) -> bool {
    matches!(stop.id, ShapeId::Part { piece, .. } if pieces.contains(&piece))
}

/// Whether whoever walks the line passes beside the table.
fn keeps_off(line: &[Point], table: &Stop) -> bool {
    let clear = |leg: &[Point]| gap_to_segment(&table.shape, Segment::new(leg[0], leg[1])).clear;
    line.windows(2).all(|leg| clear(leg) >= SIDEWAYS / 2.0)
}
