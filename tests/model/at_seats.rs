//! Which seats lamps and side tables stand at.

use elbowroom_model::{Brief, Fault, scenario};

fn read(rows: &str) -> Result<Brief, Vec<Fault>> {
    let walls = "units: cm\nwalls:\n  - { length: 500, holds: [{ kind: door, at: 20, width: 83, swings: slides, leads_to: entrance }] }\n  - { length: 400 }\n  - { length: 500 }\n  - { length: 400 }\n";
    scenario::read(&format!("{walls}pieces:\n  - {{ kind: sofa }}\n  - {{ kind: armchair, count: 2 }}\n{rows}"), None)
}

/// The seats that the last piece stands at.
fn seats(row: &str) -> Vec<String> {
    read(row).unwrap().pieces.last().unwrap().at.clone()
}

#[test]
fn a_lamp_stands_at_the_seat_of_its_name_or_at_those_of_a_kind() {
    assert_eq!(seats("  - { kind: floor-lamp, at: sofa }\n"), ["sofa"]);
    assert_eq!(seats("  - { kind: side-table, at: armchair }\n"), ["armchair 1", "armchair 2"]);
    assert_eq!(seats("  - { kind: floor-lamp, at: armchair 2 }\n"), ["armchair 2"]);
    assert!(seats("  - { kind: floor-lamp }\n").is_empty());
    // A row with a name of its own is as good as a kind.
    let recliners = "  - { kind: armchair, name: recliner, count: 2 }\n";
    let of_row = seats(&format!("{recliners}  - {{ kind: side-table, at: recliner }}\n"));
    assert_eq!(of_row, ["recliner 1", "recliner 2"]);
    // Each of a pair.
    let pair = read("  - { kind: floor-lamp, count: 2, at: sofa }\n").unwrap();
    assert!(pair.pieces.iter().rev().take(2).all(|lamp| lamp.at == ["sofa"]));
}

#[test]
fn a_seat_that_is_not_there_is_told_with_the_one_that_was_meant() {
    let faults = read("  - { kind: floor-lamp, at: soffa }\n").unwrap_err();
    assert_eq!(faults[0].code, "unknown_seat");
    assert_eq!(faults[0].remedy, "Did you mean `sofa`?");
    let faults = read("  - { kind: floor-lamp, at: stove }\n").unwrap_err();
    assert_eq!(faults[0].remedy, "The seats are sofa, armchair 1, armchair 2.");
}

/// One fault is told once: the seat is there, and what is wrong with it is told of it.
#[test]
fn a_seat_with_a_fault_of_its_own_is_not_told_to_be_missing() {
    let codes = |rows: &str| read(rows).unwrap_err().into_iter().map(|fault| fault.code).collect::<Vec<_>>();
    let faulty = "  - { kind: day-bed, width: 180-220 }\n";
    assert_eq!(codes(&format!("{faulty}  - {{ kind: floor-lamp, at: day-bed }}\n")), ["not_a_length"]);
    let named = "  - { kind: day-bed, name: lounger, width: 180-220 }\n";
    assert_eq!(codes(&format!("{named}  - {{ kind: floor-lamp, at: lounger }}\n")), ["not_a_length"]);
    assert_eq!(codes(&format!("{faulty}  - {{ kind: floor-lamp, at: stove }}\n")), ["not_a_length", "unknown_seat"]);
}

#[test]
fn what_stands_at_no_seats_end_belongs_to_none() {
    let faults = read("  - { kind: bookcase, at: sofa }\n").unwrap_err();
    assert_eq!(faults[0].code, "key_of_another_kind");
}

#[test]
fn what_stands_at_seats_that_may_be_left_out_may_be_left_out_with_them() {
    let rows = "  - { kind: armchair, name: reader, needed: false }\n  - { kind: floor-lamp, at: reader }\n";
    let brief = read(rows).unwrap();
    assert!(!brief.pieces.last().unwrap().needed);
    let told = brief.notices.iter().filter(|notice| notice.text.contains("floor lamp stands at reader")).count();
    assert_eq!(told, 1, "{:?}", brief.notices);
    // One of the seats that it may stand at must stand.
    let with_armchairs = read("  - { kind: floor-lamp, at: armchair }\n").unwrap();
    assert!(with_armchairs.pieces.last().unwrap().needed);
}
