//! Rows as a workbook (`.xlsx`): one sheet, its first row held in sight, figures as numbers and days as days. The one module
//! of this member that names `rust_xlsxwriter` and `zip`.

use std::io::{self, Read, Seek};

use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, Workbook, Worksheet, XlsxError};
use zip::ZipArchive;

use super::cells::Cell;
use super::safe::safe;

/// Most rows of a sheet, its header among them (ECMA-376, M).
pub(crate) const MOST_ROWS: usize = 1 << 20;
/// Most characters of a cell (ECMA-376, M).
const LONGEST: usize = 32_767;
/// How a day is shown.
const DAY: &str = "yyyy-mm-dd";
/// Narrowest column, characters; C: a name of two words, a figure with its decimals.
const NARROWEST: usize = 12;
/// Who a workbook says that it is by.
const MAKER: &str = "elbowroom";
/// The year that a workbook says that it was made in: the same rows are the same bytes.
const YEAR: u16 = 2000;
/// The part of a workbook that says by whom and when it was last changed.
const PROPERTIES: &str = "docProps/core.xml";
/// Longest such part that is looked at, bytes.
const LONGEST_PROPERTIES: u64 = 1 << 14;

/// A workbook under way, row by row, whose memory does not grow with its rows.
pub(crate) struct BookOfRows {
    book: Workbook,
    rows: u32,
}

impl BookOfRows {
    /// One with a header.
    ///
    /// # Errors
    /// The system has no room for a temporary file.
    pub(crate) fn new(heads: &[Cell]) -> io::Result<Self> {
        let mut book = Workbook::new();
        let made = ExcelDateTime::from_ymd(YEAR, 1, 1).map_err(of_the_writer)?;
        book.set_properties(&DocProperties::new().set_author(MAKER).set_creation_datetime(&made));
        let sheet = book.add_worksheet_with_constant_memory().map_err(of_the_writer)?;
        sheet.set_freeze_panes(1, 0).map_err(of_the_writer)?;
        let bold = Format::new().set_bold();
        for (column, head) in (0_u16..).zip(heads) {
            let text = fitted(head.shown());
            let width = text.chars().count().max(NARROWEST) + 1;
            // At most as wide as a cell is long.
            sheet.set_column_width(column, width as f64).map_err(of_the_writer)?;
            sheet.write_string_with_format(0, column, text, &bold).map_err(of_the_writer)?;
        }
        Ok(Self { book, rows: 1 })
    }

    /// Adds a row.
    ///
    /// # Errors
    /// There are [`MOST_ROWS`] already, or the system has no room.
    pub(crate) fn add(&mut self, cells: &[Cell]) -> io::Result<()> {
        let sheet = self.book.worksheet_from_index(0).map_err(of_the_writer)?;
        for (column, cell) in (0_u16..).zip(cells) {
            put(sheet, self.rows, column, cell).map_err(of_the_writer)?;
        }
        self.rows += 1;
        Ok(())
    }

    /// The file.
    ///
    /// # Errors
    /// The system has no room for it.
    pub(crate) fn bytes(mut self) -> io::Result<Vec<u8>> {
        self.book.save_to_buffer().map_err(of_the_writer)
    }
}

/// Rows, the first of them the header, as a file.
///
/// # Errors
/// As of [`BookOfRows`].
pub(crate) fn workbook(rows: &[Vec<Cell>]) -> io::Result<Vec<u8>> {
    let (heads, rows) = rows.split_first().map_or((&[][..], rows), |(heads, rows)| (heads, rows));
    let mut book = BookOfRows::new(heads)?;
    for row in rows {
        book.add(row)?;
    }
    book.bytes()
}

/// Whether a file is a workbook as made here, and nobody has saved it again since.
pub(crate) fn is_as_made(file: impl Read + Seek) -> bool {
    let Ok(mut archive) = ZipArchive::new(file) else { return false };
    let Ok(part) = archive.by_name(PROPERTIES) else { return false };
    let mut text = String::new();
    let by = format!("<cp:lastModifiedBy>{MAKER}</cp:lastModifiedBy>");
    let when = format!(">{YEAR}-01-01T00:00:00Z</dcterms:modified>");
    part.take(LONGEST_PROPERTIES).read_to_string(&mut text).is_ok() && text.contains(&by) && text.contains(&when)
}

fn put(sheet: &mut Worksheet, row: u32, column: u16, cell: &Cell) -> Result<(), XlsxError> {
    let text = fitted(cell.shown());
    let put = match (cell, cell.shown().parse::<f64>(), ExcelDateTime::parse_from_str(&text)) {
        _ if text.is_empty() => return Ok(()),
        (Cell::Number(_), Ok(number), _) => sheet.write_number(row, column, number),
        (Cell::Day(_), _, Ok(day)) => {
            sheet.write_datetime_with_format(row, column, &day, &Format::new().set_num_format(DAY))
        }
        _ => sheet.write_string(row, column, text),
    };
    put.map(|_| ())
}

/// A text on one line, cut where it is longer than a cell: then it ends in dots. What stands in a cell of text is shown and
/// never run.
fn fitted(text: &str) -> String {
    let shown = safe(text);
    if shown.chars().count() <= LONGEST {
        return shown;
    }
    shown.chars().take(LONGEST - 1).chain(['…']).collect()
}

fn of_the_writer(why: XlsxError) -> io::Error {
    io::Error::other(why.to_string())
}

#[cfg(test)]
mod tests {
    use std::io::Cursor;

    use super::{Cell, LONGEST, fitted, is_as_made, workbook};

    #[test]
    fn the_same_rows_are_the_same_bytes_and_known_again() {
        let rows = [vec![Cell::text("name"), Cell::text("width_cm")], vec![Cell::text("=1+1"), Cell::number("212.5")]];
        let made = workbook(&rows).unwrap();
        assert_eq!(made, workbook(&rows).unwrap());
        assert!(is_as_made(Cursor::new(&made)));
        for other in [&b""[..], b"PK\x03\x04", &made[..made.len() / 2]] {
            assert!(!is_as_made(Cursor::new(other)));
        }
    }

    #[test]
    fn no_text_is_longer_than_a_cell() {
        assert_eq!(fitted("two\nlines"), "two lines");
        let long = fitted(&"x".repeat(LONGEST + 1));
        assert!(long.chars().count() == LONGEST && long.ends_with('…'));
        assert_eq!(fitted(&"é".repeat(LONGEST)).chars().count(), LONGEST);
    }
}
