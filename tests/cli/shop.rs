//! `shop`: the page, the spreadsheet, the JSON, and bad input.

use std::fs;

use serde_json::Value;
use tempfile::tempdir;

use crate::program::{root, run, run_with};

const ROOM: &str = concat!(
    include_str!("../data/back-parlour.yaml"),
    "way:\n  - { kind: turn, name: bend, from: 105, to: 95, ceiling: 220 }\n"
);

const LIST: &str = "kind;name;width (cm);depth (cm);height (cm);price EUR;score;colour\n\
    sofa;Heron;160;85;80;450;60;grey\n\
    sofa;=Gull/..\\x;210;95;80;699,50;90;red\n\
    sofa;Great Heron;392;95;80;950,00;80;red\n\
    coffee-table;Snipe;60;45;40;90;50;\n\
    coffee-table;Plover;120;75;40;150;70;\n\
    rug;Moss;200;140;;80;;\n";

/// The program on the room and the list above.
fn shop(args: &[&str]) -> crate::program::Ended {
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    fs::write(&list, LIST).unwrap();
    let mut ended = run_with(&[&["shop", "-", list.to_str().unwrap()], args].concat(), ROOM.as_bytes());
    ended.stdout = ended.stdout.replace(folder.path().to_str().unwrap(), "");
    ended
}

#[test]
fn the_page_of_a_list() {
    let ended = shop(&[]);
    assert_eq!(ended.code, Some(0), "{}", ended.stderr);
    insta::assert_snapshot!(ended.stdout);
}

#[test]
fn the_page_of_sets() {
    let ended = shop(&["--sets", "--top", "2", "--budget", "900"]);
    assert_eq!(ended.code, Some(0), "{}", ended.stderr);
    insta::assert_snapshot!(ended.stdout);
    let none = shop(&["--sets", "--budget", "300"]);
    assert_eq!(none.code, Some(3), "{}", none.stderr);
    assert!(none.stdout.contains("The cheapest set that fits"), "{}", none.stdout);
}

#[test]
fn the_spreadsheet_shows_formulas_and_does_not_run_them() {
    let csv = shop(&["--csv"]).stdout;
    assert!(csv.contains("\"'=Gull/..\\x\""), "{csv}");
    assert_eq!(csv.lines().count(), 7, "{csv}");
    let columns = |line: &str| {
        csv::ReaderBuilder::new()
            .has_headers(false)
            .from_reader(line.as_bytes())
            .records()
            .next()
            .unwrap()
            .unwrap()
            .len()
    };
    assert!(csv.lines().all(|line| columns(line) == 30), "{csv}");
    let csv = shop(&["--csv", "--units", "ft"]).stdout;
    let mut rows = csv::Reader::from_reader(csv.as_bytes());
    let heads = rows.headers().unwrap().clone();
    let lengths: Vec<usize> =
        (0..heads.len()).filter(|place| heads[*place].ends_with("_in") && &heads[*place] != "gets_in").collect();
    // Furniture is sold in inches where rooms are measured in feet.
    assert_eq!((lengths.len(), &heads[4]), (15, "width_in"));
    for row in rows.records().map(Result::unwrap) {
        assert!(row[4].parse::<f64>().is_ok(), "{row:?}");
        assert!(lengths.iter().all(|place| row[*place].is_empty() || row[*place].parse::<f64>().is_ok()), "{row:?}");
    }
}

#[test]
fn the_json_has_every_candidate_and_the_layout_of_each_set() {
    let json: Value = serde_json::from_str(&shop(&["--json", "--sets"]).stdout).unwrap();
    assert_eq!(json["format"], "elbowroom-shop/1");
    assert_eq!(json["candidates"].as_array().unwrap().len(), 6);
    let best = &json["sets"]["sets"][0];
    assert_eq!(best["option"]["pieces"].as_array().unwrap().len(), 2);
    assert!(best["price"].as_f64().unwrap() > 500.0);
    assert_eq!(shop(&["--json", "--sets"]).stdout, shop(&["--json", "--sets", "--threads", "1"]).stdout);
}

#[test]
fn what_is_no_matter_of_size_is_said() {
    let room = "units: cm\nwalls: [{ length: 600 }, { length: 500 }, { length: 600 }, { length: 500 }]\npieces:\n  \
                - { kind: corner-sofa, hand: left }\n  - { kind: armchair, count: 2 }\n";
    let list = "kind,name,width cm,depth cm,return cm,hand,count\ncorner-sofa,Tern,240,95,180,right,\n\
                armchair,Ruff,80,80,,,1\nrug,Mat,200,140,,,\n";
    let folder = tempdir().unwrap();
    let path = folder.path().join("list.csv");
    fs::write(&path, list).unwrap();
    let told =
        |args: &[&str]| run_with(&[&["shop", "-", path.to_str().unwrap()], args].concat(), room.as_bytes()).stdout;
    let json: Value = serde_json::from_str(&told(&["--json"])).unwrap();
    let why = [
        "Its return is on the other hand than the one asked for.",
        "The room asks for 2 alike, and 1 is in hand.",
        "The room asks for no rug.",
    ];
    for (place, why) in why.into_iter().enumerate() {
        assert_eq!(json["candidates"][place]["why_not"], why);
        assert!(told(&["--csv"]).contains(why));
    }
}

#[test]
fn bad_input_is_told() {
    assert_eq!(run(&["shop", "-", "-"]).code, Some(2));
    let room = root().join("scenarios/canal-flat.yaml");
    let room = room.to_str().unwrap();
    for args in [&["shop", room, "no-such-list.csv"][..], &["shop", room, "x.csv", "--budget", "100"], &["shop", room]]
    {
        let ended = run(args);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{args:?}");
    }
    for budget in ["1,299", "lots", "-5"] {
        let ended = run(&["shop", room, "x.csv", "--sets", "--budget", budget]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{budget}");
    }
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    for bytes in
        [&b"kind,name,width cm,depth cm\nsofa,\"Heron,2,3\n"[..], b"\xff\xfe\0", b"kind,width,depth\nsofa,1,2\n", b""]
    {
        fs::write(&list, bytes).unwrap();
        let ended = run(&["shop", room, list.to_str().unwrap()]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{bytes:?}");
        assert!(ended.stderr.contains("to mend first"), "{}", ended.stderr);
    }
}

#[test]
fn rows_go_into_a_file_by_its_ending() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("list.csv"), LIST).unwrap();
    let rows = |name: &str, more: &[&str]| {
        let (list, rows) = (path("list.csv"), path(name));
        let named = ["shop", "-", list.to_str().unwrap(), "--rows", rows.to_str().unwrap()];
        run_with(&[&named, more].concat(), ROOM.as_bytes())
    };
    let ended = rows("fits.csv", &["--sets"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    assert!(ended.stdout.contains("For sofa"), "the page is printed: {}", ended.stdout);
    assert_eq!(fs::read_to_string(path("fits.csv")).unwrap(), shop(&["--csv"]).stdout);
    assert_eq!(rows("fits.xlsx", &[]).code, Some(0));
    let made = fs::read(path("fits.xlsx")).unwrap();
    let mut book: calamine::Xlsx<_> = calamine::open_workbook_from_rs(std::io::Cursor::new(&made)).unwrap();
    let sheet = calamine::Reader::worksheet_range_at(&mut book, 0).unwrap().unwrap();
    // The name as it is, its width as a number.
    assert_eq!((sheet[(2, 1)].to_string().as_str(), &sheet[(2, 4)]), ("=Gull/..\\x", &calamine::Data::Float(210.0)));
    assert_eq!(rows("fits.xlsx", &["--force"]).code, Some(0));
    assert!(fs::read(path("fits.xlsx")).unwrap() == made, "other bytes");
    for (name, more) in [("fits.xlsx", &[][..]), ("fits.txt", &[]), ("list.csv", &["--force"]), ("no/fits.csv", &[])] {
        let ended = rows(name, more);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{name}");
    }
    assert_eq!(fs::read_to_string(path("list.csv")).unwrap(), LIST);
}
