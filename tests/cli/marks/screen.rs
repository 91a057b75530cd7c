//! Marks of seat and screen.

use super::{EAST, SOUTH, clean, cornered, living, only, piece};
use crate::support::judge::{Mark, Scene};

#[test]
fn a_screen_off_the_axis() {
    only(Mark::ScreenOffAxis, &living().moved("media-unit", [160.0, 0.0]));
    clean(&living().moved("media-unit", [140.0, 0.0]));
    // Of a corner sofa the axis is the bay's, not the whole width's.
    only(Mark::ScreenOffAxis, &cornered().moved("media-unit", [-500.0, 0.0]));
}

/// The screen on the west wall, so far north.
fn beside(north: f64) -> Scene {
    let screen = piece("media-unit", [50.0, north], EAST, [1600.0, 450.0]);
    living().without("west chair").without("east chair").with("media-unit", screen)
}

/// 2725 mm aside: 54 degrees at 2000 mm ahead, 42 at 3000.
#[test]
fn a_head_turned_too_far() {
    only(Mark::HeadTurn, &beside(3000.0));
    clean(&beside(4000.0));
}

/// From the return one looks east: what the main run must turn to, it sees.
#[test]
fn a_head_on_the_return_turns_less() {
    let screen = piece("media-unit", [5950.0, 1900.0], super::WEST, [1600.0, 450.0]);
    clean(&cornered().without("armchair").with("media-unit", screen.clone()));
    let straight = living().without("west chair").without("east chair");
    assert!(straight.with("media-unit", screen).has(Mark::HeadTurn));
}

#[test]
fn a_piece_between_seat_and_screen() {
    let books = |x: f64| piece("bookcase", [x, 2600.0], SOUTH, [800.0, 300.0]);
    only(Mark::Between, &living().and(books(3400.0)));
    clean(&living().and(books(4200.0)));
    // Near the unit it is no longer in the way, and a low table never is.
    clean(&living().and(books(3400.0)).moved("bookcase", [0.0, 1450.0]));
    let low = piece("side-table", [3000.0, 2700.0], SOUTH, [450.0, 450.0]);
    assert!(!living().and(low).has(Mark::Between));
}

#[test]
fn a_counter_between_seat_and_screen() {
    let counter = |height: f64| living().fixed([2900.0, 2500.0], [3100.0, 2700.0], height);
    only(Mark::Between, &counter(900.0));
    only(Mark::Between, &counter(f64::INFINITY));
    clean(&counter(500.0));
}

#[test]
fn a_wall_between_seat_and_screen() {
    let pier = |x: f64| {
        let north = [[x + 300.0, 5000.0], [x + 300.0, 3600.0], [x, 3600.0], [x, 5000.0]];
        living().in_room(|room| {
            let (south, corner) = (room.outline[..3].to_vec(), room.outline[3]);
            room.outline = south.into_iter().chain(north).chain([corner]).collect();
        })
    };
    only(Mark::Between, &pier(3300.0));
    clean(&pier(3700.0));
}

/// A screen that is looked at sideways has the same right to be seen.
#[test]
fn a_piece_between_seat_and_a_screen_beside_it() {
    let books = piece("bookcase", [1600.0, 2700.0], SOUTH, [800.0, 300.0]);
    only(Mark::Between, &beside(4000.0).and(books.clone()));
    clean(&beside(4000.0).and(books).moved("bookcase", [3000.0, 0.0]));
}
