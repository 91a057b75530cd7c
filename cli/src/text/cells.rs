//! Rows and cells of a spreadsheet, which must show their text and not run it.

use std::io;

use csv::{QuoteStyle, WriterBuilder};

use super::safe::safe;

/// What a spreadsheet takes for the start of a formula (OWASP, CSV injection: `=`, `+`, `-`, `@`, and their full-width
/// forms; tab and line ends cannot occur, since [`safe`] makes spaces of them).
const STARTS: [char; 8] = ['=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'];

/// What tells a spreadsheet that a file is UTF-8: without it letters beyond ASCII are read in the system's own table (common
/// practice, no source). Readers of CSV pass over it.
pub(crate) const BYTE_ORDER_MARK: &str = "\u{feff}";

/// What stands in a cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Cell {
    /// A text from a file or of ours.
    Text(String),
    /// A figure, decimals behind a point.
    Number(String),
    /// A day, `2026-03-14`.
    Day(String),
}

impl Cell {
    /// A cell in which nothing stands.
    pub(crate) const EMPTY: Self = Self::Text(String::new());

    /// Of a text.
    pub(crate) fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    /// Of a figure as it is told.
    pub(crate) fn number(figure: impl ToString) -> Self {
        Self::Number(figure.to_string())
    }

    /// Of a figure, empty where there is none.
    pub(crate) fn maybe(figure: Option<impl ToString>) -> Self {
        figure.map_or(Self::EMPTY, Self::number)
    }

    /// Of a day, empty where there is none.
    pub(crate) fn day(day: Option<&str>) -> Self {
        day.map_or(Self::EMPTY, |day| Self::Day(day.to_owned()))
    }

    /// What stands in it.
    pub(crate) fn shown(&self) -> &str {
        match self {
            Self::Text(text) | Self::Number(text) | Self::Day(text) => text,
        }
    }

    /// As a cell of CSV.
    fn separated(&self) -> String {
        match self {
            Self::Text(text) => cell(text),
            Self::Number(text) | Self::Day(text) => text.clone(),
        }
    }
}

/// `text` on one line; an apostrophe before what would be taken for a formula, which a spreadsheet does not show.
fn cell(text: &str) -> String {
    let shown = safe(text);
    if shown.trim_start().starts_with(STARTS) { format!("'{shown}") } else { shown }
}

/// Cells as a line of CSV: each text in quotes, so that no sign in it starts another cell.
///
/// # Errors
/// None that a line in memory could bring about.
pub(crate) fn line(cells: &[Cell]) -> io::Result<String> {
    let mut writer = WriterBuilder::new().quote_style(QuoteStyle::NonNumeric).from_writer(Vec::new());
    writer.write_record(cells.iter().map(Cell::separated))?;
    let bytes = writer.into_inner().map_err(|error| io::Error::other(error.to_string()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// Rows as a file of CSV: with a mark before them where they hold letters beyond ASCII.
///
/// # Errors
/// As of [`line`].
pub(crate) fn file(rows: &[Vec<Cell>]) -> io::Result<String> {
    let text = lines(rows)?;
    Ok(if text.is_ascii() { text } else { format!("{BYTE_ORDER_MARK}{text}") })
}

/// Rows as CSV.
///
/// # Errors
/// As of [`line`].
pub(crate) fn lines(rows: &[Vec<Cell>]) -> io::Result<String> {
    rows.iter().map(|row| line(row)).collect()
}

#[cfg(test)]
mod tests {
    use super::{Cell, cell, file};

    #[test]
    fn a_file_has_a_mark_where_a_spreadsheet_needs_it() {
        let of = |text: &str| file(&[vec![Cell::text(text)]]).unwrap();
        assert_eq!((of("Bank").as_str(), of("B\u{e4}nk").as_str()), ("\"Bank\"\n", "\u{feff}\"B\u{e4}nk\"\n"));
    }

    #[test]
    fn a_formula_is_shown_and_not_run() {
        // Starts of formulas as OWASP lists them under CSV injection (P).
        for text in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "\u{ff1d}1", "=cmd|' /C calc'!A0"]
        {
            assert!(cell(text).starts_with('\''), "{text:?}");
        }
        for text in ["canal flat", "a=1", "3-seat", "'=1", ""] {
            assert_eq!(cell(text), text);
        }
        assert_eq!(cell("a\u{1b}[2J\nb"), "a\u{fffd}[2J b");
    }
}
