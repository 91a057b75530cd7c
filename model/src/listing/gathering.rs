//! Rows as they come in, however they are written down: the first has the headers, so many of the others are taken.

use super::faults::FaultList;
use super::grid::{Grid, GridRow, LONGEST_CELL, MOST_COLUMNS};

/// The rows so far.
pub(super) struct Gathering {
    grid: Grid,
    count: usize,
    most_rows: usize,
}

impl Gathering {
    /// None yet; `most_rows` at most are taken.
    pub(super) fn new(most_rows: usize) -> Self {
        Self { grid: Grid::default(), count: 0, most_rows }
    }

    /// Whether one more row would be taken.
    pub(super) const fn takes_more(&self) -> bool {
        self.count < self.most_rows
    }

    /// Whether the header is known.
    pub(super) const fn has_header(&self) -> bool {
        self.grid.header_line > 0
    }

    /// One more row, that is at fault and told so: it counts, and is left out.
    pub(super) const fn left_out(&mut self) {
        self.count += 1;
    }

    /// One more row, that on `line`; `numbers`: the places of cells that are numbers and no text. `None` after a fault that
    /// keeps the table from being read.
    pub(super) fn row<'c>(
        &mut self,
        line: usize,
        cells: impl Iterator<Item = &'c str> + Clone,
        numbers: Vec<usize>,
        told: &mut FaultList,
    ) -> Option<()> {
        if cells.clone().all(|cell| cell.trim().is_empty()) {
            return Some(());
        }
        if self.grid.headers.is_empty() {
            if cells.clone().count() > MOST_COLUMNS {
                told.too_many_columns(line);
                return None;
            }
            self.grid.headers = cells.map(|cell| cell.trim().to_owned()).collect();
            self.grid.header_line = line;
            return Some(());
        }
        self.count += 1;
        if self.count <= self.most_rows {
            self.take(line, cells, numbers, told);
        }
        Some(())
    }

    fn take<'c>(
        &mut self,
        line: usize,
        cells: impl Iterator<Item = &'c str> + Clone,
        numbers: Vec<usize>,
        told: &mut FaultList,
    ) {
        let (found, wanted) = (cells.clone().count(), self.grid.headers.len());
        let trailing = cells.clone().skip(wanted).all(|cell| cell.trim().is_empty());
        // A sheet has no cells where nothing is written.
        if (found < wanted && !told.is_of_sheet()) || !trailing {
            told.wrong_count(line, found, wanted);
            return;
        }
        if let Some(place) = cells.clone().position(|cell| cell.len() > LONGEST_CELL) {
            told.cell_too_long(line, place + 1);
            return;
        }
        let cells = cells.take(wanted).map(|cell| cell.trim().to_owned()).collect();
        self.grid.rows.push(GridRow { line, cells, numbers });
    }

    /// The table; `None` after a fault that keeps it from being read.
    pub(super) fn finish(self, told: &mut FaultList) -> Option<Grid> {
        if self.grid.headers.is_empty() {
            told.nothing();
            return None;
        }
        if self.count > self.most_rows {
            told.too_many(self.count, self.most_rows);
            return None;
        }
        Some(self.grid)
    }
}
