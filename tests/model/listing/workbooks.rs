//! Lists that stand in a workbook: the same rules as of text, with a sheet, a row and a column to each fault.

use std::io::{Cursor, Write};

use elbowroom_model::listing::{Asked, Decimals, Extra, Faults, Form, Listing, read, table};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook, Worksheet};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

const EXTRA: [Extra; 1] = [Extra { key: "out", also: &[] }];
const HEADS: [&str; 5] = ["kind", "name", "width (cm)", "depth (cm)", "price EUR"];

fn asked() -> Asked<'static> {
    Asked { most_rows: 1000, extra: &EXTRA, ..Asked::default() }
}

/// A workbook of one sheet.
fn book(fill: impl FnOnce(&mut Worksheet)) -> Vec<u8> {
    let mut book = Workbook::new();
    fill(book.add_worksheet().set_name("Stock").unwrap());
    book.save_to_buffer().unwrap()
}

/// A sheet with the usual header, and a row for each of these.
fn fill(sheet: &mut Worksheet, rows: &[(&str, &str, f64, f64, f64)]) {
    sheet.write_row(0, 0, HEADS).unwrap();
    for (line, (kind, name, width, depth, price)) in (1..).zip(rows) {
        sheet.write_row(line, 0, [*kind, *name]).unwrap();
        sheet.write_row(line, 2, [*width, *depth, *price]).unwrap();
    }
}

fn sound(bytes: &[u8]) -> Listing {
    read(bytes, &asked()).unwrap_or_else(|faults| panic!("{faults:#?}"))
}

fn refused(bytes: &[u8]) -> Faults {
    read(bytes, &asked()).unwrap_err()
}

/// Code, row and column of every fault.
fn told(faults: &Faults) -> Vec<(&'static str, usize, usize)> {
    let place = |place: Option<elbowroom_model::Place>| place.map_or((0, 0), |place| (place.line, place.column));
    faults.told.iter().map(|fault| (fault.code, place(fault.place).0, place(fault.place).1)).collect()
}

#[test]
fn a_sheet_says_what_the_same_rows_say_as_text() {
    let rows = [("sofa", "Heron, long", 212.5, 95.0, 799.5), ("coffee-table", "Snipe", 60.125, 0.1 + 44.2, 1299.0)];
    let sheet = sound(&book(|sheet| fill(sheet, &rows)));
    let text = "kind;name;width (cm);depth (cm);price EUR\nsofa;Heron, long;212.5;95;799.50\ncoffee-table;Snipe;60.125;44.3;1299\n";
    let text = sound(text.as_bytes());
    assert_eq!((&sheet.pieces, &sheet.currency), (&text.pieces, &text.currency));
    assert_eq!((sheet.sheet.as_deref(), text.sheet), (Some("Stock"), None));
    // A file may be called as it likes.
    let called = Asked { form: Some(Form::Separated), ..asked() };
    assert_eq!(read(&book(|sheet| fill(sheet, &rows)), &called).unwrap(), sheet);
}

#[test]
fn a_number_is_a_number_however_the_texts_of_the_list_are_written() {
    let bytes = book(|sheet| {
        fill(sheet, &[("sofa", "Heron", 212.125, 95.0, 799.0), ("sofa", "Tern", 200.0, 95.0, 1299.5)]);
        sheet.write_string(2, 3, "95,5").unwrap();
    });
    for decimals in [None, Some(Decimals::Comma)] {
        let pieces = read(&bytes, &Asked { decimals, ..asked() }).unwrap().pieces;
        assert_eq!((pieces[0].width, pieces[1].depth), (2121.25, 955.0), "{decimals:?}");
        assert_eq!(pieces[1].price.unwrap().hundredths, 129_950, "{decimals:?}");
    }
}

#[test]
fn days_truths_and_broken_lines_are_read_as_text() {
    let bytes = book(|sheet| {
        sheet.write_row(2, 1, ["room", "from", "must"]).unwrap();
        let day = Format::new().set_num_format("d mmm yy");
        sheet.write_string(4, 1, "a.yaml\nb").unwrap();
        sheet.write_datetime_with_format(4, 2, ExcelDateTime::from_ymd(2026, 3, 9).unwrap(), &day).unwrap();
        sheet.write_boolean(4, 3, true).unwrap();
        let hour = ExcelDateTime::from_ymd(2026, 3, 9).unwrap().and_hms(13, 30, 0).unwrap();
        sheet.write_datetime_with_format(6, 2, &hour, &Format::new().set_num_format("d mmm yy hh:mm")).unwrap();
        // Looks alone: nothing stands there.
        sheet.write_blank(9, 1, &day).unwrap();
    });
    let (grid, faults) = table(&bytes, None, 9, &|header| header == "room").unwrap();
    assert!(faults.told.is_empty() && faults.sheet.as_deref() == Some("Stock"));
    assert_eq!((grid.headers.join("|").as_str(), grid.header_line), ("|room|from|must", 3));
    let rows: Vec<_> = grid.rows.iter().map(|row| (row.line, row.cells.join("|"))).collect();
    assert_eq!(rows, [(5, "|a.yaml b|2026-03-09|true".to_owned()), (7, "||2026-03-09 13:30:00".to_owned())]);
}

#[test]
fn faults_have_their_row_and_column() {
    let bytes = book(|sheet| {
        fill(
            sheet,
            &[
                ("sofa", "Heron", 212.0, 95.0, 799.0),
                ("sofer", "Tern", -3.0, 95.0, 1.0),
                ("sofa", "Heron", 1.0, 1.0, 1.0),
            ],
        );
        sheet.write_formula(1, 3, Formula::new("1/0").set_result("#DIV/0!")).unwrap();
        sheet.write_string(3, 8, "beside").unwrap();
        sheet.write_row(5, 0, ["sofa", "Ruff", "wide"]).unwrap();
        sheet.write_string(6, 1, "x".repeat(200)).unwrap();
    });
    let faults = refused(&bytes);
    assert_eq!(faults.sheet.as_deref(), Some("Stock"));
    assert_eq!(
        told(&faults),
        [
            ("cell_error", 2, 4),
            ("unknown_kind", 3, 1),
            ("not_positive", 3, 3),
            ("wrong_count", 4, 0),
            ("not_a_length", 6, 3),
            ("missing_value", 6, 4),
            ("unknown_kind", 7, 1),
            ("name_too_long", 7, 2),
            ("missing_value", 7, 3),
            ("missing_value", 7, 4),
        ]
    );
    let twice =
        refused(&book(|sheet| fill(sheet, &[("sofa", "Heron", 2.0, 2.0, 1.0), ("sofa", "Heron", 1.0, 1.0, 1.0)])));
    assert!(twice.told[0].message.contains("stands on row 2 already"), "{twice:?}");
}

#[test]
fn what_a_formula_does_not_come_to_is_told_and_never_taken_for_nothing() {
    let parts = include_bytes!("../../data/fuzz/sheets/faults.txt");
    let faults = refused(&crate::fuzz::sheets::workbook(parts).unwrap());
    assert_eq!(
        (faults.sheet.as_deref(), told(&faults)),
        (Some("Stock"), vec![("cell_error", 2, 4), ("cell_error", 3, 4)])
    );
    assert!(
        faults.told[0].message.contains("#REF!") && faults.told[1].message.contains("not worked out"),
        "{faults:?}"
    );
    let parts = include_bytes!("../../data/fuzz/sheets/stock.txt");
    let listing = sound(&crate::fuzz::sheets::workbook(parts).unwrap());
    let told: Vec<_> =
        listing.pieces.iter().map(|one| (one.name.as_str(), one.width, one.depth, one.more[0].as_str())).collect();
    // 46082 is the day's number in a workbook (P: ECMA-376, 18.17.4: 1 is 1900-01-01, with a 29 February 1900).
    assert_eq!(told, [("Heron", 2125.0, 950.0, "2026-03-01"), ("Tern & Ruff", 2125.0, 950.0, "")]);
}

#[test]
fn of_several_sheets_the_one_with_known_headers_is_read() {
    let with = |last: &str, hidden: bool| {
        let mut book = Workbook::new();
        book.add_worksheet().set_name("Cover").unwrap().write_string(0, 0, "Store, spring").unwrap();
        book.add_worksheet().set_name("Empty").unwrap();
        let sheet = book.add_worksheet().set_name("Telephone").unwrap();
        sheet.write_row(0, 0, ["name", "number"]).unwrap();
        fill(book.add_worksheet().set_hidden(hidden).set_name(last).unwrap(), &[("sofa", "Heron", 212.0, 95.0, 7.0)]);
        book.save_to_buffer().unwrap()
    };
    assert_eq!(sound(&with("Stock", false)).sheet.as_deref(), Some("Stock"));
    // What is hidden is passed over: the next best has one header of a list.
    let faults = refused(&with("Stock", true));
    assert_eq!(faults.sheet.as_deref(), Some("Telephone"));
    let mut none = Workbook::new();
    for name in ["Cover", "Plan"] {
        none.add_worksheet().set_name(name).unwrap().write_string(0, 0, "colour").unwrap();
    }
    let faults = refused(&none.save_to_buffer().unwrap());
    assert_eq!((told(&faults), &faults.sheet), (vec![("no_sheet", 0, 0)], &None));
    assert!(faults.told[0].message.contains("Cover, Plan"), "{faults:?}");
}

#[test]
fn what_is_no_workbook_or_holds_nothing_is_told() {
    let empty = book(|_| {});
    let header = book(|sheet| fill(sheet, &[]));
    for (bytes, code) in [(&empty, "empty_file"), (&header, "empty_file")] {
        assert_eq!(told(&refused(bytes))[0].0, code);
    }
    let said = Asked { form: Some(Form::Workbook), ..asked() };
    let locked = [&[0xd0, 0xcf, 0x11, 0xe0][..], &[0; 600]].concat();
    for (bytes, said_of_it) in [
        (&b"kind,name\nsofa,Heron\n"[..], "no workbook of the kind .xlsx"),
        (b"", "no workbook of the kind .xlsx"),
        (&locked, "of an older kind, or a password"),
        (b"PK\x03\x04and no more", "damaged"),
    ] {
        let faults = read(bytes, &said).unwrap_err();
        assert_eq!(told(&faults), [("not_a_workbook", 0, 0)]);
        assert!(faults.told[0].message.contains(said_of_it), "{faults:?}");
    }
    // Any part of a workbook: told as a fault, whatever is missing.
    let whole = book(|sheet| fill(sheet, &[("sofa", "Heron", 212.0, 95.0, 799.0)]));
    for end in (4..whole.len()).step_by(97) {
        assert_eq!(told(&refused(&whole[..end])), [("not_a_workbook", 0, 0)], "{end} bytes");
    }
}

/// An archive of parts, each packed.
fn archive(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    let packed = SimpleFileOptions::default().compression_method(CompressionMethod::Deflated);
    for (name, bytes) in parts {
        archive.start_file(*name, packed).unwrap();
        archive.write_all(bytes).unwrap();
    }
    archive.finish().unwrap().into_inner()
}

#[test]
fn a_small_file_that_holds_much_is_refused_before_it_is_read() {
    let bomb = archive(&[("xl/worksheets/sheet1.xml", &vec![b' '; (256 << 20) + 1])]);
    assert!(bomb.len() < 1 << 20);
    assert_eq!(told(&refused(&bomb)), [("file_too_large", 0, 0)]);
    // What says that it has more than it can hold.
    for texts in ["<sst uniqueCount=\"99999999999\"/>", "<sst\nuniqueCount = '4000000000' />", "<\0s\0s\0t\0"] {
        assert_eq!(told(&refused(&archive(&[("xl/sharedStrings.xml", texts.as_bytes())]))), [("not_a_workbook", 0, 0)]);
    }
}

#[test]
fn long_cells_and_many_rows_are_counted_and_not_kept() {
    let rows = vec![("sofa", "Heron", 212.0, 95.0, 799.0); 1001];
    let faults = refused(&book(|sheet| fill(sheet, &rows)));
    assert!(faults.told[0].message.contains("1001 rows; at most 1000"), "{faults:?}");
    let long = "x".repeat(1 << 20);
    let text = format!("kind,name,width (cm),depth (cm),note\nsofa,Heron,212,95,x{long}\n");
    let faults = refused(text.as_bytes());
    assert_eq!(told(&faults), [("cell_too_long", 2, 1)]);
}
