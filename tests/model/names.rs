//! Names: as given, or by the kind.

use elbowroom_model::Brief;

use crate::plain_room::{brief, changed, faults};

fn items(brief: &Brief) -> Vec<&str> {
    brief.room.items.iter().map(|item| item.name.as_str()).collect()
}

fn pieces(brief: &Brief) -> Vec<&str> {
    brief.pieces.iter().map(|piece| piece.name.as_str()).collect()
}

#[test]
fn one_of_a_kind_is_named_by_its_kind() {
    let brief = brief(&changed(&[("name: bay, ", ""), ("name: hall door, ", "")]));
    assert_eq!(items(&brief), ["window", "door"]);
    assert_eq!(pieces(&brief), ["sofa", "coffee table"]);
}

#[test]
fn several_of_a_kind_without_names_are_numbered_in_the_files_order() {
    let more = "width: 220 }\n      - { kind: window, name: side light, at: 310, width: 40 }\n      - { kind: window, at: 360, width: 40 }";
    let brief = brief(&changed(&[("name: bay, ", ""), ("width: 220 }", more)]));
    assert_eq!(items(&brief), ["window 1", "side light", "window 2", "hall door"]);
}

#[test]
fn a_wall_without_a_name_is_numbered_by_its_place() {
    let brief = brief(&changed(&[("name: party wall\n    length", "length")]));
    assert_eq!(brief.room.walls[2].name, "wall 3");
}

#[test]
fn pieces_of_a_count_are_numbered_and_those_without_a_name_across_rows() {
    let rows = "kind: armchair, count: 2 }\n  - { kind: armchair }\n  - { kind: armchair, name: reader, count: 2";
    let brief = brief(&changed(&[("kind: coffee-table", rows)]));
    assert_eq!(pieces(&brief), ["sofa", "armchair 1", "armchair 2", "armchair 3", "reader 1", "reader 2"]);
    let alike: Vec<Option<usize>> = brief.pieces.iter().map(|piece| piece.alike.map(|first| first.0)).collect();
    assert_eq!(alike, [None, Some(1), Some(1), None, Some(4), Some(4)]);
}

#[test]
fn a_given_name_that_is_anothers_default_is_refused() {
    let text = changed(&[
        ("kind: coffee-table", "kind: coffee-table, name: window 1"),
        ("name: bay, ", ""),
        ("width: 220 }", "width: 220 }\n      - { kind: window, at: 310, width: 40 }"),
    ]);
    let told = faults(&text);
    assert_eq!(told.len(), 1, "{told:#?}");
    assert_eq!((told[0].code, told[0].place.unwrap().line), ("name_twice", 19));
}

#[test]
fn a_given_name_that_equals_one_of_a_count_is_refused() {
    let text =
        changed(&[("kind: coffee-table", "kind: armchair, count: 2, name: x }\n  - { kind: coffee-table, name: x 2")]);
    assert_eq!(faults(&text)[0].code, "name_twice");
}
