//! What an owner of a stock is told of a room: what stands in, what stays, what is nearest, what is odd.

use std::fs;
use std::path::Path;

use serde_json::Value;
use tempfile::{TempDir, tempdir};

use super::text;
use crate::program::{Ended, run};

const WALLS: &str = "name: Quay room\nunits: cm\nwalls:\n  - { length: 560 }\n  - { length: 460 }\n  - { length: 560, holds: [{ kind: door, at: 20, \
                     width: 83, hinge: left, swings: in, leads_to: entrance }] }\n  - { length: 460 }\n";

/// A folder with one room, a stock and, where there are any, bookings.
fn folder(pieces: &str, stock: &str, bookings: &str) -> TempDir {
    let folder = tempdir().unwrap();
    let put = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    put("quay.yaml", &format!("{WALLS}pieces:\n{pieces}"));
    put("stock.csv", stock);
    put("bookings.csv", bookings);
    folder
}

fn handed(folder: &Path, rooms: &str) -> Ended {
    let path = |name: &str| folder.join(name);
    run(&["batch", text(&path(rooms)), "--stock", text(&path("stock.csv")), "-o", text(&path("out"))])
}

fn rows(path: &Path) -> (csv::StringRecord, Vec<csv::StringRecord>) {
    let mut rows = csv::Reader::from_path(path).unwrap();
    (rows.headers().unwrap().clone(), rows.records().map(Result::unwrap).collect())
}

#[test]
fn what_stands_in_is_told_where_it_is_picked() {
    let pieces = "  - { kind: corner-sofa, instead: [sofa] }\n  - { kind: coffee-table }\n";
    let stock = "kind,name,width (cm),depth (cm)\nsofa,Hazel,200,90\ncoffee-table,Dock,110,60\n";
    let folder = folder(pieces, stock, "");
    let ended = handed(folder.path(), "quay.yaml");
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    for said in ["(a sofa in place of the corner sofa)", "option 1 of ", "2 of 2 pieces"] {
        assert!(ended.stdout.contains(said), "{said}: {}", ended.stdout);
    }
    let (heads, picks) = rows(&folder.path().join("out/picks.csv"));
    let place = heads.iter().position(|head| head == "stands_in").unwrap();
    let told: Vec<&str> = picks.iter().map(|pick| &pick[place]).collect();
    assert_eq!(told, ["a sofa in place of the corner sofa", ""]);
    let told: Value = serde_json::from_str(&fs::read_to_string(folder.path().join("out/stock.json")).unwrap()).unwrap();
    let arrangement = &told["rooms"][0]["arrangement"];
    assert!(arrangement["of"].as_u64().unwrap() > 0 && arrangement["score"].as_f64().is_some(), "{arrangement}");
    // With a corner sofa in stock nothing stands in.
    let both = "kind,name,width (cm),depth (cm),return (cm),hand\nsofa,Hazel,200,90,,\ncorner-sofa,Weir,240,95,180,\n\
                coffee-table,Dock,110,60,,\n";
    fs::write(folder.path().join("stock.csv"), both).unwrap();
    let ended = handed(folder.path(), "quay.yaml");
    assert!(ended.stdout.contains("Weir") && !ended.stdout.contains("in place of"), "{}", ended.stdout);
    // `check` says what may stand in.
    let checked = run(&["check", text(&folder.path().join("quay.yaml"))]);
    let told = checked.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("where a stock has none, a sofa"), "{}", checked.stdout);
}

#[test]
fn what_a_room_has_when_it_is_booked_on_stays_and_is_no_load() {
    let pieces = "  - { kind: sofa, width: 150..240 }\n  - { kind: coffee-table }\n";
    let stock = "kind,name,width (cm),depth (cm)\nsofa,Hazel,200,90\ncoffee-table,Dock,110,60\n";
    let bookings = "room,from,to\nquay.yaml,2026-05-04,2026-05-08\nquay.yaml,2026-05-09,2026-05-12\n";
    let folder = folder(pieces, stock, bookings);
    let ended = handed(folder.path(), "bookings.csv");
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let (_, loads) = rows(&folder.path().join("out/picks/loads.csv"));
    let told: Vec<(&str, &str, &str)> = loads.iter().map(|load| (&load[0], &load[1], &load[2])).collect();
    assert_eq!(
        told,
        [
            ("2026-05-04", "out", "Hazel"),
            ("2026-05-04", "out", "Dock"),
            ("2026-05-09", "stays", "Hazel"),
            ("2026-05-09", "stays", "Dock"),
            ("2026-05-12", "back", "Hazel"),
            ("2026-05-12", "back", "Dock"),
        ]
    );
    let calendar = fs::read_to_string(folder.path().join("out/picks/calendar.ics")).unwrap();
    assert_eq!(calendar.matches("Van: ").count(), 2, "{calendar}");
    let returns = fs::read_to_string(folder.path().join("out/picks/returns.txt")).unwrap();
    assert!(returns.contains("2026-05-12") && !returns.contains("2026-05-09"), "{returns}");
}

#[test]
fn what_is_short_tells_what_is_nearest_and_what_is_odd_is_told() {
    let pieces = "  - { kind: sofa, width: 150..240 }\n  - { kind: bookcase, width: 100..140, depth: 25..35 }\n";
    let stock = "kind,name,width (cm),depth (cm),shade\nsofa,Hazel,200,90,navy\nbookcase,Fern,99.3,30,oak\nsofa,Slip,15,8,grey\n";
    let folder = folder(pieces, stock, "");
    let ended = handed(folder.path(), "quay.yaml");
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let page = ended.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in [
        "the nearest, Fern, is",
        "too narrow",
        "that say nothing here: shade",
        "Line 4: the width of Slip is 15 cm, and 150 cm to",
        "A bookcase of 100 to 140 x 25 to 35 cm would bring most, at its largest",
    ] {
        assert!(page.contains(said), "{said}: {page}");
    }
}
