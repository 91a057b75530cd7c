//! The rows of one list while they are read.

use std::collections::BTreeMap;

use crate::listing::Asked;
use crate::listing::columns::{Column, Which};
use crate::listing::faults::FaultList;
use crate::listing::figure::Style;
use crate::listing::grid::{Grid, GridRow};
use crate::listing::headers::Places;

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

    pub(super) fn usual<'b>(&self, row: &'b GridRow, column: Column) -> &'b str {
        self.cell(row, Which::Usual(column))
    }
}
