//! A table as text cells, before anything is understood of them, and the faults found so far.

use super::{Faults, MOST_FAULTS};
use crate::fault::{Fault, Place, quoted};
use crate::length::Unit;

/// A table of text cells.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Grid {
    /// Column headers as written.
    pub headers: Vec<String>,
    /// Line of the headers; 0 where every row names its own keys.
    pub header_line: usize,
    /// The rows.
    pub rows: Vec<GridRow>,
    /// Unit for the whole table, where it says one.
    pub units: Option<Unit>,
}

/// A row of text cells.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct GridRow {
    /// Line it starts on, from 1.
    pub line: usize,
    /// Cells in the order of the headers; empty, or none for the last headers: nothing is said.
    pub cells: Vec<String>,
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

/// The faults so far.
#[derive(Debug, Default)]
pub(super) struct Told {
    faults: Vec<Fault>,
    beyond: usize,
}

impl Told {
    /// Adds a fault of `item` (empty: of the list as a whole) on `line` (0: on none).
    pub(super) fn add(&mut self, line: usize, code: &'static str, item: &str, message: String, remedy: String) {
        if self.faults.len() >= MOST_FAULTS {
            self.beyond += 1;
            return;
        }
        let place = (line > 0).then_some(Place { line, column: 1, offset: 0, length: 0 });
        let item = (!item.is_empty()).then(|| quoted(item));
        self.faults.push(Fault { code, item, message, remedy, place });
    }

    /// Tells that a table has more rows than are taken.
    pub(super) fn too_many(&mut self, count: usize, most: usize) {
        let message = format!("The list has {count} rows; at most {most} are taken.");
        self.add(0, "too_many", "", message, "Leave out what cannot be meant, or split the list.".to_owned());
    }

    /// Tells that a table has a mark between cells here and there, and no cell in which something stands.
    pub(super) fn nothing(&mut self) {
        let remedy = "Write a header line (kind, name, width, depth) and a row for each piece.".to_owned();
        self.add(0, "empty_file", "", "The list is empty.".to_owned(), remedy);
    }

    /// Tells that a table has more columns than any list.
    pub(super) fn too_many_columns(&mut self, line: usize) {
        let message = format!("The list has more than {MOST_COLUMNS} columns.");
        self.add(line, "too_many", "", message, "Keep the columns that tell of a piece.".to_owned());
    }

    pub(super) fn is_empty(&self) -> bool {
        self.faults.is_empty()
    }

    pub(super) fn count(&self) -> usize {
        self.faults.len() + self.beyond
    }

    pub(super) fn into_faults(mut self) -> Faults {
        self.faults.sort_by(Fault::before);
        Faults { told: self.faults, beyond: self.beyond }
    }
}
