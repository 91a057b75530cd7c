//! The free places cut into slabs by upright lines, and which of their cells are joined.

use elbowroom_model::Point;

use super::free_space::FreeSpace;
use crate::verify::tolerance::{BESIDE, SHARED, TOGETHER};

/// A free stretch of a slab: one cell, seen at both of the slab's sides.
struct Cell {
    left: (f64, f64),
    right: (f64, f64),
}

/// The cells of each slab and which of them are one.
pub(super) struct Slabs {
    /// Where each slab starts and ends, and its first cell.
    slabs: Vec<(f64, f64, usize)>,
    cells: Vec<Cell>,
    parents: Vec<usize>,
}

impl Slabs {
    /// The slabs of the free places.
    pub(super) fn of(space: &FreeSpace) -> Self {
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
    pub(super) fn joined(&self, space: &FreeSpace, starts: &[Point], ends: &[Point]) -> bool {
        let roots = |places: &[Point]| -> Vec<usize> {
            places.iter().filter_map(|place| Some(self.root(self.cell_of(space, *place)?))).collect()
        };
        let ends = roots(ends);
        roots(starts).iter().any(|start| ends.contains(start))
    }
}
