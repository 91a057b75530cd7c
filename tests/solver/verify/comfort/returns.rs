//! A return with a depth of its own, and a second one: each is kept from as the first is.

use elbowroom_model::{Brief, Clearance, Hand, Piece, PieceKind};
use elbowroom_solver::{Placed, Size};

use super::super::{SOUTH, corner, placed};
use super::{PAST, edge};
use crate::support::rooms::{Furnish, piece, rectangle};

/// A U at the top wall of 5 x 4 m: 3000 wide, 900 deep, its `return` on the sitter's right, 1200 deep and 2000 long, the second
/// one 1800 long.
fn brief(with: PieceKind) -> Brief {
    let range = piece(PieceKind::CornerSofa).return_length;
    let sofa = Piece { second_return: range, return_depth: range, ..piece(PieceKind::CornerSofa) };
    rectangle(5000.0, 4000.0).piece(sofa).piece(piece(with))
}

fn sofa(left: f64) -> Placed {
    let sofa = corner(placed(0, (left, 0.0), SOUTH, (3000.0, 900.0)), Hand::Right, 2000.0);
    Placed { size: Size { second_return: Some(1800.0), return_depth: Some(1200.0), ..sofa.size }, ..sofa }
}

#[test]
fn legs_have_room_before_each_return() {
    let brief = brief(PieceKind::SideTable).rule(Clearance::LegRoom, 250.0);
    let at = |x: f64| vec![sofa(0.0), placed(1, (x, -1550.0), SOUTH, (400.0, 200.0))];
    // The bay lies from 1200 to 2100.
    edge("leg_room", &brief, 1650.0, 1650.0 - PAST, at);
    edge("leg_room", &brief, 1650.0, 1650.0 + PAST, at);
}

#[test]
fn each_return_keeps_the_gap_of_a_seat_off_its_wall() {
    let mut brief = brief(PieceKind::SideTable);
    brief.pieces[0].off_wall = 60.0;
    let at = |left: f64| {
        let sofa = sofa(left);
        let anchor = sofa.anchor + SOUTH * 60.0;
        vec![Placed { anchor, ..sofa }, placed(1, (2500.0, -3700.0), SOUTH, (200.0, 200.0))]
    };
    edge("return_off_wall", &brief, 60.0, 60.0 - PAST, at);
    edge("return_off_wall", &brief, 1940.0, 1940.0 + PAST, at);
}

#[test]
fn a_table_lies_on_the_axis_of_the_bay() {
    let brief = brief(PieceKind::CoffeeTable).rule(Clearance::TableAxis, 100.0);
    let at = |x: f64| vec![sofa(0.0), placed(1, (x, -900.0), SOUTH, (200.0, 600.0))];
    edge("table_axis", &brief, 1750.0, 1750.0 + PAST, at);
    edge("table_axis", &brief, 1550.0, 1550.0 - PAST, at);
}
