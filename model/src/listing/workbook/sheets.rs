//! Which sheet of a workbook holds the list, and its rows.

use std::io::Cursor;

use calamine::{Reader, SheetType, SheetVisible, Xlsx};

use super::cells::Rows;
use super::container::NotRead;
use crate::listing::faults::FaultList;
use crate::listing::gathering::Gathering;
use crate::listing::grid::Grid;
use crate::quote::quoted;

/// A workbook that is open.
type Open<'b> = Xlsx<Cursor<&'b [u8]>>;

/// Sheets of a workbook that a fault names.
const NAMED: usize = 8;

/// The cells of the sheet in which most headers are known.
pub(super) fn grid(
    bytes: &[u8],
    most_rows: usize,
    is_known: &dyn Fn(&str) -> bool,
    told: &mut FaultList,
) -> Option<Grid> {
    let opened = Open::new(Cursor::new(bytes)).map_err(|_| NoSheet::Damaged);
    let found = opened.and_then(|mut book| Ok((sheet_of_list(&mut book, is_known)?, book)));
    match found {
        Ok((name, mut book)) => rows_of(&mut book, &name, most_rows, told),
        Err(why) => {
            why.tell(told);
            None
        }
    }
}

/// Why no sheet is the one.
enum NoSheet {
    /// None is shown and holds cells.
    Nothing,
    /// Several are, and of none a header is known.
    NoHeader(Vec<String>),
    /// One cannot be read.
    Damaged,
}

impl NoSheet {
    fn tell(self, told: &mut FaultList) {
        match self {
            Self::Nothing => told.nothing(),
            Self::Damaged => NotRead::Damaged.tell(told),
            Self::NoHeader(names) => {
                let named: Vec<String> = names.iter().take(NAMED).map(|name| quoted(name)).collect();
                let more = if names.len() > NAMED { ", ..." } else { "" };
                let message =
                    format!("No sheet of the workbook starts with a header that is known: {}{more}.", named.join(", "));
                let remedy = "Put the header in the first row that is written in, on one of the sheets.".to_owned();
                told.add(0, "no_sheet", "", message, remedy);
            }
        }
    }
}

/// The name of the sheet in which most headers are known, of equals the first; of one sheet alone, that one. What is hidden
/// is passed over.
fn sheet_of_list(book: &mut Open<'_>, is_known: &dyn Fn(&str) -> bool) -> Result<String, NoSheet> {
    let shown = book
        .sheets_metadata()
        .iter()
        .filter(|sheet| sheet.typ == SheetType::WorkSheet && sheet.visible == SheetVisible::Visible);
    let names: Vec<String> = shown.map(|sheet| sheet.name.clone()).collect();
    let (mut best, mut written) = (None, Vec::new());
    for name in names {
        let header = Rows::of(book, &name).and_then(|mut rows| rows.next()).map_err(|_| NoSheet::Damaged)?;
        let Some(header) = header else { continue };
        let known = header.cells.iter().filter(|cell| is_known(cell.text.trim())).count();
        if best.as_ref().is_none_or(|(most, _)| known > *most) {
            best = Some((known, name.clone()));
        }
        written.push(name);
    }
    match best {
        None => Err(NoSheet::Nothing),
        Some((0, _)) if written.len() > 1 => Err(NoSheet::NoHeader(written)),
        Some((_, name)) => Ok(name),
    }
}

/// The rows of a sheet.
fn rows_of(book: &mut Open<'_>, name: &str, most_rows: usize, told: &mut FaultList) -> Option<Grid> {
    told.in_sheet(name);
    let Ok(mut rows) = Rows::of(book, name) else {
        NotRead::Damaged.tell(told);
        return None;
    };
    let mut gathering = Gathering::new(most_rows);
    loop {
        match rows.next() {
            Ok(Some(row)) => {
                let is_amiss = gathering.takes_more() && row.tell_amiss(told);
                if is_amiss && gathering.has_header() {
                    gathering.left_out();
                    continue;
                }
                let numbers = row.numbers();
                gathering.row(row.line, row.cells.iter().map(|cell| cell.text.as_str()), numbers, told)?;
            }
            Ok(None) => return gathering.finish(told),
            Err(why) => {
                why.tell(told);
                return None;
            }
        }
    }
}
