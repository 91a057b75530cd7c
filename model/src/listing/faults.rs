//! What is wrong with a table: the faults found so far, and all of them at the end.

use super::grid::{LONGEST_CELL, MOST_COLUMNS};
use crate::fault::{Fault, Place};
use crate::quote::quoted;

/// Faults that are told one by one; any more are counted.
pub const MOST_FAULTS: usize = 1000;

/// What is wrong with a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Faults {
    /// The first [`MOST_FAULTS`], in the order of their lines. A place has the line; of a sheet also the column, from 1, and 0
    /// where the fault is the row's.
    pub told: Vec<Fault>,
    /// How many more there are.
    pub beyond: usize,
    /// The sheet that the table stands in: lines are its rows. `None` where the table is text.
    pub sheet: Option<String>,
}

impl Faults {
    /// One fault of a table that is text, or of no sheet.
    pub(super) fn one(fault: Fault) -> Self {
        Self { told: vec![fault], beyond: 0, sheet: None }
    }
}

/// The faults so far.
#[derive(Debug, Default)]
pub(super) struct FaultList {
    faults: Vec<Fault>,
    beyond: usize,
    sheet: Option<String>,
}

impl FaultList {
    /// Adds a fault of `item` (empty: of the list as a whole) on `line` (0: on none).
    pub(super) fn add(&mut self, line: usize, code: &'static str, item: &str, message: String, remedy: String) {
        self.add_in(line, 0, code, item, message, remedy);
    }

    /// Adds a fault of the cell in this column, from 1.
    pub(super) fn add_in(
        &mut self,
        line: usize,
        column: usize,
        code: &'static str,
        item: &str,
        message: String,
        remedy: String,
    ) {
        if self.faults.len() >= MOST_FAULTS {
            self.beyond += 1;
            return;
        }
        // A line of text is told as a whole.
        let column = if self.is_of_sheet() { column } else { 1 };
        let place = (line > 0).then_some(Place { line, column, offset: 0, length: 0 });
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

    /// Tells that a row has another count of cells than the header.
    pub(super) fn wrong_count(&mut self, line: usize, found: usize, wanted: usize) {
        let message = format!("The row has {found} cells, the header {wanted}.");
        let remedy = match (&self.sheet, found > wanted) {
            (Some(_), _) => "Write a header over each column, and nothing beside the table.",
            (None, true) => "Put quotes round a cell that holds what parts the cells (`\"Heron, oak\"`).",
            (None, false) => "Leave a cell empty rather than out.",
        };
        self.add(line, "wrong_count", "", message, remedy.to_owned());
    }

    /// Tells that a cell is longer than any of a list.
    pub(super) fn cell_too_long(&mut self, line: usize, column: usize) {
        let message = format!("A cell holds more than {LONGEST_CELL} bytes.");
        let remedy = "Shorten it: no column of a list holds so much.".to_owned();
        self.add_in(line, column, "cell_too_long", "", message, remedy);
    }

    /// All that is told from here on is of this sheet of a workbook.
    pub(super) fn in_sheet(&mut self, name: &str) {
        self.sheet = Some(quoted(name));
    }

    pub(super) const fn is_of_sheet(&self) -> bool {
        self.sheet.is_some()
    }

    /// The sheet that the table stands in.
    pub(super) fn sheet(&self) -> Option<String> {
        self.sheet.clone()
    }

    /// `line 3`, or `row 3` in a sheet.
    pub(super) fn called(&self, line: usize) -> String {
        format!("{} {line}", if self.is_of_sheet() { "row" } else { "line" })
    }

    pub(super) fn is_empty(&self) -> bool {
        self.faults.is_empty()
    }

    pub(super) fn count(&self) -> usize {
        self.faults.len() + self.beyond
    }

    pub(super) fn into_faults(mut self) -> Faults {
        self.faults.sort_by(Fault::before);
        Faults { told: self.faults, beyond: self.beyond, sheet: self.sheet }
    }
}
