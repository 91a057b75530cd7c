//! A table of text: columns as wide as they must be, the last one wrapped into what is left.

use textwrap::core::display_width;

use super::safe::safe;

/// Columns between columns.
const BETWEEN: usize = 2;
/// The last column stands on lines of its own where it would be narrower than this.
const NARROWEST_LAST: usize = 20;
/// How far in it stands there.
const OWN_LINE_INDENT: usize = 4;
/// A cell before the last is cut to this many columns: a name may be as long as a file.
const WIDEST_CELL: usize = 34;

/// Where the text of a column stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Stand {
    /// At its left.
    Left,
    /// At its right: figures.
    Right,
}

/// A table, rows of cells under heads.
#[derive(Debug)]
pub(crate) struct Table {
    stands: Vec<Stand>,
    heads: Option<Vec<String>>,
    rows: Vec<Vec<String>>,
}

impl Table {
    /// A table with a head over each column; a figure's column stands right.
    pub(crate) fn new(heads: &[(&str, Stand)]) -> Self {
        let stands = heads.iter().map(|(_, stand)| *stand).collect();
        let heads: Vec<String> = heads.iter().map(|(head, _)| safe(head)).collect();
        let heads = heads.iter().any(|head| !head.is_empty()).then_some(heads);
        Self { stands, heads, rows: Vec::new() }
    }

    /// Adds a row.
    pub(crate) fn row<const N: usize>(&mut self, cells: [String; N]) {
        self.rows.push(cells.iter().map(|cell| safe(cell)).collect());
    }

    /// Adds a row of as many cells as there are columns.
    pub(crate) fn cells(&mut self, cells: Vec<String>) {
        self.rows.push(cells.iter().map(|cell| safe(cell)).collect());
    }

    /// Whether no row was added.
    pub(crate) const fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// Whether the first line drawn holds heads.
    pub(crate) const fn has_heads(&self) -> bool {
        self.heads.is_some()
    }

    /// The lines of the table in `width` columns. Columns with nothing in them are left out.
    pub(crate) fn drawn(&self, width: usize) -> Vec<String> {
        let widths = self.widths();
        let Some((_, before)) = widths.split_last() else { return Vec::new() };
        let used: usize = before.iter().filter(|width| **width > 0).map(|width| width + BETWEEN).sum();
        let left = width.saturating_sub(used);
        let rows = self.heads.iter().chain(&self.rows);
        rows.flat_map(|row| self.drawn_row(row, before, used, left, width)).collect()
    }

    fn drawn_row(&self, row: &[String], before: &[usize], used: usize, left: usize, width: usize) -> Vec<String> {
        let mut start = String::new();
        for ((cell, column), stand) in row.iter().zip(before).zip(&self.stands) {
            if *column > 0 {
                start.push_str(&padded(cell, *column, *stand));
                start.push_str(&" ".repeat(BETWEEN));
            }
        }
        let last = row.get(before.len()).map_or("", String::as_str);
        if last.is_empty() {
            return vec![start];
        }
        if left < NARROWEST_LAST.min(display_width(last)) {
            let own = wrapped(last, width.saturating_sub(OWN_LINE_INDENT)).into_iter();
            return std::iter::once(start).chain(own.map(|line| " ".repeat(OWN_LINE_INDENT) + &line)).collect();
        }
        let lines = wrapped(last, left).into_iter().enumerate();
        lines.map(|(place, line)| if place == 0 { start.clone() + &line } else { " ".repeat(used) + &line }).collect()
    }

    /// How wide each column must be; 0 where no row has anything in it.
    fn widths(&self) -> Vec<usize> {
        let width = |column: usize| {
            let cells = |row: &Vec<String>| row.get(column).map_or(0, |cell| display_width(cell).min(WIDEST_CELL));
            let filled = self.rows.iter().map(cells).max().unwrap_or(0);
            let head = self.heads.as_ref().map_or(0, cells);
            if filled == 0 { 0 } else { filled.max(head) }
        };
        (0..self.stands.len()).map(width).collect()
    }
}

/// `cell` filled up to `width` columns, or cut to them.
fn padded(cell: &str, width: usize, stand: Stand) -> String {
    let cell = cut(cell, width);
    let fill = " ".repeat(width.saturating_sub(display_width(&cell)));
    match stand {
        Stand::Left => cell + &fill,
        Stand::Right => fill + &cell,
    }
}

/// `text`, its end cut off with a mark where it is wider than `width`.
fn cut(text: &str, width: usize) -> String {
    if display_width(text) <= width {
        return text.to_owned();
    }
    let mut kept = String::new();
    for character in text.chars() {
        if display_width(&kept) + display_width(character.encode_utf8(&mut [0; 4])) + 1 > width {
            break;
        }
        kept.push(character);
    }
    kept + "\u{2026}"
}

fn wrapped(text: &str, width: usize) -> Vec<String> {
    let options = textwrap::Options::new(width.max(1)).wrap_algorithm(textwrap::WrapAlgorithm::FirstFit);
    textwrap::wrap(text, options).into_iter().map(std::borrow::Cow::into_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::{Stand, Table};

    #[test]
    fn the_last_column_wraps_and_figures_stand_right() {
        let mut table = Table::new(&[("piece", Stand::Left), ("width", Stand::Right), ("held by", Stand::Left)]);
        table.row(["sofa".into(), "9".into(), "the hall door's swing and its landing".into()]);
        assert_eq!(
            table.drawn(36),
            ["piece  width  held by", "sofa       9  the hall door's swing", "              and its landing"]
        );
    }
}
