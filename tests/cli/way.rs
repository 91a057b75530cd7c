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
