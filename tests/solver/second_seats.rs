//! What the plan of a second seat opposite pays off the axis of the main one.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::Term;

use crate::support::ranked::told_to_the_mm;

/// What is off, in whole centimetres, in a room 5.6 m by 4.6 m with these pieces; the search lets what is held stand by half a
/// millimetre. Each millimetre costs 1.5.
fn told(opposite: &str, of: Term) -> Vec<f64> {
    let room = format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 560 }}\n  - {{ name: east, length: 460 }}\n  \
         - {{ name: south, length: 560 }}\n  - {{ name: west, length: 460, holds: [{{ kind: door, name: hall door, at: 370, width: 83, \
         swings: slides, leads_to: entrance }}] }}\npieces:\n{opposite}"
    );
    let told = told_to_the_mm(&room, of);
    assert!(told.iter().all(|(cost, off)| (cost - 1.5 * off).abs() < 1.0), "{told:?}");
    told.into_iter().map(|(_, off)| (off / 10.0).round()).collect()
}

const SOFA: &str = "width: 200, depth: 90, hold: true, place: { at: [280, -455], facing: 90 }";

/// The other sofa of a row stands 20 cm off the axis: nobody shares the place with it.
#[test]
fn the_other_of_two_sofas_has_the_axis_alone() {
    let other = |x: u32| {
        let rows = format!(
            "  - {{ kind: sofa, {SOFA} }}\n  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ at: [{x}, -100], facing: 270 }} }}\n"
        );
        told(&rows, Term::OppositeAside)
    };
    assert_eq!(other(280), [0.0; 0]);
    assert_eq!(other(300), [20.0]);
}

/// Two chairs opposite share the axis: the middle of the pair lies on it.
#[test]
fn a_pair_opposite_pays_for_its_middle_and_not_for_each() {
    let chair = |name: &str, x: u32| {
        format!(
            "  - {{ kind: armchair, name: {name}, width: 80, depth: 80, hold: true, place: {{ at: [{x}, -100], facing: 270 }} }}\n"
        )
    };
    let rows = format!("  - {{ kind: sofa, {SOFA} }}\n{}{}", chair("one", 230), chair("other", 330));
    assert_eq!(told(&rows, Term::OppositeAside), [0.0; 0]);
    assert_eq!(told(&rows, Term::PairAside), [0.0; 0]);
    let alone = format!("  - {{ kind: sofa, {SOFA} }}\n{}", chair("one", 230));
    assert_eq!(told(&alone, Term::OppositeAside), [50.0]);
}
