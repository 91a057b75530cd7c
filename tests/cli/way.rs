//! `way`: the page, the JSON, and what it does with bad input.

use std::fs;

use serde_json::Value;
use tempfile::tempdir;

use crate::program::{root, run, run_with};

const WAY: &str = "\
name: Number 12
units: cm
measured_within: 0
way:
  - { kind: door, name: street door, width: 86, height: 200 }
  - { kind: hall, width: 105, ceiling: 235 }
  - { kind: turn, name: foot of the stairs, from: 105, to: 95, ceiling: 235 }
  - { kind: stairs, width: 95, headroom: 205, landing: { turn: half, depth: 100, width: 200, ceiling: 245 } }
  - { kind: door, name: flat door, width: 78, height: 198 }
pieces:
  - { kind: sofa, width: 180..260, depth: 90..105, height: 76 }
  - { kind: bookcase, width: 80, depth: 30, height: 210 }
  - { kind: rug }
";

const LIST: &str = "kind,name,width cm,depth cm,height cm,legs off,parts,diagonal depth cm,return cm\n\
    sofa,Heron,212,95,85,12 cm,,,\n\
    sofa,Gull,240,100,90,,,76,\n\
    corner-sofa,../Tern,260,98,85,,130 x 98 x 70 cm; 130 x 98 x 70 cm,,190\n";

#[test]
fn the_page_of_a_way_of_its_own() {
    let ended = run_with(&["way", "-"], WAY.as_bytes());
    assert_eq!(ended.code, Some(3), "{}", ended.stderr);
    insta::assert_snapshot!(ended.stdout);
}

#[test]
fn listed_pieces_with_legs_off_in_parts_and_tilted() {
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    fs::write(&list, LIST).unwrap();
    let text = WAY.split("pieces:").next().unwrap();
    let ended = run_with(&["way", "-", "--pieces", list.to_str().unwrap()], text.as_bytes());
    insta::assert_snapshot!(ended.stdout);
    let json = run_with(&["way", "-", "--json", "--pieces", list.to_str().unwrap()], text.as_bytes());
    let json: Value = serde_json::from_str(&json.stdout).unwrap();
    assert_eq!(json["format"], "elbowroom-way/1");
    let gets_in: Vec<bool> =
        json["pieces"].as_array().unwrap().iter().map(|it| it["gets_in"].as_bool().unwrap()).collect();
    assert_eq!(gets_in.len(), 3);
    assert_eq!(json["pieces"][2]["parts"].as_array().unwrap().len(), 2);
}

/// Sofas that all fail a door of 81 cm as boxes: each is told the pose that gets it in, what would have to come off, or by how
/// much it fails.
#[test]
fn seats_are_turned_and_told_what_would_have_to_come_off() {
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    let text = "kind,name,width (cm),depth (cm),height (cm),seat_height (cm),arm height (cm),back_thickness,leg_height,legs off\n\
        sofa,Low arms,210,95,84,42,45,6 cm,,\nsofa,Legs,200,92,90,45,,20 cm,12 cm,\nsofa,Screwed,200,92,90,,,,,12 cm\n\
        sofa,Bare,160,90,85,,,,,\nsofa,Boxy,220,110,108,,100,30 cm,,\n";
    fs::write(&list, text).unwrap();
    let way = "units: cm\npieces:\n  - { kind: sofa, width: 160, depth: 90, height: 85 }\n\
        way:\n  - { kind: door, name: front, width: 81, height: 203 }\n";
    let ended = run_with(&["way", "-", "--pieces", list.to_str().unwrap()], way.as_bytes());
    assert_eq!(ended.code, Some(3), "{}", ended.stderr);
    insta::assert_snapshot!(ended.stdout);
    let json = run_with(&["way", "-", "--json", "--pieces", list.to_str().unwrap()], way.as_bytes());
    let json: Value = serde_json::from_str(&json.stdout).unwrap();
    let told = json["pieces"].as_array().unwrap().iter().map(|it| {
        let known = it["would"].as_array().unwrap().iter().find_map(|off| off["legs"]["known"].as_str());
        (it["gets_in"].as_bool().unwrap(), it["legs_off"].as_f64(), known)
    });
    let told: Vec<(bool, Option<f64>, Option<&str>)> = told.collect();
    let expected = [
        (false, None, Some("unknown")),
        (true, None, None),
        (false, None, Some("listed")),
        (true, Some(120.0), None),
        (false, None, Some("unknown")),
        (false, None, None),
    ];
    assert_eq!(told, expected);
}

#[test]
fn bad_input_is_told_and_nothing_else() {
    let room = root().join("scenarios/canal-flat.yaml");
    let ended = run(&["way", room.to_str().unwrap()]);
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""));
    assert!(ended.stderr.contains("says nothing of the way in"), "{}", ended.stderr);
    let nothing = run_with(&["way", "-"], WAY.split("pieces:").next().unwrap().as_bytes());
    assert_eq!((nothing.code, nothing.stdout.as_str()), (Some(2), ""));
    assert!(nothing.stderr.contains("--pieces"), "{}", nothing.stderr);
    assert_eq!(run(&["way", "-", "--pieces", "-"]).code, Some(2));
    let folder = tempdir().unwrap();
    let list = folder.path().join("list.csv");
    fs::write(&list, "kind,name,widht,depth cm\nsofa,Heron,212,95\nsoffa,Tern,1,2\nsofa,Gull,\"1,250\",=2\n").unwrap();
    let ended = run_with(&["way", "-", "--pieces", list.to_str().unwrap()], WAY.as_bytes());
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""));
    let told = ended.stderr.replace(folder.path().to_str().unwrap(), "");
    insta::assert_snapshot!(told);
}

#[test]
fn check_shows_the_way_in_and_what_gets_by() {
    let room = "\
name: Back parlour
units: cm
measured_within: 0.5
walls: [{ length: 380 }, { length: 320 }, { length: 380, holds: [{ kind: door, name: hall door, at: 20, width: 85, hinge: left, swings: in, leads_to: entrance }] }, { length: 320 }]
pieces:
  - { kind: sofa, width: 150..260, depth: 80..105, height: 80 }
  - { kind: coffee-table, width: 60..130, depth: 40..80 }
  - { kind: bookcase, name: press, width: 120..150, depth: 40, height: 240, needed: false }
  - { kind: rug, needed: false }
way:
  - { kind: door, name: street door, width: 88, height: 203 }
  - { kind: turn, name: bend, from: 105, to: 95, ceiling: 220 }
  - { kind: stairs, name: stairs, width: 82, headroom: 200, pitch: 38 }
";
    let told = run_with(&["check", "-"], room.as_bytes()).stdout;
    let from = told.find("The way in").expect("a part of its own");
    let part: String =
        told[from..].lines().take_while(|line| !line.is_empty()).map(|line| format!("{line}\n")).collect();
    insta::assert_snapshot!(part);
    // What it says of the most that gets in is so.
    let with = |size: &str| room.replace("width: 150..260, depth: 80..105", size);
    assert_eq!(
        run_with(&["way", "-"], with("width: 197, depth: 94").as_bytes())
            .stdout
            .matches("sofa, 197 x 94 x 80: gets in")
            .count(),
        1
    );
    assert!(
        run_with(&["way", "-"], with("width: 199, depth: 94").as_bytes())
            .stdout
            .contains("sofa, 199 x 94 x 80: does not")
    );
    // Without a way there is no such part.
    let without = room.split("way:").next().unwrap();
    assert!(!run_with(&["check", "-"], without.as_bytes()).stdout.contains("The way in"));
}
