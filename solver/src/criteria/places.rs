//! Sets of the places of a grid: what lies in the room, in or near shapes, and what can be reached.

use std::ops::Range;

use elbowroom_model::Point;

use super::grid::Grid;
use crate::geometry::{Convex, Segment};

/// A set of the places of a grid.
#[derive(Debug, Clone)]
pub(super) struct Places {
    grid: Grid,
    holds: Vec<bool>,
}

impl Places {
    pub(super) fn none(grid: Grid) -> Self {
        Self { grid, holds: vec![false; grid.columns * grid.rows] }
    }

    /// Those in the room.
    pub(super) fn inside(grid: Grid, outline: &[Point]) -> Self {
        let mut all = Self::none(grid);
        let ring: Vec<Point> = outline.iter().map(|corner| grid.place(*corner)).collect();
        for row in 0..grid.rows {
            let across = grid.across(row);
            let walls = ring.iter().zip(ring.iter().cycle().skip(1));
            let met = walls.filter(|(start, end)| (start.y > across) != (end.y > across));
            let mut met: Vec<f64> = met.map(|(start, end)| along_at(Segment::new(*start, *end), across)).collect();
            met.sort_by(f64::total_cmp);
            for pair in met.chunks_exact(2) {
                all.fill(row, grid.places(pair[0], pair[1], grid.columns), true);
            }
        }
        all
    }

    /// Takes in, or out, what lies in a shape of the grid or within `reach` of it.
    pub(super) fn set(&mut self, shape: &Convex, reach: f64, holds: bool) {
        let Grid { rows, columns, .. } = self.grid;
        let grown = Grown::of(shape, reach);
        let up = Point::new(0.0, 1.0);
        for row in self.grid.places(-shape.support(-up) - reach, shape.support(up) + reach, rows) {
            let (from, to) = grown.span(self.grid.across(row));
            self.fill(row, self.grid.places(from, to, columns), holds);
        }
    }

    fn fill(&mut self, row: usize, columns: Range<usize>, holds: bool) {
        let start = row * self.grid.columns;
        if let Some(places) = self.holds.get_mut(start + columns.start..start + columns.end) {
            places.fill(holds);
        }
    }

    /// Those that are reached from any that `start` has too, from each to its eight neighbours.
    pub(super) fn reached_from(&self, start: &Self) -> Self {
        let Grid { columns, rows, .. } = self.grid;
        let mut reached = Self::none(self.grid);
        let mut open: Vec<usize> =
            (0..self.holds.len()).filter(|place| self.holds[*place] && start.holds[*place]).collect();
        open.iter().for_each(|place| reached.holds[*place] = true);
        while let Some(place) = open.pop() {
            let (row, column) = (place / columns, place % columns);
            for next_row in row.saturating_sub(1)..(row + 2).min(rows) {
                for next_column in column.saturating_sub(1)..(column + 2).min(columns) {
                    let next = next_row * columns + next_column;
                    if self.holds[next] && !reached.holds[next] {
                        reached.holds[next] = true;
                        open.push(next);
                    }
                }
            }
        }
        reached
    }

    /// All within `reach` of any of them.
    pub(super) fn grown(&self, reach: f64) -> Self {
        let Grid { columns, rows, .. } = self.grid;
        let step = self.grid.step();
        let mut grown = Self::none(self.grid);
        for row in 0..rows {
            for run in self.runs(row) {
                for near in self.grid.places(self.grid.across(row) - reach, self.grid.across(row) + reach, rows) {
                    let off = (near as f64 - row as f64) * step;
                    let wide = (reach * reach - off * off).max(0.0).sqrt();
                    let (from, to) = ((run.start as f64 + 0.5) * step - wide, (run.end as f64 - 0.5) * step + wide);
                    grown.fill(near, self.grid.places(from, to, columns), true);
                }
            }
        }
        grown
    }

    /// The runs of places that stand in one row side by side.
    fn runs(&self, row: usize) -> impl Iterator<Item = Range<usize>> {
        let columns = self.grid.columns;
        let holds = &self.holds[row * columns..(row + 1) * columns];
        let mut from = 0;
        holds.chunk_by(|one, next| one == next).filter_map(move |run| {
            let start = from;
            from += run.len();
            run[0].then_some(start..from)
        })
    }

    /// Those that others do not have too.
    pub(super) fn without(&self, others: &Self) -> Self {
        self.where_both(others, |one, other| one && !other)
    }

    /// Those that others have too.
    pub(super) fn and(&self, others: &Self) -> Self {
        self.where_both(others, |one, other| one && other)
    }

    fn where_both(&self, others: &Self, holds: impl Fn(bool, bool) -> bool) -> Self {
        let both = self.holds.iter().zip(&others.holds);
        Self { grid: self.grid, holds: both.map(|(one, other)| holds(*one, *other)).collect() }
    }

    /// The floor that they stand for, mm2.
    pub(super) fn area(&self) -> f64 {
        self.holds.iter().filter(|holds| **holds).count() as f64 * self.grid.step() * self.grid.step()
    }

    /// Their middle on the grid; `None` of none.
    pub(super) fn middle(&self) -> Option<Point> {
        let (columns, step) = (self.grid.columns, self.grid.step());
        let places = self.holds.iter().enumerate().filter(|(_, holds)| **holds);
        let middle = |place: usize| Point::new((place % columns) as f64 + 0.5, (place / columns) as f64 + 0.5);
        let (sum, count) =
            places.fold((Point::default(), 0_usize), |(sum, count), (place, _)| (sum + middle(place), count + 1));
        (count > 0).then(|| sum * (step / count as f64))
    }

    /// The share that these are of others, as far as those have them, 0 to 1; 0 of none.
    pub(super) fn share_of(&self, others: &Self) -> f64 {
        let all = others.holds.iter().filter(|holds| **holds).count();
        let common = self.holds.iter().zip(&others.holds).filter(|(one, other)| **one && **other).count();
        if all > 0 { common as f64 / all as f64 } else { 0.0 }
    }
}

/// A shape with all that lies within a reach of it.
struct Grown<'a> {
    corners: &'a [Point],
    reach: f64,
    /// Its sides, moved out by the reach (and in, where nothing is met that the corners and the sides moved out do not span).
    sides: Vec<Segment>,
}

impl<'a> Grown<'a> {
    fn of(shape: &'a Convex, reach: f64) -> Self {
        let moved = |side: Segment| {
            let out = side.vector().right().unit().unwrap_or_default() * reach;
            [out, -out].map(|by| Segment::new(side.start + by, side.end + by))
        };
        Self { corners: shape.corners(), reach, sides: shape.edges().flat_map(moved).collect() }
    }

    /// What a row that lies so far across has of it, from its first to its last place; nothing where the first comes last.
    fn span(&self, across: f64) -> (f64, f64) {
        let mut span = (f64::INFINITY, f64::NEG_INFINITY);
        let mut take_in = |place: f64| span = (span.0.min(place), span.1.max(place));
        for corner in self.corners {
            let off = corner.y - across;
            let squared = self.reach * self.reach - off * off;
            if squared >= 0.0 {
                take_in(corner.x - squared.sqrt());
                take_in(corner.x + squared.sqrt());
            }
        }
        for side in &self.sides {
            if (side.start.y > across) != (side.end.y > across) {
                take_in(along_at(*side, across));
            }
        }
        span
    }
}

/// Where a side that crosses a row meets it.
fn along_at(side: Segment, across: f64) -> f64 {
    side.at((across - side.start.y) / (side.end.y - side.start.y)).x
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::Places;
    use crate::criteria::grid::Grid;
    use crate::geometry::{Convex, Segment};

    /// A room of 3000 by 1500: 40 places by 20, each 75 square.
    fn room() -> (Grid, Vec<Point>) {
        let outline: Vec<Point> =
            [(0.0, 0.0), (3000.0, 0.0), (3000.0, -1500.0), (0.0, -1500.0)].map(|(x, y)| Point::new(x, y)).to_vec();
        (Grid::of(&outline), outline)
    }

    fn count(places: &Places) -> usize {
        places.holds.iter().filter(|holds| **holds).count()
    }

    #[test]
    fn a_room_has_its_area_in_places() {
        let (grid, outline) = room();
        assert_eq!(count(&Places::inside(grid, &outline)), 40 * 20);
    }

    #[test]
    fn what_lies_near_a_shape_is_its_area_grown() {
        let (grid, _) = room();
        let mut near = Places::none(grid);
        let block = [(1000.0, -500.0), (1600.0, -500.0), (1600.0, -900.0), (1000.0, -900.0)];
        near.set(&grid.shape(&Convex::counter_clockwise(block.map(|(x, y)| Point::new(x, y)))), 300.0, true);
        // The block, a strip along each side and a quarter disc at each corner.
        let area = 600.0 * 400.0 + 2.0 * (600.0 + 400.0) * 300.0 + std::f64::consts::PI * 300.0 * 300.0;
        let counted = count(&near) as f64 * 75.0 * 75.0;
        assert!((counted / area - 1.0).abs() < 0.03, "{counted} {area}");
    }

    #[test]
    fn a_wall_across_cuts_off_what_lies_beyond() {
        let (grid, outline) = room();
        let mut open = Places::inside(grid, &outline);
        let across = Segment::new(Point::new(1500.0, 0.0), Point::new(1500.0, -1500.0)).shape();
        open.set(&grid.shape(&across), 100.0, false);
        let mut start = Places::none(grid);
        start.set(&grid.shape(&Point::new(100.0, -100.0).into()), 150.0, true);
        let reached = open.reached_from(&start);
        // Columns stand at 37.5, 112.5 and on from the west wall; the last before 1400 is the nineteenth, at 1387.5.
        assert_eq!(count(&reached), 19 * 20);
        // Grown by 100 they take in one more, at 1462.5.
        assert_eq!(count(&reached.grown(100.0)), 20 * 20);
    }
}
