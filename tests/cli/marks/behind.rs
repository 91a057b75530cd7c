//! Marks of what is behind seats, and at their ends.

use super::{NORTH, block, clean, cornered, living, only, piece};
use crate::support::checker::plane::P;
use crate::support::judge::room::Doorway;
use crate::support::judge::standing::Standing;
use crate::support::judge::{Mark, Scene};

/// A stretch of the south wall behind the sofa.
const BEHIND: [P; 2] = [[2600.0, 0.0], [3400.0, 0.0]];

fn with_door_behind(scene: Scene) -> Scene {
    let door = Doorway { name: "back door".to_owned(), ends: BEHIND, inward: [0.0, 1.0], may_be_backed: false };
    scene.in_room(|room| room.doorways.push(door))
}

fn with_window_behind(scene: Scene) -> Scene {
    scene.in_room(|room| room.windows.push(BEHIND))
}

/// 50 mm from the wall to start with: 600, and 1050.
#[test]
fn a_main_seat_free_near_a_wall_for_no_reason() {
    only(Mark::FreeByWall, &living().free().moved_out(550.0));
    clean(&living().free().moved_out(1000.0));
    clean(&living().free());
    clean(&living().moved_out(550.0));
}

#[test]
fn a_reason_to_stand_free() {
    let free = || living().free().moved_out(550.0);
    clean(&with_door_behind(free()));
    clean(&with_window_behind(free()));
    clean(&free().and(piece("sideboard", [3000.0, 10.0], NORTH, [1500.0, 300.0])));
    // A window further along the wall is none.
    only(Mark::FreeByWall, &free().in_room(|room| room.windows.push([[200.0, 0.0], [1200.0, 0.0]])));
}

/// 300 mm behind, and 500.
#[test]
fn a_slot_behind_a_seat() {
    only(Mark::Slot, &living().moved_out(250.0));
    clean(&living().moved_out(450.0));
    clean(&living().moved_out(90.0));
}

#[test]
fn a_slot_that_is_explained() {
    let slot = || living().moved_out(250.0);
    clean(&with_window_behind(slot()));
    clean(&slot().in_room(|room| room.heaters.push(block([2600.0, 0.0], [3400.0, 110.0]))));
    clean(&slot().and(piece("console", [3000.0, 10.0], NORTH, [1400.0, 280.0])));
    only(Mark::Slot, &slot().and(piece("console", [3000.0, 10.0], NORTH, [800.0, 280.0])));
    assert!(with_door_behind(slot()).has(Mark::Slot));
}

#[test]
fn a_slot_behind_a_return() {
    let off = |by: f64| {
        let all = ["corner-sofa", "coffee-table", "media-unit", "armchair", "floor-lamp"];
        all.into_iter().fold(cornered(), |scene, name| scene.moved(name, [by, 0.0]))
    };
    only(Mark::Slot, &off(250.0));
    clean(&off(450.0));
    // A chaise has no back there.
    let mut chaise = off(250.0);
    chaise.pieces[0].chaise = true;
    clean(&chaise);
}

/// 60 mm from the sofa's end to start with: 260, and 160.
#[test]
fn a_lamp_away_from_every_end() {
    only(Mark::AwayFromEnds, &living().moved("floor-lamp", [-200.0, 0.0]));
    clean(&living().moved("floor-lamp", [-100.0, 0.0]));
    only(Mark::AwayFromEnds, &cornered().moved("floor-lamp", [0.0, 250.0]));
}

#[test]
fn two_lamps_at_one_end() {
    let second = |x: f64, y: f64| {
        let lamp = piece("floor-lamp", [x, y], NORTH, [350.0, 350.0]);
        living().and(Standing { name: "second lamp".to_owned(), ..lamp })
    };
    only(Mark::TwoAtOneEnd, &second(1715.0, 710.0));
    // At the other end beside the side table, which is of another kind.
    clean(&second(4285.0, 810.0));
}
