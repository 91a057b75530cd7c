//! Solid wall behind, nothing before openings, what is behind a seat and a return.

use elbowroom_model::{Brief, Clearance, Hand, ItemKind, LeadsTo, Opening, PieceKind, Radiator, Stance, View, Window};

use super::super::{NORTH, SOUTH, WEST, at_wall, corner, placed};
use super::{PAST, breaks, edge, holds};
use crate::support::rooms::{Furnish, outline, piece, rectangle};

fn opening(stance: Stance) -> ItemKind {
    ItemKind::Opening(Opening { leads_to: LeadsTo::Space("kitchen".to_owned()), stance })
}

#[test]
fn what_stands_at_a_wall_has_solid_wall_behind_it() {
    // Common practice, no source: all but 50 mm.
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::SolidWall, 50.0)
        .item("kitchen", 0, 3000.0, 900.0, opening(Stance::None))
        .piece(piece(PieceKind::Sofa));
    edge("solid_wall", &brief, 2050.0, 2050.0 + PAST, |x| {
        vec![at_wall(placed(0, (x, 0.0), SOUTH, (2000.0, 900.0)), 0)]
    });
    // A free seat has no wall to be before.
    holds(&brief, vec![placed(0, (2600.0, -100.0), SOUTH, (2000.0, 900.0))]);
}

#[test]
fn the_end_of_a_wall_is_its_end() {
    let corners = [(0.0, 0.0), (6000.0, 0.0), (6000.0, -2000.0), (3000.0, -2000.0), (3000.0, -5000.0), (0.0, -5000.0)];
    let brief = outline(&corners, &["a", "b", "c", "d", "e", "f"])
        .within(10.0)
        .rule(Clearance::SolidWall, 50.0)
        .piece(piece(PieceKind::Sofa));
    edge("solid_wall", &brief, 50.0, 50.0 + PAST, |past: f64| {
        vec![at_wall(placed(0, (4000.0 - past, -1990.0), NORTH, (2000.0, 900.0)), 2)]
    });
}

#[test]
fn nothing_stands_close_before_an_opening() {
    // Common practice, no source: 600 mm.
    let brief = rectangle(5000.0, 4000.0).within(10.0).rule(Clearance::BeforeOpening, 600.0).item(
        "kitchen",
        0,
        1500.0,
        2000.0,
        opening(Stance::None),
    );
    let table = brief.clone().piece(piece(PieceKind::SideTable));
    let at = |x: f64, y: f64| vec![placed(0, (x, y), SOUTH, (400.0, 400.0))];
    edge("before_opening", &table, -610.0, -610.0 + PAST, |y| at(2500.0, y));
    edge("before_opening", &table, 3700.0, 3700.0 - PAST, |x| at(x, -300.0));
    holds(&brief.piece(piece(PieceKind::Rug)), at(2500.0, -300.0));
}

#[test]
fn a_free_seat_may_turn_its_back_on_a_wide_opening_with_a_walkway_beside_it() {
    let brief = |stance: Stance| {
        rectangle(5000.0, 4000.0)
            .rule(Clearance::BeforeOpening, 600.0)
            .rule(Clearance::Walkway, 900.0)
            .item("kitchen", 0, 1500.0, 2000.0, opening(stance))
            .piece(piece(PieceKind::Sofa))
    };
    let at = |x: f64| vec![placed(0, (x, -300.0), SOUTH, (1000.0, 900.0))];
    for stance in [Stance::None, Stance::Away] {
        edge("before_opening", &brief(stance), 2900.0, 2900.0 - PAST, at);
    }
    breaks("before_opening", &brief(Stance::Open), at(2900.0));
    // Turned away from it, or at the wall beside it, it does not back it.
    breaks("before_opening", &brief(Stance::None), vec![placed(0, (2900.0, -1200.0), NORTH, (1000.0, 900.0))]);
}

/// A sofa at the north wall and an armchair that has its back to the east wall, so far off.
fn with_chair(brief: Brief) -> Brief {
    brief
        .rule(Clearance::BehindSeat, 145.0)
        .rule(Clearance::Passage, 610.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::Armchair))
}

fn chair(off: f64) -> Vec<elbowroom_solver::Placed> {
    vec![
        at_wall(placed(0, (1500.0, 0.0), SOUTH, (2000.0, 900.0)), 0),
        placed(1, (5000.0 - off, -2500.0), WEST, (900.0, 900.0)),
    ]
}

#[test]
fn behind_a_seat_there_is_a_wall_or_a_way() {
    // Common practice, no source: 145 mm; the passage is the file's.
    let brief = with_chair(rectangle(5000.0, 4000.0));
    edge("behind_seat", &brief, 145.0, 145.0 + PAST, chair);
    edge("behind_seat", &brief, 610.0, 610.0 - PAST, chair);
}

#[test]
fn a_seat_stands_at_the_gap_of_what_holds_it_off() {
    let radiator = ItemKind::Radiator(Radiator { depth: 110.0, height: 600.0, keep_clear: 300.0 });
    let brief = with_chair(rectangle(5000.0, 4000.0)).item("radiator", 1, 2000.0, 1000.0, radiator);
    edge("behind_seat", &brief, 410.0, 410.0 + 2.0 * PAST, chair);
    let kind =
        ItemKind::Window(Window { sill: 450.0, head: 2100.0, view: View::Plain, opens: true, must_reach: false });
    let brief = with_chair(rectangle(5000.0, 4000.0).rule(Clearance::WindowFront, 300.0));
    edge("behind_seat", &brief.item("bay", 1, 2000.0, 1000.0, kind), 300.0, 300.0 + 2.0 * PAST, chair);
}

#[test]
fn a_piece_that_covers_half_of_a_seat_closes_what_is_behind_it() {
    // Common practice, no source: within 150 mm, half of its width.
    let brief = with_chair(rectangle(5000.0, 4000.0)).piece(piece(PieceKind::SideTable));
    let at = |off: f64, covers: f64| {
        let mut stands = chair(2000.0);
        stands.push(placed(2, (3000.0 + off + 200.0, -2950.0 + covers), SOUTH, (400.0, 450.0)));
        stands
    };
    edge("behind_seat", &brief, 150.0, 150.0 + PAST, |off| at(off, 450.0));
    edge("behind_seat", &brief, 450.0, 450.0 - 2.0 * PAST, |covers| at(100.0, covers));
}

#[test]
fn a_main_seat_that_stands_free_has_a_metre_behind_it_or_a_reason() {
    // From memory: 30 to 36 in behind a floated sofa; a metre is common practice.
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::BehindSeat, 145.0)
        .rule(Clearance::Passage, 610.0)
        .piece(piece(PieceKind::Sofa));
    let at = |x: f64, y: f64| vec![placed(0, (x, y), SOUTH, (2000.0, 900.0))];
    edge("behind_seat", &brief, -1000.0, -1000.0 + PAST, |y| at(2500.0, y));
    // 400 mm of a window 1200 wide is a reason.
    let kind =
        ItemKind::Window(Window { sill: 900.0, head: 2100.0, view: View::Plain, opens: true, must_reach: false });
    let bay = brief.clone().item("bay", 0, 3100.0, 1200.0, kind);
    edge("behind_seat", &bay, 2500.0, 2500.0 - 2.0 * PAST, |x| at(x, -700.0));
    // So is a piece, with the passage between.
    let table = brief.piece(piece(PieceKind::SideTable));
    let mut stands = at(2500.0, -900.0);
    stands.push(placed(1, (2500.0, 0.0), SOUTH, (200.0, 200.0)));
    holds(&table, stands);
}

#[test]
fn a_return_keeps_the_gap_of_a_seat_off_its_wall() {
    let mut sofa = piece(PieceKind::CornerSofa);
    sofa.off_wall = 50.0;
    let brief = rectangle(5000.0, 4000.0).within(10.0).piece(sofa.clone());
    let at = |x: f64| {
        let sofa = corner(placed(0, (x, -60.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0);
        vec![at_wall(sofa, 0)]
    };
    edge("return_off_wall", &brief, 60.0, 60.0 - PAST, at);
    // A chaise has no back there.
    sofa.chaise = true;
    holds(&rectangle(5000.0, 4000.0).within(10.0).piece(sofa), at(20.0));
}
