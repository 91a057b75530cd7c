//! What the pieces of a group ask of each other: seats, tables, screens.

use elbowroom_model::{Brief, Clearance, Hand, Pair, Piece, PieceId, PieceKind, Point};
use elbowroom_solver::arrangement::{Arrangement, Relation, Role, Stand, Standing};
use elbowroom_solver::verify::{CheckedRoom, Wrong, verify};
use elbowroom_solver::{Layout, Placed, Size};

use super::{HAIR, NORTH, SOUTH, WEST, arrangement, at_wall, broken, corner, edge, placed};
use crate::support::rooms::{Furnish, piece, rectangle};

fn sofa_and_table() -> Brief {
    rectangle(5000.0, 4000.0)
        .rule(Clearance::SeatToTable, 400.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::CoffeeTable))
}

#[test]
fn a_table_lies_exactly_before_its_seat() {
    let at = |y: f64, x: f64| {
        let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
        vec![sofa, placed(1, (x, y), SOUTH, (1000.0, 600.0))]
    };
    edge("seat_to_table", &sofa_and_table(), -1399.0, -1398.9, |y| at(y, 2500.0));
    edge("seat_to_table", &sofa_and_table(), -1401.0, -1401.1, |y| at(y, 2500.0));
    edge("seat_to_table", &sofa_and_table(), 3999.0, 4000.0, |x| at(-1400.0, x));
}

#[test]
fn nothing_stands_between_seat_and_table() {
    let brief = sofa_and_table().piece(piece(PieceKind::SideTable));
    edge("seat_to_table", &brief, 1900.0, 1900.0 + HAIR, |x| {
        let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
        let table = placed(1, (2500.0, -1400.0), SOUTH, (1200.0, 600.0));
        vec![sofa, table, placed(2, (x - 150.0, -1050.0), SOUTH, (300.0, 300.0))]
    });
}

#[test]
fn a_table_keeps_off_the_return() {
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::SeatToTable, 400.0)
        .piece(piece(PieceKind::CornerSofa))
        .piece(piece(PieceKind::CoffeeTable));
    edge("seat_to_table", &brief, 1800.0, 1800.0 - HAIR, |x| {
        let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0);
        vec![sofa, placed(1, (x, -1300.0), SOUTH, (1000.0, 600.0))]
    });
}

/// A return with a depth of its own, and a second one.
#[test]
fn a_table_keeps_off_both_returns() {
    let range = piece(PieceKind::CornerSofa).return_length;
    let sofa = Piece { second_return: range, return_depth: range, ..piece(PieceKind::CornerSofa) };
    let brief =
        rectangle(5000.0, 4000.0).rule(Clearance::SeatToTable, 400.0).piece(sofa).piece(piece(PieceKind::CoffeeTable));
    let at = |x: f64| {
        let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (4000.0, 900.0)), Hand::Right, 2000.0);
        let size = Size { second_return: Some(1800.0), return_depth: Some(1100.0), ..sofa.size };
        vec![Placed { size, ..sofa }, placed(1, (x, -1300.0), SOUTH, (1000.0, 600.0))]
    };
    edge("seat_to_table", &brief, 2000.0, 2000.0 - HAIR, at);
    edge("seat_to_table", &brief, 2200.0, 2200.0 + HAIR, at);
}

#[test]
fn the_table_that_the_arrangement_gives_a_seat_serves_that_seat() {
    let brief = sofa_and_table().piece(piece(PieceKind::Armchair));
    let layout = Layout {
        placed: vec![
            placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)),
            placed(1, (2500.0, -1400.0), SOUTH, (1000.0, 600.0)),
            placed(2, (2500.0, -3600.0), NORTH, (900.0, 900.0)),
        ],
        ..Layout::default()
    };
    let serving = |seat| {
        let stand =
            Stand { at_wall: None, facing: SOUTH, relation: Relation::Before { seat: PieceId(seat) }, turn: None };
        let standing = Standing { piece: PieceId(1), role: Role::Table, hand: None, stands: vec![stand] };
        Arrangement { standings: vec![standing], ..arrangement() }
    };
    assert_eq!(verify(&CheckedRoom::of(&brief), &layout, &serving(0), &[]), []);
    let breaches = verify(&CheckedRoom::of(&brief), &layout, &serving(2), &[]);
    assert_eq!(breaches.iter().map(|breach| breach.rule.key()).collect::<Vec<_>>(), ["seat_to_table"]);
}

/// A step ends at x = 4000: a table and its seat are on one side of it, or both past that end.
#[test]
fn what_serves_a_seat_is_on_one_level_with_it() {
    let step = [(1000.0, -1200.0), (4000.0, -1200.0)];
    let brief = rectangle(8000.0, 4000.0).within(0.0).fixed("step", &step);
    let brief = brief.piece(piece(PieceKind::Sofa)).piece(piece(PieceKind::CoffeeTable));
    let stand = Stand { at_wall: None, facing: SOUTH, relation: Relation::Before { seat: PieceId(0) }, turn: None };
    let standing = Standing { piece: PieceId(1), role: Role::Table, hand: None, stands: vec![stand] };
    let serving = Arrangement { standings: vec![standing], ..arrangement() };
    let parted = |x: f64| {
        let sofa = placed(0, (x, -100.0), SOUTH, (2000.0, 900.0));
        let placed = vec![sofa, placed(1, (x, -1400.0), SOUTH, (1000.0, 600.0))];
        let layout = Layout { placed, ..Layout::default() };
        let breaches = verify(&CheckedRoom::of(&brief), &layout, &serving, &[]);
        breaches.iter().filter(|breach| breach.wrong == Wrong::OnOtherLevel).count()
    };
    assert_eq!([2500.0, 4900.0, 5000.0, 5500.0].map(parted), [1, 1, 0, 0]);
}

#[test]
fn one_walks_between_table_and_screen() {
    let brief = sofa_and_table().rule(Clearance::Passage, 600.0).piece(piece(PieceKind::MediaUnit));
    edge("passage", &brief, 600.0, 600.0 - HAIR, |gap| {
        let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
        let table = placed(1, (2500.0, -1400.0), SOUTH, (1000.0, 2150.0 - gap));
        vec![sofa, table, at_wall(placed(2, (2500.0, -4000.0), NORTH, (1600.0, 450.0)), 2)]
    });
}

#[test]
fn without_a_table_one_walks_between_seat_and_screen() {
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::Passage, 600.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::MediaUnit));
    edge("passage", &brief, 600.0, 600.0 - HAIR, |gap| {
        let sofa = placed(0, (2500.0, -2650.0 + gap), SOUTH, (2000.0, 900.0));
        vec![sofa, at_wall(placed(1, (2500.0, -4000.0), NORTH, (1600.0, 450.0)), 2)]
    });
}

fn facing_pair(kind: PieceKind, rule: Clearance) -> Brief {
    rectangle(5000.0, 4000.0).rule(rule, 1500.0).piece(piece(PieceKind::Sofa)).piece(piece(kind))
}

#[test]
fn seats_that_face_each_other_keep_their_distance() {
    let brief = facing_pair(PieceKind::Armchair, Clearance::FacingSeats);
    let at = |gap: f64, x: f64, facing: Point| {
        let sofa = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
        vec![sofa, placed(1, (x, -1900.0 - gap), facing, (900.0, 900.0))]
    };
    edge("facing_seats", &brief, 1500.0, 1500.0 - HAIR, |gap| at(gap, 2500.0, NORTH));
    // Beside each other's fronts, at right angles or turned further than 10 degrees they do not face each other.
    edge("facing_seats", &brief, 3950.0, 3950.0 - HAIR, |x| at(800.0, x, NORTH));
    assert_eq!(broken(&brief, at(800.0, 2500.0, WEST)), [""; 0]);
    let turned = |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        at(800.0, 2500.0, Point::new(sin, cos))
    };
    edge("facing_seats", &brief, 10.1, 9.9, turned);
    // Back to back they face away.
    let back_to_back =
        vec![placed(0, (2500.0, -2100.0), SOUTH, (2000.0, 900.0)), placed(1, (2500.0, -2000.0), NORTH, (900.0, 900.0))];
    assert_eq!(broken(&brief, back_to_back), [""; 0]);
}

#[test]
fn a_seat_keeps_its_distance_from_the_screen_it_faces() {
    let brief = facing_pair(PieceKind::MediaUnit, Clearance::ScreenToSeat);
    edge("screen_to_seat", &brief, 1500.0, 1500.0 - HAIR, |gap| {
        let sofa = placed(0, (2500.0, -2650.0 + gap), SOUTH, (2000.0, 900.0));
        vec![sofa, at_wall(placed(1, (2500.0, -4000.0), NORTH, (1600.0, 450.0)), 2)]
    });
}

/// Two sofas of one row are the pair that the file asks for: opposite, one before the other, or at a right angle; each within
/// 10 degrees.
#[test]
fn a_pair_stands_as_it_is_asked_to() {
    let pair = |pair: Pair| {
        let sofa = Piece { pair, alike: Some(PieceId(0)), ..piece(PieceKind::Sofa) };
        let second = Piece { name: "second".to_owned(), ..sofa.clone() };
        rectangle(6000.0, 5000.0).piece(sofa).piece(second)
    };
    let at = |degrees: f64, x: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        let first = placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0));
        vec![first, placed(1, (x, -3500.0), Point::new(sin, cos), (2000.0, 900.0))]
    };
    edge("group", &pair(Pair::Facing), 9.9, 10.1, |degrees| at(degrees, 2500.0));
    edge("group", &pair(Pair::Facing), 4490.0, 4510.0, |x| at(0.0, x));
    edge("group", &pair(Pair::Corner), 80.1, 79.9, |degrees| at(degrees, 2500.0));
    assert_eq!(broken(&pair(Pair::Either), at(45.0, 2500.0)), [""; 0]);
}
