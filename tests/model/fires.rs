//! A chimney breast and the mouth of its fire.

use elbowroom_model::{FireOpening, ItemKind};

use crate::plain_room::{brief, changed, faults};

/// The plain room with a fireplace on the party wall: a breast 160 wide from 130, 40 deep.
fn with_fire(keys: &str) -> String {
    changed(&[(
        "name: party wall\n    length: 486",
        &format!(
            "name: party wall\n    length: 486\n    holds:\n      - {{ kind: fireplace, name: hearth, at: 130, width: 160, \
             depth: 40{keys} }}\n      - {{ kind: socket, name: mantel socket, at: 140 }}"
        ),
    )])
}

fn opening(keys: &str) -> Option<FireOpening> {
    let brief = brief(&with_fire(keys));
    let hearth = brief.room.items.iter().find(|item| item.name == "hearth");
    match hearth.map(|item| &item.kind) {
        Some(ItemKind::Fireplace(fire)) => fire.opening,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_fire_is_as_wide_as_its_breast_unless_it_has_an_opening() {
    assert_eq!(opening(""), None);
    assert_eq!(opening(", opening: 70, opening_at: 20"), Some(FireOpening { at: 200.0, width: 700.0 }));
    // In the middle of the breast: (160 - 70) / 2 = 45 (D).
    assert_eq!(opening(", opening: 70"), Some(FireOpening { at: 450.0, width: 700.0 }));
}

#[test]
fn the_mouth_of_a_fire_lies_on_its_wall() {
    let brief = brief(&with_fire(", opening: 70, opening_at: 20"));
    let place = brief.room.items.iter().position(|item| item.name == "hearth").unwrap();
    let hearth = &brief.room.items[place];
    assert_eq!(hearth.mouth(), [1500.0, 2200.0]);
    let (left, right) = brief.room.mouth_ends(hearth).unwrap();
    let wall = brief.room.wall(hearth.wall).unwrap();
    assert!((left - wall.point_at(1500.0)).norm() < 1e-9 && (right - wall.point_at(2200.0)).norm() < 1e-9);
}

#[test]
fn a_socket_may_be_on_a_breast_and_then_stands_out_with_it() {
    let brief = brief(&with_fire(", opening: 70"));
    let out = |name: &str| {
        let item = brief.room.items.iter().find(|item| item.name == name).unwrap();
        brief.room.stands_out(item)
    };
    assert_eq!((out("mantel socket"), out("hearth")), (400.0, 0.0));
}

#[test]
fn an_opening_lies_within_its_breast() {
    let told = |keys: &str| {
        let faults = faults(&with_fire(keys));
        assert_eq!(faults.len(), 1, "{faults:#?}");
        assert_eq!((faults[0].code, faults[0].item.as_deref()), ("opening_past_breast", Some("hearth")));
        format!("{} {}", faults[0].message, faults[0].remedy)
    };
    for (keys, words) in [
        (", opening: 170", ["170 cm", "160 cm", "10 cm too wide", "whole chimney breast"]),
        (", opening: 70, opening_at: 100", ["170 cm", "160 cm", "10 cm past", "left it out"]),
        (", opening: 158, opening_at: 5", ["163 cm", "160 cm", "3 cm past", "left it out"]),
    ] {
        let told = told(keys).replace("leave it out", "left it out");
        assert!(words.iter().all(|word| told.contains(word)), "{keys}: {told}");
    }
    let faults = faults(&with_fire(", opening_at: 5"));
    assert_eq!((faults.len(), faults[0].code), (1, "missing_key"), "{faults:#?}");
    assert!(faults[0].message.contains("no `opening`"), "{}", faults[0].message);
}
