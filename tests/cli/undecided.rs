//! Rooms of which nobody knows whether anything fits: the work allowed is used up first.

use std::fs;

use serde_json::Value;
use tempfile::tempdir;

use crate::program::{run, run_with};

/// A plain room of so many centimetres with so many armchairs.
fn armchairs([width, depth]: [u32; 2], count: u32) -> String {
    format!(
        "name: hall\nunits: cm\nwalls:\n  \
           - {{ length: {width}, holds: [{{ kind: window, at: 30, width: 100 }}] }}\n  \
           - {{ length: {depth} }}\n  \
           - {{ length: {width}, holds: [{{ kind: door, at: 20, width: 90, hinge: left, swings: in, leads_to: entrance }}] }}\n  \
           - {{ length: {depth} }}\npieces:\n  - {{ kind: armchair, count: {count} }}\n"
    )
}

fn ranked(room: &str, args: &[&str]) -> crate::program::Ended {
    run_with(&[&["rank", "-"], args].concat(), room.as_bytes())
}

/// How many of the refused were not decided.
fn undecided(result: &Value) -> usize {
    let refused = result["refused"].as_array().unwrap();
    let undecided = refused.iter().filter(|one| one["rule"] == "work");
    undecided.inspect(|one| assert_eq!((&one["short_by"], &one["why"]), (&Value::Null, &NOT_FOUND.into()))).count()
}

const NOT_FOUND: &str = "No layout was found within the work allowed.";

#[test]
fn where_nothing_was_decided_it_is_not_told_that_nothing_fits() {
    // Twenty armchairs have room enough in 80 m2: 20 x 0.64 m2, each with a passage round it.
    let room = armchairs([1000, 800], 20);
    let json = ranked(&room, &["--json"]);
    let result: Value = serde_json::from_str(&json.stdout).unwrap();
    let all = result["refused"].as_array().unwrap().len();
    assert_eq!((json.code, result["options"].as_array().unwrap().len(), undecided(&result)), (Some(3), 0, all));
    let page = ranked(&room, &[]);
    assert_eq!(page.code, Some(3));
    let head = format!(
        "hall, 80.0 m2: none of {all} arrangements was decided within the work allowed\n\
         Nothing was found that fits as asked; it is not known whether anything does.\n"
    );
    assert!(page.stdout.starts_with(&head), "{}", page.stdout);
    assert!(page.stdout.contains("What was not decided: it may fit, and it may not"), "{}", page.stdout);
    for wrong in ["Nothing fits", "does not fit", "do not fit"] {
        assert!(!page.stdout.contains(wrong), "{wrong}: {}", page.stdout);
    }
    let drawn = run_with(&["draw", "-"], room.as_bytes());
    assert_eq!((drawn.code, drawn.stdout.as_str()), (Some(3), ""));
    assert!(drawn.stderr.contains("it is not known whether anything does"), "{}", drawn.stderr);
}

#[test]
fn what_was_not_decided_is_counted_apart_from_what_does_not_fit() {
    let room = armchairs([700, 300], 12);
    let result: Value = serde_json::from_str(&ranked(&room, &["--json"]).stdout).unwrap();
    let (open, all) = (undecided(&result), result["refused"].as_array().unwrap().len());
    assert!(0 < open && open < all, "{open} of {all}: the room shows nothing");
    let page = ranked(&room, &[]).stdout;
    let counts = format!("{} arrangements do not fit, {open} were not decided within the work allowed", all - open);
    assert!(page.replace('\n', " ").contains(&counts), "{page}");
    let folder = tempdir().unwrap();
    let rooms = folder.path().join("rooms");
    fs::create_dir(&rooms).unwrap();
    fs::write(rooms.join("hall.yaml"), &room).unwrap();
    let out = folder.path().join("out");
    let batch = run(&["batch", rooms.to_str().unwrap(), "-o", out.to_str().unwrap()]);
    assert!(batch.stdout.contains("something fits in 0, not known of 1"), "{}", batch.stdout);
    let rows = fs::read_to_string(out.join("rooms.csv")).unwrap();
    let mut rows = csv::Reader::from_reader(rows.as_bytes());
    let heads = rows.headers().unwrap().clone();
    let row = rows.records().next().unwrap().unwrap();
    let cell = |name: &str| &row[heads.iter().position(|head| head == name).unwrap()];
    assert_eq!(cell("outcome"), "not known");
    assert_eq!(
        (cell("do_not_fit"), cell("not_decided")),
        ((all - open).to_string().as_str(), open.to_string().as_str())
    );
}

#[test]
fn a_candidate_of_which_nobody_knows_is_not_told_not_to_fit() {
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    fs::write(&list, "kind,name,width cm,depth cm,count\narmchair,Ruff,80,80,12\n").unwrap();
    let room = armchairs([700, 300], 12);
    let ended = run_with(&["shop", "-", list.to_str().unwrap(), "--json"], room.as_bytes());
    let result: Value = serde_json::from_str(&ended.stdout).unwrap();
    let why = "It is not known whether it fits: nothing was found within the work allowed.";
    assert_eq!((ended.code, &result["candidates"][0]["why_not"]), (Some(3), &why.into()));
}
