//! What is told to be free along a wall.

use elbowroom_model::{ItemId, PieceKind};
use elbowroom_solver::arrangement::{NoRoomAt, Obstacle};

use super::of;
use super::plan::{brief, fire, piece, rectangle, room, window};

/// A breast of 1400 from 1250 to 2650 on a wall of 3910: a sofa may stand before it, a foot off the wall, and is told of what a
/// tape finds beside it.
#[test]
fn what_is_told_to_be_free_beside_a_breast_is_what_a_tape_finds() {
    let mut plan = rectangle(3910.0, 4000.0);
    plan.items.push(fire("gas fire", 0, 1250.0, 1400.0));
    let wide = piece("sofa", PieceKind::Sofa, (1900.0, 2200.0), (850.0, 950.0));
    let found = of(&brief(plan, vec![wide]));
    let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "top").unwrap();
    let NoRoomAt::Along { free, beside, .. } = dropped.reason.place else { panic!("{dropped:?}") };
    assert!((free - 1260.0).abs() < 1e-6 && beside == Some(Obstacle::Item(ItemId(0))), "{dropped:?}");
    assert!(dropped.reason.has >= free);
}

/// An outside corner at the right end of `top`, 2 m long, whose window belongs to the wall beyond: none of it ends what is free.
#[test]
fn what_lies_on_another_wall_ends_no_stretch_that_it_does_not_reach() {
    let corners = [(0.0, 0.0), (2000.0, 0.0), (3000.0, 1000.0), (6000.0, 1000.0), (6000.0, -5000.0), (0.0, -5000.0)];
    let mut plan = room(&corners, &["top", "cant", "bay", "east", "south", "west"]);
    plan.items.push(window("sash", 1, 100.0, 1200.0, 450.0));
    let mut wide = piece("shelves", PieceKind::Sofa, (2600.0, 2900.0), (350.0, 950.0));
    wide.height = 1800.0;
    let found = of(&brief(plan, vec![wide]));
    let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "top").unwrap();
    let NoRoomAt::Along { free, beside, .. } = dropped.reason.place else { panic!("{dropped:?}") };
    assert!((free - 2000.0).abs() < 1e-6 && beside.is_none(), "{dropped:?}");
}
