//! Workbooks with something wrong somewhere: a file here has the parts of one after another, each behind a line with its name.

use std::io::{Cursor, Write};

use elbowroom_model::listing::{Asked, Extra, read, table};
use elbowroom_model::quote::is_control;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

use super::mutation::{Draw, fuzz};

/// Columns as a store's list has them.
const EXTRA: [Extra; 1] = [Extra { key: "out", also: &[] }];

/// The workbook of these parts; `None` where two have one name, which no archive has.
pub(crate) fn workbook(parts: &[u8]) -> Option<Vec<u8>> {
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    let plain = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
    for line in parts.split_inclusive(|byte| *byte == b'\n') {
        match line.strip_prefix(b"@") {
            Some(name) => archive.start_file(String::from_utf8_lossy(name).trim_end(), plain).ok()?,
            None => archive.write_all(line).ok()?,
        }
    }
    archive.finish().ok().map(Cursor::into_inner)
}

/// The workbook is read whole, or refused with faults that can be told.
pub(crate) fn check(parts: &[u8], _: &mut Draw) {
    let Some(bytes) = workbook(parts) else { return };
    let asked = Asked { most_rows: 100, extra: &EXTRA, ..Asked::default() };
    match read(&bytes, &asked) {
        Ok(listing) => {
            assert!(listing.pieces.iter().all(|piece| piece.width > 0.0 && piece.depth > 0.0), "{listing:?}");
            assert!(listing.sheet.is_some());
            assert_eq!(read(&bytes, &asked), Ok(listing), "reads otherwise");
        }
        Err(faults) => {
            assert!(!faults.told.is_empty(), "refused without a fault");
            for fault in &faults.told {
                let texts = [&fault.message, &fault.remedy].into_iter().chain(&faults.sheet);
                assert!(texts.into_iter().all(|text| text.len() < 2000 && !text.chars().any(is_control)), "{fault:?}");
            }
        }
    }
    if let Ok((grid, _)) = table(&bytes, None, 100, &|header| header == "name") {
        assert!(grid.rows.iter().all(|row| row.cells.len() <= grid.headers.len() && row.line > 0), "{grid:?}");
    }
}

#[test]
fn workbooks_with_something_wrong_are_read_whole_or_refused() {
    fuzz("sheets", 3_000, check);
}
