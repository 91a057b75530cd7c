//! Marks of the group as a whole.

use super::{EAST, SOUTH, clean, living, only, piece};
use crate::support::judge::{Mark, Scene};

#[test]
fn two_chairs_neither_mirrored_nor_centred() {
    only(Mark::PairAskew, &living().moved("west chair", [0.0, 120.0]));
    clean(&living().moved("west chair", [0.0, 90.0]));
    only(Mark::PairAskew, &living().moved("west chair", [-110.0, 0.0]));
}

/// Side by side opposite the sofa, and one behind the other at the table's side.
#[test]
fn two_chairs_centred_together() {
    let opposite = |aside: f64| {
        let chair = |x: f64| piece("armchair", [x + aside, 3400.0], SOUTH, [900.0, 950.0]);
        living().with("west chair", chair(2400.0)).with("east chair", chair(3600.0))
    };
    assert!(!opposite(140.0).has(Mark::PairAskew));
    assert!(opposite(160.0).has(Mark::PairAskew));
    let at_the_side = |along: f64| {
        let chair = |y: f64| piece("armchair", [700.0, y + along], EAST, [900.0, 950.0]);
        living().with("west chair", chair(1150.0)).with("east chair", chair(2250.0))
    };
    assert!(!at_the_side(140.0).has(Mark::PairAskew));
    assert!(at_the_side(160.0).has(Mark::PairAskew));
}

/// 2500 mm from head to head to start with, and 3048 at most.
#[test]
fn a_group_too_wide_to_talk() {
    let wider = |by: f64| living().moved("west chair", [-by, 0.0]).moved("east chair", [by, 0.0]);
    only(Mark::GroupWide, &wider(400.0));
    clean(&wider(250.0));
}

#[test]
fn a_seat_turned_from_the_group() {
    let chair = |scene: Scene, degrees: f64, back: [f64; 2]| {
        scene.with("east chair", piece("armchair", back, degrees, [900.0, 950.0]))
    };
    assert!(chair(living(), EAST, [4075.0, 1700.0]).has(Mark::TurnedAway));
    // Looking along the sofa's front, the table at its right hand: 90 degrees; further north 63.
    assert!(chair(living(), SOUTH, [4550.0, 2175.0]).has(Mark::TurnedAway));
    assert!(!chair(living(), SOUTH, [4550.0, 2975.0]).has(Mark::TurnedAway));
}
