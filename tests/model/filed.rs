//! Changes to a file leave everything else of its text as it is: tried on every demo room.

use std::fs;
use std::path::PathBuf;

use elbowroom_model::filed::{Change, Filed, Unchanged};
use serde_json::{Value, json};

/// The demo rooms, each by its name.
fn rooms() -> Vec<(String, String)> {
    let folder = PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios"));
    let files = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let rooms = files.filter(|path| path.extension().is_some_and(|extension| extension == "yaml"));
    let text = |path: PathBuf| (path.display().to_string(), fs::read_to_string(path).unwrap());
    let mut rooms: Vec<_> = rooms.map(text).collect();
    rooms.push(("starter".to_owned(), elbowroom_model::scenario::starter().to_owned()));
    rooms.push(("every key".to_owned(), include_str!("../data/every-key.yaml").to_owned()));
    assert!(rooms.len() > 20);
    rooms
}

fn set(at: &str, to: Value) -> Change {
    Change::Set { at: at.to_owned(), to }
}

fn add(at: &str, row: Value) -> Change {
    Change::Add { at: at.to_owned(), row, before: None }
}

fn remove(at: &str) -> Change {
    Change::Remove { at: at.to_owned() }
}

/// The text changed, where nothing but `lines` lines went and as many at most came.
fn changed(room: &(String, String), change: &Change, [gone, come]: [usize; 2]) -> String {
    let (name, text) = room;
    let changed = Filed::read(text).unwrap().changed(change).unwrap_or_else(|why| panic!("{name}: {change:?}: {why}"));
    let mut left: Vec<&str> = changed.lines().collect();
    let mut lost = Vec::new();
    for line in text.lines() {
        match left.iter().position(|other| *other == line) {
            Some(place) => {
                left.remove(place);
            }
            None => lost.push(line),
        }
    }
    assert!(lost.len() <= gone && left.len() <= come, "{name}: {change:?} lost {lost:?} and brought {left:?}");
    if !matches!(change, Change::Remove { .. }) {
        let comments = |text: &str| text.matches('#').count();
        assert_eq!(comments(text), comments(&changed), "{name}: {change:?}");
    }
    changed
}

/// The number of rows at a place.
fn rows(text: &str, at: &str) -> usize {
    Filed::read(text).unwrap().values().pointer(at).and_then(Value::as_array).map_or(0, Vec::len)
}

#[test]
fn a_size_is_changed_where_it_stands() {
    for room in rooms() {
        let text = changed(&room, &set("pieces.0.width", json!("201..202")), [1, 1]);
        assert!(text.contains("201..202"), "{}", room.0);
        changed(&room, &set("pieces.0.name", json!("our: \"1\"")), [1, 1]);
        if Filed::read(&room.1).unwrap().values().pointer("/walls/0/length").is_some() {
            let text = changed(&room, &set("walls.0.length", json!("11 ft 6")), [1, 1]);
            assert!(text.contains("length: 11 ft 6"), "{}", room.0);
        }
    }
}

#[test]
fn a_wish_and_a_clearance_are_set_whether_the_file_has_any_or_not() {
    for room in rooms() {
        for at in ["wishes.view", "wishes.talk", "clearances.passage", "household.people"] {
            // A section that was not there comes with its heading and an empty line before it.
            let text = changed(&room, &set(at, json!(2)), [1, 3]);
            let before = Filed::read(&room.1).unwrap().values();
            let pointer = format!("/{}", at.replace('.', "/"));
            if before.pointer(&pointer).is_none() {
                let again = Filed::read(&text).unwrap().changed(&remove(at)).unwrap();
                assert_eq!(Filed::read(&again).unwrap().values(), before, "{}", room.0);
            }
        }
    }
}

#[test]
fn a_piece_is_added_and_removed_again() {
    for room in rooms() {
        let count = rows(&room.1, "/pieces");
        let row = json!({ "kind": "armchair", "name": "one more", "needed": false });
        let text = changed(&room, &add("pieces", row), [0, 1]);
        assert_eq!(rows(&text, "/pieces"), count + 1);
        let back = changed(&(room.0.clone(), text), &remove(&format!("pieces.{count}")), [1, 0]);
        assert_eq!(back, room.1, "{}", room.0);
        if count > 1 {
            let fewer = Filed::read(&room.1).unwrap().changed(&remove("pieces.0")).unwrap();
            assert_eq!(rows(&fewer, "/pieces"), count - 1);
        }
    }
}

#[test]
fn something_is_put_on_each_wall_and_taken_off_again() {
    for room in rooms() {
        for wall in 0..rows(&room.1, "/walls") {
            let at = format!("walls.{wall}.holds");
            let count = rows(&room.1, &format!("/walls/{wall}/holds"));
            let row = json!({ "kind": "socket", "name": "new socket", "at": "1 m", "carries": "power" });
            // A wall on one line takes it on that line.
            let text = changed(&room, &add(&at, row), [1, 2]);
            assert_eq!(rows(&text, &format!("/walls/{wall}/holds")), count + 1, "{}", room.0);
            let back = Filed::read(&text).unwrap().changed(&remove(&format!("{at}.{count}"))).unwrap();
            assert_eq!(Filed::read(&back).unwrap().values(), Filed::read(&room.1).unwrap().values(), "{}", room.0);
            if text.matches('\n').count() > room.1.matches('\n').count() {
                assert_eq!(back, room.1, "{}", room.0);
            }
        }
    }
}

#[test]
fn every_value_of_every_room_can_be_set_where_it_stands() {
    for (name, text) in rooms() {
        let filed = Filed::read(&text).unwrap();
        let mut open = vec![(String::new(), filed.values())];
        while let Some((at, value)) = open.pop() {
            let below = |step: String| if at.is_empty() { step } else { format!("{at}.{step}") };
            match value {
                Value::Object(keys) => open.extend(keys.into_iter().map(|(key, value)| (below(key), value))),
                Value::Array(rows) => {
                    open.extend(rows.into_iter().enumerate().map(|(row, value)| (below(row.to_string()), value)));
                }
                _ => {
                    let text =
                        filed.changed(&set(&at, json!("4321"))).unwrap_or_else(|why| panic!("{name}: {at}: {why}"));
                    let place = text.find("\"4321\"").unwrap();
                    assert_eq!(Filed::read(&text).unwrap().path_at(place + 1), at, "{name}");
                }
            }
        }
    }
}

#[test]
fn lines_that_end_as_on_other_machines_stay_so() {
    let text = "units: cm\r\nwalls:\r\n  - { length: 4 }\r\n  - length: 5 # five\r\n";
    let filed = Filed::read(text).unwrap();
    assert_eq!(filed.changed(&set("walls.1.name", json!("quay"))).unwrap(), format!("{text}    name: quay\r\n"));
    assert_eq!(filed.changed(&add("walls", json!({ "length": 6 }))).unwrap(), format!("{text}  - {{ length: 6 }}\r\n"));
    assert_eq!(filed.changed(&set("units", json!("mm"))).unwrap(), text.replace("cm", "mm"));
}

#[test]
fn json_is_changed_too() {
    let text = "{\"units\": \"cm\", \"walls\": [{\"length\": 4}, {\"length\": 5}]}";
    let filed = Filed::read(text).unwrap();
    assert_eq!(filed.changed(&set("walls.0.length", json!(7))).unwrap(), text.replace('4', "7"));
    let fewer = filed.changed(&remove("walls.0")).unwrap();
    assert_eq!(Filed::read(&fewer).unwrap().values(), json!({ "units": "cm", "walls": [{ "length": 5 }] }));
}

#[test]
fn what_cannot_be_changed_in_its_place_is_refused() {
    let filed = Filed::read("units: cm\nbase: &a { kind: sofa }\npieces:\n  - *a\n  - kind: sofa\n").unwrap();
    assert_eq!(filed.changed(&remove("pieces.7")), Err(Unchanged::NoPlace));
    assert_eq!(filed.changed(&set("units.cm.x", json!(1))), Err(Unchanged::NoPlace));
    // Another row would change with this one.
    if let Ok(text) = filed.changed(&set("pieces.0.kind", json!("armchair"))) {
        panic!("{text}");
    }
}

#[test]
fn a_key_that_comes_back_stands_before_what_the_wall_holds() {
    let text =
        "walls:\n  - name: south\n    length: 420\n    # both by hand\n    holds:\n      - { kind: socket, at: 5 }\n";
    let then = |text: &str, change: &Change| Filed::read(text).unwrap().changed(change).unwrap();
    let cleared = then(text, &remove("walls.0.length"));
    let again = then(&cleared, &set("walls.0.length", json!(425)));
    assert_eq!(again, text.replace("420", "425"));
    let flow = "walls:\n  - { name: south, holds: [{ kind: socket, at: 5 }] }\n";
    let put = then(flow, &set("walls.0.length", json!(425)));
    assert_eq!(put, flow.replace("south, ", "south, length: 425, "));
}
