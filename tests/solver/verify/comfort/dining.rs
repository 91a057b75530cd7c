//! Places at a dining table: 24 in each (Panero and Zelnik 1979, published), here 600 mm; behind them what HUD 1973 prints, 32 in
//! (published), here 800 mm.

use elbowroom_model::{Brief, Clearance, Door, Hinge, ItemKind, LeadsTo, PieceKind, Swings};

use super::super::{SOUTH, at_wall, placed};
use super::{PAST, breaks, edge, holds};
use crate::support::rooms::{Furnish, piece, rectangle};

/// A room with a table that is to seat so many.
fn to_seat(seats: u32) -> Brief {
    let mut table = piece(PieceKind::DiningTable);
    table.seats = Some(seats);
    rectangle(6000.0, 5000.0).rule(Clearance::DiningPlaces, 600.0).rule(Clearance::DiningChair, 800.0).piece(table)
}

/// The table free in the room, its left end so far from the west wall.
fn free(left: f64, width: f64) -> Vec<elbowroom_solver::Placed> {
    vec![placed(0, (left + width / 2.0, -2000.0), SOUTH, (width, 900.0))]
}

#[test]
fn a_table_has_a_place_of_600_for_each() {
    // Two at each long side and one at each end: 1200 (D).
    edge("dining_places", &to_seat(6), 1200.0, 1200.0 - PAST, |width| free(1500.0, width));
    // Three at each long side: the ends are not used.
    edge("dining_places", &to_seat(6), 1800.0, 1800.0 - PAST, |width| free(100.0, width));
    edge("dining_places", &to_seat(8), 1800.0, 1800.0 - PAST, |width| free(1500.0, width));
}

#[test]
fn a_chair_has_room_behind_it_at_each_end_that_is_used() {
    edge("dining_places", &to_seat(6), 800.0, 800.0 - PAST, |left| free(left, 1500.0));
    holds(&to_seat(4), free(100.0, 1500.0));
    let beside = to_seat(6).piece(piece(PieceKind::Sofa));
    edge("dining_places", &beside, 800.0, 800.0 - PAST, |off| {
        let mut stands = free(1500.0, 1500.0);
        stands.push(placed(1, (3000.0 + off + 500.0, -2100.0), SOUTH, (1000.0, 700.0)));
        stands
    });
    holds(&to_seat(6).piece(piece(PieceKind::Rug)), {
        let mut stands = free(1500.0, 1500.0);
        stands.push(placed(1, (3000.0, -1800.0), SOUTH, (2000.0, 1500.0)));
        stands
    });
}

#[test]
fn a_leaf_swings_clear_of_the_chair_at_an_end() {
    let door = ItemKind::Door(Door {
        hinge: Some(Hinge::Left),
        swings: Swings::In,
        opens_to: None,
        leads_to: LeadsTo::Space("hall".to_owned()),
    });
    // Hinged on the west wall at 2000 from its left end, the leaf comes 800 out, level with the end of the table.
    let brief = to_seat(6).item("door", 3, 2100.0, 800.0, door);
    breaks("dining_places", &brief, free(1500.0, 1500.0));
    holds(&brief, free(1700.0, 1500.0));
}

#[test]
fn a_table_at_a_wall_has_one_long_side() {
    let at = |width: f64| vec![at_wall(placed(0, (3000.0, 0.0), SOUTH, (width, 900.0)), 0)];
    edge("dining_places", &to_seat(4), 1200.0, 1200.0 - PAST, at);
    breaks("dining_places", &to_seat(6), at(1500.0));
}

#[test]
fn the_long_sides_of_a_deep_table_are_its_ends() {
    let at = |depth: f64| vec![at_wall(placed(0, (3000.0, 0.0), SOUTH, (900.0, depth)), 0)];
    // Two at each side, one at the end that is at no wall.
    edge("dining_places", &to_seat(5), 1200.0, 1200.0 - PAST, at);
    breaks("dining_places", &to_seat(6), at(1500.0));
    holds(&to_seat(6), at(1800.0));
}

#[test]
fn a_table_of_which_nobody_says_how_many_it_seats_has_as_many_as_it_has() {
    let mut brief = to_seat(6);
    brief.pieces[0].seats = None;
    holds(&brief, free(100.0, 1000.0));
}
