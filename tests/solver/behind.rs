//! What a plan pays for floor behind a sofa that stands free: pieces held where it is lost, and where people dine or work on it.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::Term;

use crate::support::ranked::told_of_first;

/// A room 7 m by 4 m, with a sofa that looks east, its back 3 m from the west wall and 2 m wide; cm. Nobody passes behind it.
fn lost(fixed: &str, piece: &str) -> Vec<(f64, f64)> {
    let door = "{ kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: out, leads_to: entrance }";
    let room = format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 700 }}\n  - {{ name: east, length: 400, holds: [{door}] }}\n  \
         - {{ name: south, length: 700 }}\n  - {{ name: west, length: 400 }}\n{fixed}pieces:\n  \
         - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ at: [300, -200], facing: 0 }} }}\n{piece}"
    );
    told_of_first(&room, Term::FloorBehind)
}

fn near(told: &[(f64, f64)], cost: f64) {
    let [(paid, _)] = told else { panic!("{told:?}") };
    assert!((paid - cost).abs() < 5.0, "{told:?}, {cost} by hand");
}

/// 3 m by 2 m at a thousandth of a square millimetre.
#[test]
fn a_free_sofa_pays_for_the_floor_behind_it() {
    near(&lost("", ""), 6000.0);
}

/// A table there makes it a place of its own; one before the sofa leaves it lost.
#[test]
fn nothing_is_lost_where_people_dine_behind_the_sofa() {
    let dining = |x: u32| {
        format!(
            "  - {{ kind: dining-table, width: 120, depth: 75, hold: true, place: {{ at: [{x}, -200], facing: 0 }} }}\n"
        )
    };
    assert_eq!(lost("", &dining(110)), []);
    near(&lost("", &dining(540)), 6000.0);
}

/// The counter is 60 cm deep and who works at it has 90 cm: 150 cm of floor are left.
#[test]
fn floor_before_a_counter_is_not_lost() {
    let counter =
        "fixed: [{ kind: counter, name: kitchen, corners: [[0, 0], [60, 0], [60, -400], [0, -400]], use: 90 }]\n";
    near(&lost(counter, ""), 3000.0);
}
