//! Rows as files: CSV, and where asked for a workbook beside it.

use std::path::Path;

use crate::batch::left::{WORKBOOK, drop_book};
use crate::process::failure::Failure;
use crate::process::whole::Whole;
use crate::text::cells::{Cell, file};
use crate::text::workbook::workbook;

/// Puts rows into the CSV at `path` and, with `xlsx`, into a workbook of that name beside it.
pub(super) fn put_rows(path: &Path, rows: &[Vec<Cell>], xlsx: bool) -> Result<(), Failure> {
    put(path, file(rows).map_err(Failure::Unwritable)?.as_bytes())?;
    let book = path.with_extension(WORKBOOK);
    drop_book(&book, xlsx);
    if xlsx { put(&book, &workbook(rows).map_err(Failure::Unwritable)?) } else { Ok(()) }
}

fn put(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let mut file = Whole::start(path.to_owned())?;
    file.add_bytes(bytes)?;
    file.put()
}
