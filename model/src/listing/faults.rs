//! What is wrong with a table: the faults found so far, and all of them at the end.

use super::grid::MOST_COLUMNS;
use crate::fault::{Fault, Place};
use crate::quote::quoted;

/// Faults that are told one by one; any more are counted.
pub const MOST_FAULTS: usize = 1000;

/// What is wrong with a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Faults {
    /// The first [`MOST_FAULTS`], in the order of their lines. A place has the line, and no column.
    pub told: Vec<Fault>,
    /// How many more there are.
    pub beyond: usize,
}

/// The faults so far.
#[derive(Debug, Default)]
pub(super) struct FaultList {
    faults: Vec<Fault>,
    beyond: usize,
}

impl FaultList {
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
