//! One stock for many rooms, from the outside.

use std::fs;

use serde_json::Value;
use tempfile::tempdir;

use super::text;
use crate::program::{Ended, root, run, run_with};

/// What a crew takes along: everything that goes out comes back, each figure is a number, a sheet for each day.
fn for_the_crew(folder: &std::path::Path) {
    let mut rows = csv::Reader::from_path(folder.join("loads.csv")).unwrap();
    let heads = rows.headers().unwrap().clone();
    let place = |name: &str| heads.iter().position(|head| head == name).unwrap();
    let (what, count) = (place("what"), place("count"));
    let rows: Vec<csv::StringRecord> = rows.records().map(Result::unwrap).collect();
    let sum = |of: &str| -> u32 {
        rows.iter().filter(|row| &row[what] == of).map(|row| row[count].parse::<u32>().unwrap()).sum()
    };
    assert!(sum("out") > 40 && sum("out") == sum("back"), "{} out, {} back", sum("out"), sum("back"));
    for head in ["width_cm", "depth_cm", "height_cm", "mass_kg", "people", "volume_m3"] {
        let figures = rows.iter().map(|row| &row[place(head)]);
        assert!(figures.clone().all(|figure| figure.is_empty() || figure.parse::<f64>().is_ok()), "{head}");
        assert!(figures.filter(|figure| !figure.is_empty()).count() > 20, "{head}");
    }
    let mut days: Vec<&str> = rows.iter().map(|row| &row[place("day")]).collect();
    days.dedup();
    for day in &days {
        let sheet = lopdf::Document::load(folder.join(format!("{day}.pdf"))).unwrap();
        assert!(!sheet.get_pages().is_empty());
    }
    // The first day has four rooms to set out, each with two plans and a tape sheet.
    assert!(lopdf::Document::load(folder.join("2026-03-02.pdf")).unwrap().get_pages().len() > 4 * 3);
    let calendar = fs::read_to_string(folder.join("calendar.ics")).unwrap();
    // RFC 5545, 3.1 and 3.6.1 (P): lines end with CR LF and hold at most 75 octets; an event has an id and a time stamp.
    assert!(calendar.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')));
    let events = calendar.matches("BEGIN:VEVENT").count();
    assert_eq!(
        (events, calendar.matches("UID:").count(), calendar.matches("DTSTAMP:").count()),
        (events, events, events)
    );
    assert_eq!(events, days.len() + 11);
    let left: Vec<_> = fs::read_dir(folder).unwrap().collect();
    assert_eq!(left.len(), days.len() + 3);
}

/// The demo store over the demo rooms' bookings.
fn demo(more: &[&str]) -> Ended {
    let (store, weeks) = (root().join("scenarios/store.csv"), root().join("scenarios/weeks.csv"));
    run(&[&["batch", text(&weeks), "--stock", text(&store)], more].concat())
}

#[test]
fn the_demo_store_is_handed_out() {
    let folder = tempdir().unwrap();
    let ended = demo(&["-o", text(folder.path())]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{}", ended.stderr);
    let (page, files) = ended.stdout.split_once("\nIn ").unwrap();
    insta::assert_snapshot!("stock", page.replace(&format!("{}/", root().join("scenarios").display()), ""));
    assert!(files.replace('\n', " ").contains("9 days to print"), "{files}");
    assert_eq!(demo(&["--threads", "1"]).stdout.trim_end(), page.trim_end());
    for_the_crew(&folder.path().join("picks"));
    let told: Value = serde_json::from_str(&fs::read_to_string(folder.path().join("stock.json")).unwrap()).unwrap();
    assert_eq!((&told["format"], &told["proven"]), (&"elbowroom-stock/2".into(), &true.into()));
    // No piece is picked more often than it is owned, on any day.
    let mut rows = csv::Reader::from_path(folder.path().join("picks.csv")).unwrap();
    let picks: Vec<csv::StringRecord> = rows.records().map(Result::unwrap).collect();
    let mut stock = csv::Reader::from_path(root().join("scenarios/store.csv")).unwrap();
    for owned in stock.records().map(Result::unwrap) {
        let there: u32 = owned[7].parse().unwrap();
        for day in (1..=31).map(|day| format!("2026-03-{day:02}")) {
            let used = picks.iter().filter(|pick| pick[6] == owned[1] && pick[0] <= *day && *day <= pick[1]);
            let used: u32 = used.map(|pick| pick[7].parse::<u32>().unwrap()).sum();
            assert!(used <= there, "{} on {day}: {used} of {there}", &owned[1]);
        }
    }
    assert!(picks.iter().filter(|pick| !pick[6].is_empty()).count() > 20);
    // A column for each figure, in the unit of the first room.
    let heads = rows.headers().unwrap();
    let sizes = ["width_cm", "return_cm", "depth_cm", "second_return_cm", "return_depth_cm"];
    assert_eq!(heads.iter().skip(8).take(5).collect::<Vec<_>>(), sizes);
    for pick in picks.iter().filter(|pick| !pick[6].is_empty()) {
        assert!([&pick[8], &pick[10]].iter().all(|side| side.parse::<f64>().is_ok()), "{pick:?}");
    }
}

#[test]
fn a_folder_of_rooms_is_served_at_once() {
    let store = root().join("scenarios/store.csv");
    let ended = run(&["batch", text(&root().join("scenarios")), "--stock", text(&store), "--units", "in"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    assert!(ended.stdout.contains("sizes in inches") && ended.stdout.contains("Proven"), "{}", ended.stdout);
}

#[test]
fn a_stock_that_is_piped_in_serves_as_its_file_does() {
    let (store, room) = (root().join("scenarios/store.csv"), root().join("scenarios/which-hand.yaml"));
    let ended = run(&["batch", text(&room), "--stock", text(&store)]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let piped = run_with(&["batch", text(&room), "--stock", "-"], &fs::read(store).unwrap());
    assert_eq!(piped.stdout, ended.stdout);
}

#[test]
fn what_is_wrong_with_a_stock_or_a_booking_is_told_with_its_line() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("a.yaml"), super::varied(1)).unwrap();
    fs::write(path("b.yaml"), super::varied(2)).unwrap();
    fs::write(path("bad.yaml"), "units: furlong\n").unwrap();
    fs::write(path("good.csv"), "kind,name,width (cm),depth (cm),count\nsofa,=1+1,200,90,1\n").unwrap();
    let stocks = [
        ("kind,name,width (cm),depth (cm),out\nsofa,Heron,200,90,2026-03-01 (9)\n", "stock has 1 of it"),
        ("kind,name,width,depth\nsofa,Heron,6 ft 20 in,90 cm\n", "12 inches or more beside its feet"),
        ("kind,name,width (cm),depth (cm),out\nsofa,Heron,200,90,soon\n", "soon"),
        ("kind,name,width (cm),depth (cm),value\nsofa,Heron,200,90,dear\n", "dear"),
        ("kind,name,width (cm)\nsofa,Heron,200\n", "depth"),
        (
            "kind,name,width (cm),depth (cm),value\nsofa,Heron,200,90,10\nsofa,Tern,200,90,10 EUR\n",
            "line 2: The value of Heron, `10`, names no currency; that of Tern has `EUR`",
        ),
        (
            "kind,name,width (cm),depth (cm),value\nsofa,Heron,200,90,$10\nsofa,Tern,200,90,10 EUR\n",
            "line 3: The value of Tern is in `EUR`, that of Heron in `$`",
        ),
        ("", ""),
    ];
    for (stock, said) in stocks {
        let ended = run_with(&["batch", text(&path("a.yaml")), "--stock", "-"], stock.as_bytes());
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{stock}");
        assert!(ended.stderr.contains(said), "{stock}: {}", ended.stderr);
    }
    let tables = [
        ("room,from,to\na.yaml,2026-03-05,2026-03-01\na.yaml,5.3.,2026-03-01\n", "line 3"),
        ("room,priority\na.yaml,first\n", "first"),
        ("file;until\na.yaml;\u{0}\n", "line 2: The list holds NUL bytes"),
        ("chambers\na.yaml\n", "no column"),
        ("room,start of let,to\na.yaml,2026-03-01,2026-03-05\n", "Call it `from`"),
        (
            "room,from,to\na.yaml,2026-03-01,2026-03-05\nb.yaml,2026-03-01,2026-03-05\na.yaml,2026-03-05,2026-03-09\n",
            "line 4: a.yaml is booked for 2026-03-05 on line 2 already",
        ),
        ("room\na.yaml\na.yaml\n", "line 3: a.yaml is booked on line 2 already"),
        ("room\n", "no rows"),
        ("room,from,to\n\n\"a\"b.yaml,2026-03-05,2026-03-06\n", "line 3"),
        ("room,from,to\n\n\na.yaml,2026-03-05\na.yaml,5.3.,2026-03-01\n", "line 4: The row has 2 cells"),
        ("room,from,to\n\n\na.yaml,2026-03-05\na.yaml,5.3.,2026-03-01\n", "line 5: `5.3.` is no day"),
    ];
    for (table, said) in tables {
        fs::write(path("table.csv"), table).unwrap();
        let ended = run(&["batch", text(&path("table.csv")), "--stock", text(&path("good.csv"))]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{table}");
        assert!(ended.stderr.contains(said), "{table}: {}", ended.stderr);
    }
    let many = format!("room\n{}", "a.yaml\n".repeat(501));
    fs::write(path("table.csv"), many).unwrap();
    let ended = run(&["batch", text(&path("table.csv")), "--stock", text(&path("good.csv"))]);
    assert!(ended.code == Some(2) && ended.stderr.contains("501 rows; at most 500"), "{}", ended.stderr);
    // A room that is at fault stands in the list with its reason and stops nothing.
    fs::write(path("table.csv"), "\u{feff}room;must\r\na.yaml;\r\nbad.yaml;\r\ngone.yaml;\r\nb.yaml;harp\r\n").unwrap();
    let ended = run(&["batch", text(&path("table.csv")), "--stock", text(&path("good.csv")), "-o", text(&path("out"))]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    assert!(ended.stdout.contains("3 at fault") && ended.stdout.contains("no such file"), "{}", ended.stdout);
    assert!(ended.stdout.contains("asks for no harp"), "{}", ended.stdout);
    let picks = fs::read_to_string(path("out").join("picks.csv")).unwrap();
    assert!(!picks.contains("\"=1+1\""), "{picks}");
}

/// Names beyond ASCII: a spreadsheet is told that the rows are UTF-8, and a run knows its own rows again.
#[test]
fn rows_with_names_beyond_ascii_start_with_a_mark() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    let store = "kind,name,width (cm),depth (cm),count\nsofa,Sofa B\u{e4}nk,200,90,1\n";
    for (named, marked) in [(store.to_owned(), true), (store.replace('\u{e4}', "a"), false)] {
        fs::write(path("store.csv"), named).unwrap();
        let ended = run(&[
            "batch",
            text(&root().join("scenarios/weeks.csv")),
            "--stock",
            text(&path("store.csv")),
            "-o",
            text(&path("out")),
        ]);
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
        let picks = fs::read(path("out").join("picks.csv")).unwrap();
        assert_eq!(picks.starts_with(b"\xef\xbb\xbf"), marked);
        assert_eq!(&csv::Reader::from_reader(&picks[..]).headers().unwrap()[0], "from");
    }
}

/// A set that no option of the room holds: what is in the store is not told to be bought.
#[test]
fn a_set_that_fits_in_the_room_is_served_though_no_option_holds_it() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    let room = "units: cm
walls:
  - { name: north, length: 420, keep_free: [sofa, media-unit] }
  - { name: east, length: 330, keep_free: [sofa, media-unit], holds: [{ kind: door, at: 240, width: 80, hinge: right, swings: out, leads_to: entrance }] }
  - { name: south, length: 420 }
  - { name: west, length: 330 }
pieces:
  - { kind: sofa, width: 180..260, depth: 80..120 }
  - { kind: coffee-table, width: 60..140, depth: 40..90 }
  - { kind: media-unit, screen: 50 in, width: 120..200, depth: 30..60 }
";
    fs::write(path("room.yaml"), room).unwrap();
    let store = "kind,name,width (cm),depth (cm)\nsofa,Deep,200,119\ncoffee table,Slim,100,42\nmedia unit,Low,160,32\n";
    fs::write(path("store.csv"), store).unwrap();
    let list = ["--stock", text(&path("store.csv")), "-o", text(&path("out"))].map(str::to_owned);
    let list: Vec<&str> = list.iter().map(String::as_str).collect();
    let ended = run(&[&["batch", text(&path("room.yaml"))], &list[..]].concat());
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    for said in ["Must-haves served: 3 of 3.", "1 set solved, one fits", "Nothing is short"] {
        assert!(ended.stdout.contains(said), "{said}: {}", ended.stdout);
    }
    let told: Value = serde_json::from_str(&fs::read_to_string(path("out").join("stock.json")).unwrap()).unwrap();
    let sets = serde_json::json!({ "solved": 1, "fitting": 1, "refused": 0, "not_decided": 0, "spent": false });
    assert_eq!((&told["sets"], &told["must"][0]["count"]["at_most"]), (&sets, &3.into()));
}
