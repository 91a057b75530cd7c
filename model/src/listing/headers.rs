//! The headers of one list: which column each means, what is missing, what was mistyped.

use std::collections::BTreeMap;

use super::asked::Asked;
use super::columns::{self, Column, Meant, Which};
use super::faults::FaultList;
use super::grid::Grid;
use crate::quote::quoted;

/// Where each column stands, with what its header says.
pub(super) type Places = BTreeMap<Which, (usize, Meant)>;

/// Columns that every list needs.
pub(super) const NEEDED: [Column; 3] = [Column::Kind, Column::Width, Column::Depth];

/// Where the columns of `grid` stand, and the headers that say nothing here.
pub(super) fn headers(grid: &Grid, asked: &Asked<'_>, told: &mut FaultList) -> (Places, Vec<String>) {
    let (mut places, mut strange): (Places, Vec<&String>) = (Places::new(), Vec::new());
    let line_of = |place: usize| match grid.header_line {
        // Rows grow with the keys they name, so this is the first that names it.
        0 => grid.rows.iter().find(|row| row.cells.len() > place).map_or(0, |row| row.line),
        line => line,
    };
    for (place, header) in grid.headers.iter().enumerate() {
        let Some(meant) = columns::meant(header, asked.extra) else {
            strange.push(header);
            continue;
        };
        if let Some((first, _)) = places.get(&meant.which) {
            let first = grid.headers.get(*first).map_or("", String::as_str);
            let message = format!("`{}` and `{}` are one column.", quoted(first), quoted(header));
            told.add_in(line_of(place), place + 1, "column_twice", "", message, "Keep one of the two.".to_owned());
            continue;
        }
        places.insert(meant.which, (place, meant));
    }
    let taken: Vec<Which> = places.keys().copied().collect();
    let before = told.count();
    let (mut passed_over, mut slips) = (Vec::new(), Vec::new());
    for header in strange {
        match columns::nearest(header, asked.extra, &taken) {
            Some(near) => {
                slips.push(near);
                let place = grid.headers.iter().position(|one| one == header).unwrap_or(0);
                let message = format!("`{}` is no column that is known.", quoted(header));
                told.add_in(
                    line_of(place),
                    place + 1,
                    "unknown_column",
                    "",
                    message,
                    format!("Did you mean `{near}`?"),
                );
            }
            None if header.is_empty() => {}
            None => passed_over.push(quoted(header)),
        }
    }
    // Of rows that name their own keys, and were at fault, nobody knows what they would have had.
    let unread = grid.header_line == 0 && before > 0;
    let is_missing = |column: &Column| !places.contains_key(&Which::Usual(*column)) && !slips.contains(&column.key());
    for column in NEEDED.into_iter().filter(|column| !unread && is_missing(column)) {
        let message = format!("The list has no column `{}`.", column.key());
        let remedy = format!("Width runs along the back, depth away from it. Columns: {}.", columns::all(asked.extra));
        told.add(grid.header_line, "missing_column", "", message, remedy);
    }
    (places, passed_over)
}
