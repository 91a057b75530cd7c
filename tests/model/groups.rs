//! Pieces that make a group of their own.

use elbowroom_model::{Brief, Clearance, Fault, scenario};

fn read(rows: &str) -> Result<Brief, Vec<Fault>> {
    let walls = "units: cm\nwalls:\n  - { length: 500, holds: [{ kind: door, at: 20, width: 83, swings: slides, leads_to: entrance }] }\n  - { length: 400 }\n  - { length: 500 }\n  - { length: 400 }\n";
    scenario::read(&format!("{walls}pieces:\n{rows}"), None)
}

/// The group and the seats of each piece.
fn groups(rows: &str) -> Vec<(String, Option<String>, Vec<String>)> {
    read(rows).unwrap().pieces.into_iter().map(|piece| (piece.name, piece.group, piece.at)).collect()
}

const SOFA: &str = "  - { kind: sofa }\n";

#[test]
fn what_is_of_a_group_stands_at_its_seats() {
    let rows = "  - { kind: armchair, name: reader, count: 2, group: reading }\n  - { kind: floor-lamp, group: reading }\n  \
                - { kind: side-table, at: reader 2 }\n  - { kind: floor-lamp, name: main lamp }\n";
    let found = groups(&format!("{SOFA}{rows}"));
    let of = |name: &str| {
        found.iter().find(|(other, ..)| other == name).map(|(_, group, at)| (group.as_deref(), at.clone()))
    };
    let readers = || vec!["reader 1".to_owned(), "reader 2".to_owned()];
    assert_eq!(of("sofa"), Some((None, Vec::new())));
    assert_eq!(of("reader 2"), Some((Some("reading"), Vec::new())));
    assert_eq!(of("floor lamp"), Some((Some("reading"), readers())));
    assert_eq!(of("side table"), Some((Some("reading"), vec!["reader 2".to_owned()])), "it goes with its seat");
    assert_eq!(of("main lamp"), Some((None, Vec::new())));
}

#[test]
fn room_between_groups_is_asked_only_where_there_are_several() {
    let asks = |rows: &str| read(rows).unwrap().asks(Clearance::BetweenGroups);
    assert!(!asks(SOFA));
    assert!(asks(&format!("{SOFA}  - {{ kind: armchair, group: reading }}\n")));
}

#[test]
fn a_group_has_a_seat_and_so_has_the_main_one() {
    let told = |rows: &str| {
        let fault = read(rows).unwrap_err().remove(0);
        (fault.code, fault.place.map(|place| place.line), fault.remedy)
    };
    let (code, line, remedy) = told(&format!("{SOFA}  - {{ kind: floor-lamp, group: reading }}\n"));
    assert_eq!((code, line), ("group_without_seat", Some(9)));
    assert!(remedy.contains("`group: reading`"), "{remedy}");
    let (code, _, remedy) = told("  - { kind: sofa, group: reading }\n");
    assert_eq!(code, "no_seat");
    assert!(remedy.contains("Leave `group` out"), "{remedy}");
    for kind in ["bookcase", "media-unit", "corner-sofa", "rug"] {
        let (code, line, _) =
            told(&format!("{SOFA}  - {{ kind: {kind}, group: reading }}\n  - {{ kind: armchair, group: reading }}\n"));
        assert_eq!((code, line), ("key_of_another_kind", Some(9)), "{kind}");
    }
    let other =
        "  - { kind: armchair, name: reader, group: reading }\n  - { kind: floor-lamp, group: reading, at: sofa }\n";
    assert_eq!(told(&format!("{SOFA}{other}")).0, "unknown_seat");
    assert_eq!(told(&format!("{SOFA}  - {{ kind: armchair, group: ' ' }}\n")).0, "control_character");
}
