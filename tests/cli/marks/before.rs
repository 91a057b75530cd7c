//! Marks of what is close before seats and doorways, and of seats that nearly touch.

use super::{NORTH, SOUTH, WEST, clean, cornered, living, only, piece};
use crate::support::judge::room::Doorway;
use crate::support::judge::{Mark, Scene};

/// Both chairs so much nearer the table, and nearer the sofa.
fn nearer(inward: f64, back: f64) -> Scene {
    living().moved("west chair", [inward, -back]).moved("east chair", [-inward, -back])
}

/// 575 mm from chair to table to start with.
#[test]
fn knees_at_the_table() {
    only(Mark::Knees, &nearer(300.0, 0.0));
    clean(&nearer(260.0, 0.0));
}

#[test]
fn knees_at_a_wall() {
    let near = cornered().fixed([2700.0, 1300.0], [2850.0, 2200.0], 400.0);
    only(Mark::Knees, &near);
    clean(&near.moved("armchair", [150.0, 0.0]));
}

/// 25 mm aside and 250 before to start with.
#[test]
fn elbows_of_two_seats() {
    only(Mark::Elbows, &nearer(0.0, 160.0));
    clean(&nearer(0.0, 140.0));
}

#[test]
fn seats_back_to_back_may_touch() {
    let pieces = vec![
        piece("sofa", [3000.0, 2500.0], NORTH, [2100.0, 950.0]),
        piece("armchair", [3000.0, 2490.0], SOUTH, [900.0, 950.0]),
    ];
    let back_to_back = Scene { pieces, ..living() };
    assert!(!back_to_back.has(Mark::Elbows));
    let beside = back_to_back.with("armchair", piece("armchair", [1490.0, 2500.0], NORTH, [900.0, 950.0]));
    assert!(beside.has(Mark::Elbows));
}

#[test]
fn a_fixed_thing_before_the_main_seat() {
    let low = |y: f64| living().fixed([3560.0, y], [3700.0, y + 150.0], 300.0);
    only(Mark::WallBefore, &low(1700.0));
    clean(&low(1950.0));
}

#[test]
fn a_wall_before_the_main_seat() {
    let sofa_alone = |depth: f64| {
        let scene = living();
        let pieces = scene.pieces.into_iter().take(1).collect();
        Scene { pieces, ..living() }.in_room(|room| room.outline = super::block([0.0, 0.0], [6000.0, depth]))
    };
    only(Mark::WallBefore, &sofa_alone(1850.0));
    clean(&sofa_alone(1950.0));
}

#[test]
fn a_piece_across_a_doorway() {
    let books = |y: f64| living().and(piece("bookcase", [5990.0, y], WEST, [800.0, 300.0]));
    only(Mark::AcrossOpening, &books(3400.0));
    clean(&books(4300.0));
}

/// A seat may have its back to a wide opening that nobody keeps in sight, with a walkway of 900 beside it.
#[test]
fn a_free_seat_with_its_back_to_an_open_side() {
    let open = |from: f64, to: f64, may_be_backed: bool| {
        let side =
            Doorway { name: "open side".to_owned(), ends: [[from, 0.0], [to, 0.0]], inward: [0.0, 1.0], may_be_backed };
        living().free().in_room(|room| room.doorways.push(side))
    };
    clean(&open(1000.0, 5000.0, true));
    only(Mark::AcrossOpening, &open(1000.0, 5000.0, false));
    only(Mark::AcrossOpening, &open(1800.0, 4200.0, true));
}
