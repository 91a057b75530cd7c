//! Room for legs and elbows, what is before a front, a table on its axis.

use elbowroom_model::{Brief, Clearance, Hand, PieceKind};

use super::super::{NORTH, SOUTH, corner, placed};
use super::{PAST, edge, holds};
use crate::support::rooms::{Furnish, piece, rectangle};

/// Panero and Zelnik 1979, from memory: 12 in at least.
const LEGS: f64 = 304.8;

fn with_legs(kinds: &[PieceKind]) -> Brief {
    let room = rectangle(5000.0, 4000.0).rule(Clearance::LegRoom, LEGS);
    kinds.iter().fold(room, |brief, kind| brief.piece(piece(*kind)))
}

#[test]
fn legs_have_room_before_a_seat() {
    let brief = with_legs(&[PieceKind::Sofa, PieceKind::SideTable]);
    let at = |x: f64, y: f64| {
        vec![placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)), placed(1, (x, y), SOUTH, (400.0, 400.0))]
    };
    edge("leg_room", &brief, -1000.0 - LEGS, -1000.0 - LEGS + PAST, |y| at(2500.0, y));
    // The main seat's front less 100 mm at each end.
    edge("leg_room", &brief, 3600.0, 3600.0 - PAST, |x| at(x, -1050.0));
    edge("leg_room", &brief, 1400.0, 1400.0 + PAST, |x| at(x, -1050.0));
    // Rugs and open floor lie flat, and legs go up on a pouf (common practice).
    for kind in [PieceKind::Rug, PieceKind::OpenFloor, PieceKind::Pouf, PieceKind::FloorCushion] {
        holds(&with_legs(&[PieceKind::Sofa, kind]), at(2500.0, -1050.0));
    }
}

#[test]
fn legs_have_room_over_the_whole_width_of_a_second_seat() {
    let brief = with_legs(&[PieceKind::Sofa, PieceKind::Armchair, PieceKind::SideTable]);
    edge("leg_room", &brief, 3850.0, 3850.0 + PAST, |x| {
        vec![
            placed(0, (1500.0, -100.0), SOUTH, (2000.0, 900.0)),
            placed(1, (4500.0, -3500.0), NORTH, (900.0, 900.0)),
            placed(2, (x, -2150.0), SOUTH, (400.0, 400.0)),
        ]
    });
}

#[test]
fn legs_have_room_before_a_return() {
    let brief = with_legs(&[PieceKind::CornerSofa, PieceKind::SideTable]);
    edge("leg_room", &brief, 900.0 + LEGS, 900.0 + LEGS - PAST, |x| {
        let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0);
        vec![sofa, placed(1, (x + 200.0, -1500.0), SOUTH, (400.0, 400.0))]
    });
}

#[test]
fn the_table_of_the_main_seat_keeps_its_own_place() {
    let brief = with_legs(&[PieceKind::Sofa, PieceKind::CoffeeTable]).rule(Clearance::SeatToTable, 250.0);
    let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
    holds(&brief, vec![sofa, placed(1, (2500.0, -1250.0), SOUTH, (1000.0, 600.0))]);
}

#[test]
fn an_armchair_drawn_up_to_that_table_has_room_for_legs() {
    let brief = with_legs(&[PieceKind::Sofa, PieceKind::CoffeeTable, PieceKind::Armchair]);
    let brief = brief.rule(Clearance::SeatToTable, 400.0);
    edge("leg_room", &brief, -2000.0 - LEGS, -2000.0 - LEGS + PAST, |front| {
        vec![
            placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)),
            placed(1, (2500.0, -1400.0), SOUTH, (1000.0, 600.0)),
            placed(2, (2500.0, front - 900.0), NORTH, (900.0, 900.0)),
        ]
    });
}

#[test]
fn no_wall_is_close_before_a_front() {
    // Common practice, no source: 900 mm before the main seat, half of it before others.
    let brief = rectangle(5000.0, 4000.0).rule(Clearance::FrontOpen, 900.0).piece(piece(PieceKind::Sofa));
    let at = |x: f64, y: f64| vec![placed(0, (x, y), SOUTH, (2000.0, 900.0))];
    edge("front_open", &brief, -2200.0, -2200.0 - PAST, |y| at(2500.0, y));
    let post = [(1400.0, -2400.0), (1600.0, -2400.0), (1600.0, -2200.0), (1400.0, -2200.0)];
    edge("front_open", &brief.clone().fixed("post", &post), 2500.0, 2500.0 - PAST, |x| at(x, -1000.0));
    edge("front_open", &brief.piece(piece(PieceKind::Armchair)), -2650.0, -2650.0 - PAST, |y| {
        vec![placed(0, (1500.0, -100.0), SOUTH, (2000.0, 900.0)), placed(1, (4000.0, y), SOUTH, (900.0, 900.0))]
    });
}

#[test]
fn the_front_of_a_corner_sofa_is_that_of_its_bay() {
    // A post before the return's end is none before the bay.
    let post = |x: f64| [(x - 200.0, -2400.0), (x, -2400.0), (x, -2100.0), (x - 200.0, -2100.0)];
    let brief = |x: f64| {
        let room = rectangle(5000.0, 4000.0).rule(Clearance::FrontOpen, 1300.0).piece(piece(PieceKind::CornerSofa));
        room.fixed("post", &post(x))
    };
    let sofa = || vec![corner(placed(0, (0.0, 0.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0)];
    holds(&brief(1000.0), sofa());
    super::breaks("front_open", &brief(1000.0 + PAST), sofa());
}

#[test]
fn two_seats_leave_room_for_an_arm() {
    // Common practice, no source: 150 mm.
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::BetweenSeats, 150.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::Armchair));
    edge("between_seats", &brief, 3100.0, 3100.0 - PAST, |x| {
        vec![placed(0, (1500.0, -100.0), SOUTH, (2000.0, 900.0)), placed(1, (x, -100.0), SOUTH, (900.0, 900.0))]
    });
    let back_to_back =
        vec![placed(0, (2500.0, -2000.0), SOUTH, (2000.0, 900.0)), placed(1, (2500.0, -1990.0), NORTH, (900.0, 900.0))];
    holds(&brief, back_to_back);
}

#[test]
fn a_table_lies_before_the_middle_of_its_seat() {
    // Common practice, no source: 100 mm.
    let brief = rectangle(5000.0, 4000.0).rule(Clearance::SeatToTable, 400.0).rule(Clearance::TableAxis, 100.0);
    let before_sofa = brief.clone().piece(piece(PieceKind::Sofa)).piece(piece(PieceKind::CoffeeTable));
    for side in [-1.0, 1.0] {
        edge("table_axis", &before_sofa, 100.0, 100.0 + PAST, |off| {
            let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
            vec![sofa, placed(1, (2500.0 + side * off, -1400.0), SOUTH, (1000.0, 600.0))]
        });
    }
    // A bay of 800: the least table, 600 wide and 400 off the return, has its middle 300 off; and 50 more.
    let mut table = piece(PieceKind::CoffeeTable);
    table.width.least = 600.0;
    edge("table_axis", &brief.piece(piece(PieceKind::CornerSofa)).piece(table), 350.0, 350.0 + PAST, |off| {
        let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (1700.0, 900.0)), Hand::Right, 2000.0);
        vec![sofa, placed(1, (1300.0 + off, -1300.0), SOUTH, (600.0, 600.0))]
    });
}
