//! A table as text cells, before anything is understood of them.

use crate::unit::Unit;

/// A table of text cells.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Grid {
    /// Column headers as written.
    pub headers: Vec<String>,
    /// Line of the headers, or their row in a sheet; 0 where every row names its own keys.
    pub header_line: usize,
    /// The rows.
    pub rows: Vec<GridRow>,
    /// Unit for the whole table, where it says one.
    pub units: Option<Unit>,
}

/// A row of text cells.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct GridRow {
    /// Line it starts on, or its row in a sheet, from 1.
    pub line: usize,
    /// Cells in the order of the headers; empty, or none for the last headers: nothing is said.
    pub cells: Vec<String>,
    /// Places of cells that are numbers and no text, whose decimals a point parts whatever the table's texts have.
    pub numbers: Vec<usize>,
}

impl Grid {
    /// The place of the column `key`, made where there is none yet.
    pub(super) fn column(&mut self, key: &str) -> usize {
        if let Some(place) = self.headers.iter().position(|header| header == key) {
            return place;
        }
        self.headers.push(key.to_owned());
        self.headers.len() - 1
    }
}

/// Most columns that a table may have.
pub(super) const MOST_COLUMNS: usize = 200;
/// Longest cell, bytes.
pub(super) const LONGEST_CELL: usize = 1 << 20;
