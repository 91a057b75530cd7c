//! Spreadsheets in and out: lists and bookings as workbooks, and every table of a run as one beside its CSV.

use std::fs;
use std::io::Cursor;
use std::path::Path;

use calamine::{Data, Reader, Xlsx, open_workbook_from_rs};
use rust_xlsxwriter::{ExcelDateTime, Format, Workbook};
use tempfile::tempdir;

use super::{files, put_rooms, text};
use crate::program::{Ended, root, run, run_with};

/// The rows of CSV as a workbook: what is a figure as a number, what is a day as a day.
fn as_workbook(csv: &Path) -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    let mut rows = csv::ReaderBuilder::new().has_headers(false).from_path(csv).unwrap();
    let as_day = Format::new().set_num_format("dd.mm.yyyy");
    for (row, record) in (0..).zip(rows.records()) {
        for (column, cell) in (0..).zip(&record.unwrap()) {
            if let Ok(number) = cell.parse::<f64>() {
                sheet.write_number(row, column, number).unwrap();
            } else if let (10, Ok(day)) = (cell.len(), ExcelDateTime::parse_from_str(cell)) {
                sheet.write_datetime_with_format(row, column, &day, &as_day).unwrap();
            } else {
                sheet.write_string(row, column, cell).unwrap();
            }
        }
    }
    book.save_to_buffer().unwrap()
}

/// The cells of a workbook's only sheet.
fn cells(path: &Path) -> Vec<Vec<Data>> {
    let mut book: Xlsx<_> = open_workbook_from_rs(Cursor::new(fs::read(path).unwrap())).unwrap();
    let sheet = book.worksheet_range_at(0).unwrap().unwrap();
    sheet.rows().map(<[Data]>::to_vec).collect()
}

/// The workbook says what the CSV beside it says: figures are numbers, days are days, the first row stays in sight.
fn agrees(folder: &Path, name: &str) {
    let (csv, xlsx) = (folder.join(format!("{name}.csv")), folder.join(format!("{name}.xlsx")));
    let book = cells(&xlsx);
    let rows: Vec<csv::StringRecord> =
        csv::ReaderBuilder::new().has_headers(false).from_path(csv).unwrap().records().map(Result::unwrap).collect();
    assert_eq!(book.len(), rows.len(), "{name}");
    let mut figures = 0;
    for (told, row) in rows.iter().zip(&book) {
        for (place, told) in told.iter().enumerate() {
            let head = &rows[0][place];
            match row.get(place).unwrap_or(&Data::Empty) {
                Data::Empty => assert_eq!(told, "", "{name} {head}"),
                Data::Float(number) => {
                    assert_eq!(told.parse::<f64>().ok(), Some(*number), "{name} {head}");
                    figures += 1;
                }
                Data::DateTime(day) => {
                    let (year, month, day, ..) = day.to_ymd_hms_milli();
                    assert_eq!(told, format!("{year:04}-{month:02}-{day:02}"), "{name} {head}");
                }
                Data::String(text) => {
                    assert_eq!(told.strip_prefix('\'').unwrap_or(told), text, "{name} {head}");
                    assert!(row == &book[0] || !head.ends_with("_cm"), "{name} {head}: {text}");
                    assert!(row == &book[0] || head != "day", "{name} {head}: {text}");
                }
                other => panic!("{name} {head}: {other:?}"),
            }
        }
    }
    assert!(figures > rows.len(), "{name}: {figures} figures");
    let mut archive = zip::ZipArchive::new(fs::File::open(xlsx).unwrap()).unwrap();
    let sheet = std::io::read_to_string(archive.by_name("xl/worksheets/sheet1.xml").unwrap()).unwrap();
    assert!(sheet.contains("<pane ySplit=\"1\"") && sheet.contains("state=\"frozen\""), "{name}");
}

#[test]
fn a_store_and_its_bookings_are_served_from_workbooks_as_from_text() {
    let (folder, scenarios) = (tempdir().unwrap(), root().join("scenarios"));
    let path = |name: &str| folder.path().join(name);
    for entry in fs::read_dir(&scenarios).unwrap().map(Result::unwrap) {
        if entry.path().extension().is_some_and(|ending| ending == "yaml") {
            fs::copy(entry.path(), path(entry.file_name().to_str().unwrap())).unwrap();
        }
    }
    let of_text = || {
        let (weeks, store) = (scenarios.join("weeks.csv"), scenarios.join("store.csv"));
        run(&["batch", text(&weeks), "--stock", text(&store)])
    };
    fs::write(path("weeks.xlsx"), as_workbook(&scenarios.join("weeks.csv"))).unwrap();
    fs::write(path("store.xlsx"), as_workbook(&scenarios.join("store.csv"))).unwrap();
    let (out, weeks, store) = (path("out"), path("weeks.xlsx"), path("store.xlsx"));
    let served = |more: &[&str]| run(&[&["batch", text(&weeks), "--stock", text(&store)], more].concat());
    let ended = served(&["-o", text(&out), "--xlsx"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let (page, _) = ended.stdout.split_once("\nIn ").unwrap();
    assert_eq!(page.trim_end(), of_text().stdout.trim_end());
    agrees(&out, "picks");
    agrees(&out.join("picks"), "loads");
    let before = files(&out);
    assert!(served(&["-o", text(&out), "--xlsx"]).code == Some(0) && files(&out) == before, "other bytes");
    // Where none are asked for now, those of the run before would tell what is no longer so.
    assert_eq!(served(&["-o", text(&out)]).code, Some(0));
    assert!(!out.join("picks.xlsx").exists() && !out.join("picks/loads.xlsx").exists());
}

#[test]
fn a_table_of_rooms_is_a_workbook_too_and_no_other_is_replaced() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    fs::create_dir(&rooms).unwrap();
    put_rooms(&rooms, 2);
    fs::write(rooms.join("bad.yaml"), "units: furlong\n").unwrap();
    let batch = |more: &[&str]| run(&[&["batch", text(&rooms), "-o", text(&out)], more].concat());
    assert_eq!(batch(&["--xlsx"]).code, Some(0));
    agrees(&out, "rooms");
    let made = fs::read(out.join("rooms.xlsx")).unwrap();
    assert_eq!(batch(&["--xlsx", "--threads", "1"]).code, Some(0));
    assert!(fs::read(out.join("rooms.xlsx")).unwrap() == made, "other bytes");
    assert!(batch(&[]).code == Some(0) && !out.join("rooms.xlsx").exists());
    // Saved again by somebody, it is theirs.
    let theirs = as_workbook(&out.join("rooms.csv"));
    fs::write(out.join("rooms.xlsx"), &theirs).unwrap();
    let ended = batch(&["--xlsx"]);
    assert!(ended.code == Some(2) && ended.stderr.contains("rooms.xlsx is there"), "{}", ended.stderr);
    assert!(batch(&[]).code == Some(0) && fs::read(out.join("rooms.xlsx")).unwrap() == theirs);
    assert!(batch(&["--xlsx", "--force"]).code == Some(0) && fs::read(out.join("rooms.xlsx")).unwrap() == made);
    assert_eq!(run(&["batch", text(&rooms), "--xlsx"]).code, Some(2), "into no folder");
}

#[test]
fn what_is_wrong_with_a_workbook_is_told_and_nothing_written() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    put_rooms(folder.path(), 1);
    let store = root().join("scenarios/store.csv");
    let out = path("out");
    let told = |bytes: &[u8], said: &[&str]| {
        fs::write(path("weeks.xlsx"), bytes).unwrap();
        let ended = run(&["batch", text(&path("weeks.xlsx")), "--stock", text(&store), "-o", text(&out), "--xlsx"]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""));
        for said in said {
            assert!(ended.stderr.contains(said), "{said}: {}", ended.stderr);
        }
        assert!(!out.exists());
        ended
    };
    fs::write(
        path("table.csv"),
        "clint,room,from,to,priority\n,room-00000.yaml,2026-03-05,2026-03-01,1\n,,5.3.,2026-03-01,77\n",
    )
    .unwrap();
    let ended: Ended = told(&as_workbook(&path("table.csv")), &["sheet Sheet1, row 1: There is no column `clint`"]);
    assert!(ended.stderr.contains("weeks.xlsx"), "{}", ended.stderr);
    fs::write(
        path("table.csv"),
        "room,from,to,priority\nroom-00000.yaml,2026-03-05,2026-03-01,1\n,5.3.,2026-03-01,77\n",
    )
    .unwrap();
    told(
        &as_workbook(&path("table.csv")),
        &[
            "sheet Sheet1, row 2, column C: 2026-03-05 comes after 2026-03-01",
            "sheet Sheet1, row 3, column A: The row names no room",
            "sheet Sheet1, row 3, column B: `5.3.` is no day",
            "sheet Sheet1, row 3, column D: `77` is no priority",
        ],
    );
    told(b"room,from\na.yaml,2026-03-05\n", &["no workbook of the kind .xlsx"]);
    told(&Workbook::new().save_to_buffer().unwrap(), &["no rows"]);
    // A stock on standard input, by what it looks like.
    fs::write(path("store.csv"), "kind,name,width (cm),depth (cm),mass\nsofa,Heron,200,90,heavy\n").unwrap();
    let ended = run_with(&["batch", text(&path("room-00000.yaml")), "--stock", "-"], &as_workbook(&path("store.csv")));
    assert!(ended.code == Some(2) && ended.stderr.contains("sheet Sheet1, row 2"), "{}", ended.stderr);
}
