//! A grid of places over a room.

use std::ops::Range;

use elbowroom_model::{Point, ring};

use crate::best_by;
use crate::geometry::Convex;

/// From one place to the next, mm: an eighth of an ordinary passage.
const STEP: f64 = 75.0;

/// A grid has about so many places at most: the steps of a larger room are longer.
const MOST_PLACES: f64 = 40_000.0;

/// Places in rows and columns about the middle of a room, the rows along its longest wall: a mirror or a turn of the plan
/// gives the same.
#[derive(Debug, Clone, Copy)]
pub(super) struct Grid {
    middle: Point,
    along: Point,
    step: f64,
    pub(super) columns: usize,
    pub(super) rows: usize,
}

impl Grid {
    pub(super) fn of(outline: &[Point]) -> Self {
        let middle = ring::centre_of_area(outline);
        let walls = outline.iter().zip(outline.iter().cycle().skip(1)).map(|(start, end)| *end - *start);
        let longest = best_by(walls, |wall| wall.norm());
        let along = longest.and_then(Point::unit).unwrap_or(Point::new(1.0, 0.0));
        let half = |way: Point| outline.iter().map(|corner| (*corner - middle).dot(way).abs()).fold(0.0, f64::max);
        let (wide, deep) = (half(along), half(along.left()));
        let step = STEP.max((4.0 * wide * deep / MOST_PLACES).sqrt());
        // A cast from float to integer saturates, and NaN gives 0.
        let count = |half: f64| 2 * ((half / step).ceil().clamp(1.0, MOST_PLACES) as usize);
        Self { middle, along, step, columns: count(wide), rows: count(deep) }
    }

    /// From one place to the next, mm.
    pub(super) const fn step(&self) -> f64 {
        self.step
    }

    /// A place on the plan as the grid has it: along its rows and across them, mm.
    pub(super) fn place(&self, place: Point) -> Point {
        let from = place - self.middle;
        let half = Point::new(self.columns as f64, self.rows as f64) * (self.step / 2.0);
        Point::new(from.dot(self.along), from.dot(self.along.left())) + half
    }

    /// A shape as the grid has it.
    pub(super) fn shape(&self, shape: &Convex) -> Convex {
        Convex::counter_clockwise(shape.corners().iter().map(|corner| self.place(*corner)))
    }

    /// How far across a row lies, mm.
    pub(super) fn across(&self, row: usize) -> f64 {
        (row as f64 + 0.5) * self.step
    }

    /// Those of `count` places whose middles lie between two distances, mm.
    pub(super) fn places(&self, from: f64, to: f64, count: usize) -> Range<usize> {
        let (first, end) = ((from / self.step - 0.5).ceil(), (to / self.step - 0.5).floor() + 1.0);
        let at = |place: f64| place.clamp(0.0, count as f64) as usize;
        at(first)..at(end)
    }
}
