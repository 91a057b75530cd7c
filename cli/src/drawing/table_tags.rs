//! A table of a PDF as whoever has it read aloud is told it: rows of cells, each under its head.

use std::collections::BTreeMap;

use krilla::tagging::{Identifier, TableHeaderScope, Tag, TagGroup};

use super::InTable;

/// The cells of a table, or of the part of one that a page holds.
#[derive(Default)]
pub(super) struct TableTags {
    rows: BTreeMap<usize, BTreeMap<usize, CellTags>>,
}

/// A cell: the lines in it.
struct CellTags {
    is_head: bool,
    lines: Vec<Identifier>,
}

impl TableTags {
    /// A table with its first cell.
    pub(super) fn from(cell: InTable, line: Identifier) -> Self {
        let mut table = Self::default();
        table.put(cell, line);
        table
    }

    /// Whether a cell is of this table: those of another begin anew at its top.
    pub(super) fn goes_on_to(&self, cell: InTable) -> bool {
        self.rows.last_key_value().is_some_and(|(last, _)| cell.row >= *last)
    }

    /// Puts a line into a cell.
    pub(super) fn put(&mut self, cell: InTable, line: Identifier) {
        let row = self.rows.entry(cell.row).or_default();
        let lines = row.entry(cell.column).or_insert_with(|| CellTags { is_head: cell.is_head, lines: Vec::new() });
        lines.lines.push(line);
    }

    /// The whole table; a cell with nothing in it stands in its place all the same.
    pub(super) fn whole(self) -> TagGroup {
        let columns = self.rows.values().filter_map(|row| row.last_key_value()).map(|(last, _)| last + 1).max();
        let mut table = TagGroup::new(Tag::Table);
        for (_, mut cells) in self.rows {
            let is_heads = cells.values().all(|cell| cell.is_head);
            let mut row = TagGroup::new(Tag::TR);
            for column in 0..columns.unwrap_or(0) {
                let cell = cells.remove(&column).unwrap_or(CellTags { is_head: is_heads, lines: Vec::new() });
                row.push(cell.whole());
            }
            table.push(row);
        }
        table
    }
}

impl CellTags {
    fn whole(self) -> TagGroup {
        let mut cell = match self.is_head {
            true => TagGroup::new(Tag::TH(TableHeaderScope::Column)),
            false => TagGroup::new(Tag::TD),
        };
        self.lines.into_iter().for_each(|line| cell.push(line));
        cell
    }
}
