//! One stock for many rooms, from the outside.

use std::fs;

use serde_json::Value;
use tempfile::tempdir;

use super::text;
use crate::program::{Ended, root, run, run_with};

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
    insta::assert_snapshot!("stock", ended.stdout.replace(&format!("{}/", root().join("scenarios").display()), ""));
    assert_eq!(demo(&["--threads", "1"]).stdout, ended.stdout);
    let told: Value = serde_json::from_str(&fs::read_to_string(folder.path().join("stock.json")).unwrap()).unwrap();
    assert_eq!((&told["format"], &told["proven"]), (&"elbowroom-stock/1".into(), &true.into()));
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
}

#[test]
fn a_folder_of_rooms_is_served_at_once() {
    let store = root().join("scenarios/store.csv");
    let ended = run(&["batch", text(&root().join("scenarios")), "--stock", text(&store), "--units", "in"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    assert!(ended.stdout.contains("sizes in in") && ended.stdout.contains("Proven"), "{}", ended.stdout);
    let stock = fs::read(store).unwrap();
    let piped = run_with(&["batch", text(&root().join("scenarios")), "--stock", "-", "--units", "in"], &stock);
    assert_eq!(piped.stdout, ended.stdout);
}

#[test]
fn what_is_wrong_with_a_stock_or_a_booking_is_told_with_its_line() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("a.yaml"), super::varied(1)).unwrap();
    fs::write(path("bad.yaml"), "units: furlong\n").unwrap();
    fs::write(path("good.csv"), "kind,name,width (cm),depth (cm),count\nsofa,=1+1,200,90,1\n").unwrap();
    let stocks = [
        ("kind,name,width (cm),depth (cm),out\nsofa,Heron,200,90,2026-03-01 (9)\n", "stock has 1 of it"),
        ("kind,name,width,depth\nsofa,Heron,6 ft 20 in,90 cm\n", "12 inches or more beside its feet"),
        ("kind,name,width (cm),depth (cm),out\nsofa,Heron,200,90,soon\n", "soon"),
        ("kind,name,width (cm),depth (cm),value\nsofa,Heron,200,90,dear\n", "dear"),
        ("kind,name,width (cm)\nsofa,Heron,200\n", "depth"),
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
        ("rooms\na.yaml\n", "no column"),
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
    fs::write(path("table.csv"), "\u{feff}room;must\r\na.yaml;\r\nbad.yaml;\r\ngone.yaml;\r\na.yaml;harp\r\n").unwrap();
    let ended = run(&["batch", text(&path("table.csv")), "--stock", text(&path("good.csv")), "-o", text(&path("out"))]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    assert!(ended.stdout.contains("3 at fault") && ended.stdout.contains("no such file"), "{}", ended.stdout);
    assert!(ended.stdout.contains("asks for no harp"), "{}", ended.stdout);
    let picks = fs::read_to_string(path("out").join("picks.csv")).unwrap();
    assert!(!picks.contains("\"=1+1\""), "{picks}");
}
