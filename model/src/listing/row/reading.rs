//! The rows of one list while they are read.

use std::collections::BTreeMap;

use crate::listing::columns::{Column, Which};
use crate::listing::faults::FaultList;
use crate::listing::figure::Style;
use crate::listing::grid::{Grid, GridRow};
use crate::listing::headers::Places;
use crate::listing::{Asked, Decimals};

/// Reads the rows of one list.
pub(super) struct Reading<'a> {
    pub grid: &'a Grid,
    pub asked: &'a Asked<'a>,
    pub places: &'a Places,
    pub style: Style,
    /// The currency so far, and the line that said it.
    pub currency: Option<(String, usize)>,
    /// Prices without a currency: line, name, price as written.
    pub unpriced: Vec<(usize, String, String)>,
    /// Columns with bare numbers that no unit is given for: how many, and the line of the first.
    pub bare: BTreeMap<Column, (usize, usize)>,
    pub told: &'a mut FaultList,
}

impl Reading<'_> {
    pub(super) fn cell<'b>(&self, row: &'b GridRow, which: Which) -> &'b str {
        let place = self.places.get(&which).map(|(place, _)| *place);
        place.and_then(|place| row.cells.get(place)).map_or("", String::as_str)
    }

    /// Adds a fault of what the row has in the column; in a list that has no such column, of the row.
    pub(super) fn tell(
        &mut self,
        row: &GridRow,
        column: Column,
        code: &'static str,
        name: &str,
        message: String,
        remedy: String,
    ) {
        let at = self.places.get(&Which::Usual(column)).map_or(0, |(place, _)| place + 1);
        self.told.add_in(row.line, at, code, name, message, remedy);
    }

    /// How the figure in the column is written: a number that is no text has its decimals behind a point.
    pub(super) fn style_of(&self, row: &GridRow, column: Column) -> Style {
        let is_number = self.places.get(&Which::Usual(column)).is_some_and(|(place, _)| row.numbers.contains(place));
        if is_number { Style { said: Some(Decimals::Point), has_commas: false } } else { self.style }
    }

    pub(super) fn usual<'b>(&self, row: &'b GridRow, column: Column) -> &'b str {
        self.cell(row, Which::Usual(column))
    }
}
