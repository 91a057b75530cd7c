//! A piece tried elsewhere: what is said of it, what is typed, what is kept.

use std::fs;

use serde_json::{Value, json};

use super::served::{Served, demo};
use crate::judge::ROOM as PARLOUR;
use crate::program::run;

const ROOM: &str = "/room/room.yaml";

/// In that room: the sofa's corner lies in the swing of the only door.
const IN_THE_SWING: &str = "  - { kind: sofa, width: 200, depth: 90, place: { wall: east, from: 150, off: 16 } }
  - { kind: coffee-table, width: 100, depth: 60, place: { at: [351, -250], facing: 180 } }
  - { kind: media-unit, width: 160, depth: 45, place: { wall: west, from: 120, off: 5 } }
";

fn ranked(text: &str) -> (Served, Vec<String>) {
    let served = Served::file(text);
    served.get("/room/room.yaml/options");
    assert_eq!(served.settled()["stage"], "done");
    let mut keys = served.keys();
    keys.dedup();
    (served, keys)
}

fn judged(served: &Served, asked: &Value) -> Value {
    let told = served.post(&format!("{ROOM}/judge"), asked);
    assert_eq!(told.status, 200, "{}", told.text());
    told.json()
}

#[test]
fn what_nobody_moved_is_told_as_the_option_is() {
    for room in ["hung-screen.yaml", "wheelchair.yaml", "narrow.yaml"] {
        let (served, keys) = ranked(&demo(room));
        for key in &keys {
            let option = judged(&served, &json!({ "key": key }));
            let mut pieces = option["pieces"].clone();
            // So little that no tape would tell.
            pieces[0]["x"] = json!(pieces[0]["x"].as_f64().unwrap() + 0.01);
            let moved = judged(&served, &json!({ "key": key, "pieces": pieces }));
            for told in [&option, &moved] {
                assert_eq!((&told["broken"], &told["score"]), (&json!([]), &option["score"]), "{room} {key}");
                let score = told["score"].as_str().unwrap();
                let figures: Vec<&str> = score.split(|letter: char| !letter.is_ascii_digit()).collect();
                assert!(figures.contains(&"100"), "{score}");
            }
            let [now, had] = ["Score ", "had "].map(|before| {
                let rest = option["score"].as_str().unwrap().split_once(before).unwrap().1;
                rest.split(|letter: char| !letter.is_ascii_digit()).next().unwrap().to_owned()
            });
            assert_eq!(now, had, "{room} {key}");
        }
    }
}

#[test]
fn what_is_typed_is_read_in_any_unit_or_told_why_not() {
    let (served, _) = ranked(&demo("which-hand.yaml"));
    let read = |query: &str| served.get(&format!("{ROOM}/length?{query}")).json();
    for (text, length) in
        [("4%20ft", 1219.2), ("3.5%20m", 3500.0), ("11%20ft%206", 3505.2), ("40", 400.0), ("-5", -50.0)]
    {
        let read = read(&format!("text={text}"))["mm"].as_f64().unwrap();
        assert!((read - length).abs() < 1e-6, "{text}: {read}");
    }
    for query in ["text=abc", "text=1,5", "text=", "text=1e5", "text=-5&size=1", "text=0&size=1", "text=200%20m"] {
        let read = read(query);
        assert!(read["mm"].is_null() && !read["told"].as_str().unwrap().is_empty(), "{query}: {read}");
    }
}

#[test]
fn a_size_that_is_tried_is_held_against_the_range_of_the_file() {
    let (served, keys) = ranked(&demo("which-hand.yaml"));
    let option = judged(&served, &json!({ "key": keys[0] }));
    let mut pieces = option["pieces"].clone();
    let table = pieces.as_array_mut().unwrap().iter_mut().find(|piece| piece["name"] == "coffee table").unwrap();
    table["width"] = json!(4000.0);
    table["moved"] = json!(true);
    table["sized"] = json!(true);
    let told = judged(&served, &json!({ "key": keys[0], "pieces": pieces }));
    assert!(told["broken"].to_string().contains("coffee table"), "{}", told["broken"]);
}

#[test]
fn what_is_kept_is_held_in_the_file_and_taken_back() {
    let text = demo("everyday.yaml");
    let (served, keys) = ranked(&text);
    let option = judged(&served, &json!({ "key": keys[1] }));
    let kept = served.post(&format!("{ROOM}/keep"), &json!({ "key": keys[1], "pieces": option["pieces"] })).json();
    let now = served.settled();
    let step = json!({ "from": now["step"], "changes": kept["changes"] });
    let told = served.post(&format!("{ROOM}/step"), &step);
    assert_eq!(told.status, 200, "{}", told.text());
    let written = fs::read_to_string(served.room()).unwrap();
    let count = option["pieces"].as_array().unwrap().len();
    assert_eq!(written.matches("hold: true").count(), count, "{written}");
    assert_eq!(served.settled()["stage"], "done");
    // What is ranked then is the room as it was kept.
    let keys = served.keys();
    let held = judged(&served, &json!({ "key": keys[0] }));
    for (was, is) in option["pieces"].as_array().unwrap().iter().zip(held["pieces"].as_array().unwrap()) {
        for axis in ["x", "y"] {
            let by = (was[axis].as_f64().unwrap() - is[axis].as_f64().unwrap()).abs();
            assert!(by < 60.0, "{} {axis} by {by}", was["name"]);
        }
    }
    let back = served.post(&format!("{ROOM}/step"), &json!({ "from": served.settled()["step"], "step": "undo" }));
    assert_eq!((back.status, fs::read_to_string(served.room()).unwrap()), (200, text));
}

#[test]
fn the_room_as_it_stands_is_put_in_and_told_what_it_lacks() {
    let (served, keys) = ranked(&format!("{PARLOUR}{IN_THE_SWING}"));
    let told = judged(&served, &json!({ "key": keys[0], "stands": true }));
    let room = served.room().display().to_string();
    let said = run(&["judge", &room]).stdout;
    let broken = told["broken"].as_array().unwrap();
    let flat = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(!broken.is_empty());
    for breach in broken {
        assert!(flat(&said).contains(&flat(breach["told"].as_str().unwrap())), "{breach} {said}");
    }
    assert!(served.get(&format!("{ROOM}/try")).text().contains("id=\"trial-stands\""));
    // A file that does not say where anything stands has nothing to put in.
    let (served, _) = ranked(&demo("which-hand.yaml"));
    assert!(!served.get(&format!("{ROOM}/try")).text().contains("id=\"trial-stands\""));
}
