//! What a plan pays about a fire and before a window: pieces held where they cost it, and where they do not.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::Term;

use crate::support::ranked::{ranked, told_of_first, told_to_the_mm};

/// A room 4.6 m by 4.6 m with what hangs on its north, south and west walls; cm.
fn room([north, south, west]: [&str; 3], rest: &str) -> String {
    format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 460, holds: [{north}] }}\n  - {{ name: east, length: 460 }}\n  \
         - {{ name: south, length: 460, holds: [{south}] }}\n  - {{ name: west, length: 460, holds: [{west}] }}\n{rest}"
    )
}

/// The middle of the hearth is 60 cm further.
fn hearth(at: u32) -> String {
    format!("{{ kind: fireplace, name: hearth, at: {at}, width: 120, depth: 30 }}")
}

const DOOR: &str = "{ kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: out, leads_to: entrance }";

/// Sofas at the west and the east wall: 230 cm from either wall is the middle between their fronts.
#[test]
fn two_sofas_pay_for_a_fire_that_is_not_amid_them() {
    let amid = |fire_at: u32, fireside: u32, of| {
        let pieces = format!(
            "pieces:\n  - {{ kind: sofa, name: one, width: 180, depth: 90, hold: true, place: {{ wall: west, from: 160, off: 5 }} }}\n  \
             - {{ kind: sofa, name: other, width: 180, depth: 90, hold: true, place: {{ wall: east, from: 120, off: 5 }} }}\n\
             wishes: {{ fireside: {fireside} }}\n"
        );
        told_to_the_mm(&room([&hearth(fire_at), DOOR, ""], &pieces), of)
    };
    assert_eq!(amid(170, 4, Term::FireAmid), []);
    assert_eq!(amid(140, 4, Term::FireAmid), [(600.0, 300.0)]);
    assert_eq!(amid(140, 2, Term::FocusAmid), [(120.0, 300.0)]);
}

/// The chair stands before the hearth, or 50 cm beyond its end.
#[test]
fn a_chair_pays_for_its_back_to_the_fire() {
    let back_to = |fire_at: u32, fireside: u32, of| {
        let pieces = format!(
            "pieces:\n  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: south, from: 130, off: 5 }} }}\n  \
             - {{ kind: armchair, width: 80, depth: 80, hold: true, place: {{ at: [230, -130], facing: 270 }} }}\n\
             wishes: {{ fireside: {fireside} }}\n"
        );
        told_to_the_mm(&room([&hearth(fire_at), "", DOOR], &pieces), of)
    };
    assert_eq!(back_to(170, 3, Term::BackToFire), [(1200.0, 0.0)]);
    assert_eq!(back_to(20, 3, Term::BackToFire), []);
    assert_eq!(back_to(170, 4, Term::BackToWishedFire), [(3400.0, 0.0)]);
}

/// The window's middle seven tenths, 140 cm of 200, are to be clear: the unit covers some of them, or ends where they begin.
#[test]
fn a_screen_pays_for_a_window_behind_it() {
    let window = "{ kind: window, name: bay, at: 60, width: 200, sill: 80, head: 210, view: liked, must_reach: false }";
    let before = |from: u32| {
        let pieces = format!(
            "pieces:\n  - {{ kind: sofa, width: 180, depth: 90, name: couch }}\n  \
             - {{ kind: media-unit, width: 120, depth: 40, hold: true, place: {{ wall: south, from: {from}, off: 5 }} }}\n"
        );
        told_to_the_mm(&room(["", window, DOOR], &pieces), Term::BeforeWindow)
    };
    assert_eq!(before(100), [(1250.0, 0.0)]);
    assert_eq!(before(232), []);
}

/// The middle of the unit lies 145 cm beside that of the hearth and of the sofa, and 340 cm before its front: less aside than a
/// head turns 30 degrees for. Who does not mind the fire has the screen before them, or none.
#[test]
fn a_screen_beside_the_fire_pays_little_where_the_sofa_faces_that() {
    let beside = |fireside: u32| {
        let pieces = format!(
            "pieces:\n  - {{ kind: sofa, width: 180, depth: 90, hold: true, place: {{ wall: south, from: 140, off: 5 }} }}\n  \
             - {{ kind: media-unit, width: 100, depth: 40, hold: true, place: {{ wall: north, from: 325, off: 5 }} }}\n\
             wishes: {{ fireside: {fireside} }}\n"
        );
        let hearth = "{ kind: fireplace, name: hearth, at: 170, width: 120, depth: 30, opening: 60, opening_at: 30, keep_clear: 60 }";
        room([hearth, "", DOOR], &pieces)
    };
    let told = told_of_first(&beside(3), Term::ScreenByFocus);
    let [(cost, off)] = told[..] else { panic!("{told:?}") };
    assert!((cost - 652.5).abs() < 1.0 && (off - 1450.0).abs() < 1.0, "{cost} for {off}");
    assert!(ranked(&beside(2)).options.is_empty());
}

/// A unit that stands off a radiator by what that keeps clear, or beside it.
#[test]
fn a_screen_pays_for_a_radiator_behind_it() {
    let over = |radiator_at: u32| {
        let radiator = format!("{{ kind: radiator, at: {radiator_at}, width: 120, depth: 10, height: 60 }}");
        let pieces = "pieces:\n  - { kind: sofa, width: 180, depth: 90, hold: true, place: { wall: south, from: 140, off: 5 } }\n  \
             - { kind: media-unit, width: 100, depth: 40, hold: true, place: { wall: north, from: 180, off: 28 } }\n";
        told_to_the_mm(&room([&radiator, "", DOOR], pieces), Term::OverHeater)
    };
    assert_eq!(over(170), [(600.0, 0.0)]);
    assert_eq!(over(320), []);
}

/// The table stands before the hearth, or in a corner across from it.
#[test]
fn a_dining_table_pays_for_the_place_before_the_fire() {
    let at = |x: i32, y: i32| {
        let pieces = format!(
            "pieces:\n  - {{ kind: sofa, width: 180, depth: 80 }}\n  \
             - {{ kind: dining-table, width: 100, depth: 70, hold: true, place: {{ at: [{x}, {y}], facing: 270 }} }}\n"
        );
        told_of_first(&room([&hearth(170), "", DOOR], &pieces), Term::DiningAtFire)
    };
    assert_eq!(at(230, -150), [(1200.0, 0.0)]);
    assert_eq!(at(380, -300), []);
}
