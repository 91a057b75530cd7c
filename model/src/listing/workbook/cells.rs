//! The rows of a sheet, cell by cell, each as the text that a list would have there.

use std::io::{Read, Seek};

use calamine::{DataRef, ExcelDateTime, Xlsx, XlsxCellReader, XlsxError};

use super::container::NotRead;
use crate::listing::encoding::LARGEST;
use crate::listing::faults::FaultList;
use crate::listing::grid::{LONGEST_CELL, MOST_COLUMNS};

/// Digits that a spreadsheet computes with: what stands behind them (84.10000000000001) nobody has written.
const DIGITS: usize = 15;

/// A cell as read.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Cell {
    /// What it says.
    pub(super) text: String,
    /// It is a number, and no text that looks like one.
    is_number: bool,
    /// Why what it says is not to be had.
    amiss: Option<Amiss>,
}

/// Why what a cell says is not to be had.
#[derive(Debug, Clone, PartialEq)]
enum Amiss {
    /// Its formula comes to this error.
    Error(String),
    /// It has a formula, and nobody has worked it out yet.
    NotWorkedOut,
    /// It is longer than any cell of a list.
    TooLong,
}

/// A row in which something is written.
#[derive(Debug, PartialEq)]
pub(super) struct SheetRow {
    /// Its number in the sheet, from 1.
    pub(super) line: usize,
    /// Its cells from the first column on.
    pub(super) cells: Vec<Cell>,
}

impl SheetRow {
    /// The columns that hold a number, from 0.
    pub(super) fn numbers(&self) -> Vec<usize> {
        self.cells.iter().enumerate().filter(|(_, cell)| cell.is_number).map(|(place, _)| place).collect()
    }

    /// Tells each cell whose content is not to be had; whether there is one.
    pub(super) fn tell_amiss(&self, told: &mut FaultList) -> bool {
        for (place, cell) in self.cells.iter().enumerate() {
            let Some(amiss) = &cell.amiss else { continue };
            let (message, remedy) = match amiss {
                Amiss::TooLong => {
                    told.cell_too_long(self.line, place + 1);
                    continue;
                }
                Amiss::Error(error) => {
                    (format!("The cell holds the error `{error}`."), "Mend its formula, or empty the cell.")
                }
                Amiss::NotWorkedOut => (
                    "The cell holds a formula that is not worked out.".to_owned(),
                    "Open the workbook in a spreadsheet program and save it again, or write the value itself.",
                ),
            };
            told.add_in(self.line, place + 1, "cell_error", "", message, remedy.to_owned());
        }
        self.cells.iter().any(|cell| cell.amiss.is_some())
    }
}

/// Why a sheet is not read to its end.
pub(super) enum Stopped {
    /// Its reader stumbles.
    Damaged,
    /// Its cells say more than is read of a list.
    TooLarge,
}

impl From<XlsxError> for Stopped {
    fn from(_: XlsxError) -> Self {
        Self::Damaged
    }
}

impl Stopped {
    pub(super) fn tell(self, told: &mut FaultList) {
        match self {
            Self::Damaged => NotRead::Damaged.tell(told),
            Self::TooLarge => NotRead::TooLarge.tell(told),
        }
    }
}

/// The rows of a sheet, one after another.
pub(super) struct Rows<'b, R: Read + Seek> {
    reader: XlsxCellReader<'b, R>,
    /// The first cell of the row after.
    ahead: Option<(usize, usize, Cell)>,
    /// Bytes of text that may still come.
    left: usize,
    /// The last cell was read: behind it the reader must not be asked.
    ended: bool,
}

impl<'b, R: Read + Seek> Rows<'b, R> {
    /// Of the sheet of this name.
    pub(super) fn of(book: &'b mut Xlsx<R>, name: &str) -> Result<Self, Stopped> {
        Ok(Self { reader: book.worksheet_cells_reader(name)?, ahead: None, left: LARGEST, ended: false })
    }

    /// The next row in which something is written.
    pub(super) fn next(&mut self) -> Result<Option<SheetRow>, Stopped> {
        let first = match self.ahead.take() {
            Some(first) => Some(first),
            None => self.cell()?,
        };
        let Some((line, column, cell)) = first else { return Ok(None) };
        let mut row = SheetRow { line, cells: Vec::new() };
        put(&mut row.cells, column, cell);
        while let Some((other, column, cell)) = self.cell()? {
            if other != line {
                self.ahead = Some((other, column, cell));
                break;
            }
            put(&mut row.cells, column, cell);
        }
        Ok(Some(row))
    }

    /// The next cell in which something is written, with its row from 1 and its column from 0.
    fn cell(&mut self) -> Result<Option<(usize, usize, Cell)>, Stopped> {
        while !self.ended {
            let Some(read) = self.reader.next_cell_with_formula_metadata()? else {
                self.ended = true;
                break;
            };
            let cell = match &read.value {
                DataRef::Empty if read.formula.is_some() => Cell::amiss(Amiss::NotWorkedOut),
                value => Cell::of(value),
            };
            if cell.text.is_empty() && cell.amiss.is_none() {
                continue;
            }
            self.left = self.left.checked_sub(cell.text.len()).ok_or(Stopped::TooLarge)?;
            let (row, column) = read.pos;
            return Ok(Some((row as usize + 1, column as usize, cell)));
        }
        Ok(None)
    }
}

/// Puts a cell in its column. All that stands past the columns of any list is taken together: it is refused.
fn put(cells: &mut Vec<Cell>, column: usize, cell: Cell) {
    let place = column.min(MOST_COLUMNS);
    if cells.len() <= place {
        cells.resize(place + 1, Cell::default());
    }
    if let Some(free) = cells.get_mut(place) {
        *free = cell;
    }
}

impl Cell {
    fn of(value: &DataRef<'_>) -> Self {
        match value {
            DataRef::Empty => Self::default(),
            DataRef::String(text) => Self::text(text),
            DataRef::SharedString(text) => Self::text(text),
            DataRef::Int(number) => Self { text: number.to_string(), is_number: true, amiss: None },
            DataRef::Float(number) => Self { text: figure(*number), is_number: true, amiss: None },
            DataRef::Bool(yes) => Self { text: yes.to_string(), ..Self::default() },
            DataRef::DateTime(date) => Self { text: moment(date), ..Self::default() },
            DataRef::DateTimeIso(text) => Self::text(text.strip_suffix("T00:00:00").unwrap_or(text)),
            DataRef::DurationIso(text) => Self::text(text),
            DataRef::Error(error) => Self::amiss(Amiss::Error(error.to_string())),
        }
    }

    /// A text on one line: where it breaks in its cell is a matter of looks.
    fn text(text: &str) -> Self {
        if text.len() > LONGEST_CELL {
            return Self::amiss(Amiss::TooLong);
        }
        let lines: Vec<&str> = text.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
        Self { text: lines.join(" "), ..Self::default() }
    }

    fn amiss(amiss: Amiss) -> Self {
        Self { amiss: Some(amiss), ..Self::default() }
    }
}

/// A number as it was written: rounded to the digits that a spreadsheet computes with.
fn figure(number: f64) -> String {
    let rounded = format!("{number:.*e}", DIGITS - 1).parse().unwrap_or(number);
    rounded.to_string()
}

/// A day, `2026-03-14`; with the time behind it where it is not the start of the day; a span of time in days.
fn moment(date: &ExcelDateTime) -> String {
    if date.is_duration() {
        return figure(date.as_f64());
    }
    let (year, month, day, hour, minute, second, _) = date.to_ymd_hms_milli();
    let day = format!("{year:04}-{month:02}-{day:02}");
    if (hour, minute, second) == (0, 0, 0) { day } else { format!("{day} {hour:02}:{minute:02}:{second:02}") }
}
