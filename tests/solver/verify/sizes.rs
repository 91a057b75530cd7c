//! The safe envelope, and sizes that cannot grow.

use elbowroom_model::{Brief, Clearance, Dimension, Door, Hand, ItemKind, LeadsTo, PieceKind, Point, Swings};
use elbowroom_solver::verify::{CheckedRoom, Wrong, envelope, growth, let_out};
use elbowroom_solver::{Layout, Placed};

use super::{NORTH, SOUTH, arrangement, at_wall, corner, placed, second_check};
use crate::support::checker::Part;
use crate::support::rooms::{Furnish, piece, rectangle};

fn grows(brief: &Brief, placed: Vec<Placed>) -> Vec<String> {
    let second = second_check(brief, &placed, &[], Part::Larger);
    let layout = Layout { placed, ..Layout::default() };
    let found: Vec<String> = growth(&CheckedRoom::of(brief), &layout, &arrangement())
        .into_iter()
        .map(|breach| match (&breach.between[..], breach.wrong) {
            ([piece], Wrong::CanGrow(size)) => format!("{} {}", piece.name(brief), size.key()),
            _ => panic!("{breach:?}"),
        })
        .collect();
    let again = |held: &String| {
        format!("9 {} can grow by 20 mm", held.replacen(" width", "'s width", 1).replacen(" depth", "'s depth", 1))
    };
    assert_eq!(found.iter().map(again).collect::<Vec<_>>(), second, "checked again");
    found
}

fn shrinks(brief: &Brief, placed: Vec<Placed>) -> Vec<&'static str> {
    let second = second_check(brief, &placed, &[], Part::Smaller);
    let layout = Layout { placed, ..Layout::default() };
    let mut rules: Vec<_> = (0..4)
        .flat_map(|seed| envelope(&CheckedRoom::of(brief), &layout, &arrangement(), seed))
        .map(|breach| breach.rule.key())
        .collect();
    rules.dedup();
    assert_eq!(rules.is_empty(), second.is_empty(), "checked again: {second:?}");
    rules
}

#[test]
fn a_size_grows_with_either_end_held_and_its_back_in_place() {
    let brief = rectangle(3000.0, 2000.0).piece(piece(PieceKind::Sofa));
    // Wall to wall in both dimensions but for what is too little to grow by.
    let sofa = |x: f64, width: f64, depth: f64| vec![placed(0, (x, 0.0), SOUTH, (width, depth))];
    assert_eq!(grows(&brief, sofa(1500.0, 2990.0, 1990.0)), [""; 0]);
    assert_eq!(grows(&brief, sofa(1490.0, 2979.0, 1990.0)), ["sofa width"], "its right end has room");
    assert_eq!(grows(&brief, sofa(1510.0, 2979.0, 1990.0)), ["sofa width"], "its left end has room");
    assert_eq!(grows(&brief, sofa(1500.0, 2979.0, 1990.0)), [""; 0], "half of it on either side is no room to grow");
    assert_eq!(grows(&brief, sofa(1500.0, 2990.0, 1979.0)), ["sofa depth"]);
}

#[test]
fn a_size_is_let_out_as_far_as_it_can_grow() {
    let brief = rectangle(3000.0, 2000.0).piece(piece(PieceKind::Sofa));
    let layout =
        |x: f64, width: f64| Layout { placed: vec![placed(0, (x, 0.0), SOUTH, (width, 1990.0))], ..Layout::default() };
    // Its left end stands 100 mm off the wall, its right one 700 mm.
    let out = let_out(&CheckedRoom::of(&brief), &layout(1200.0, 2200.0), &arrangement(), &|_| None);
    assert!(growth(&CheckedRoom::of(&brief), &out, &arrangement()).is_empty());
    assert!(out.placed[0].size.width > 2940.0, "{:?}", out.placed[0].size);
    assert_eq!(
        let_out(&CheckedRoom::of(&brief), &layout(1500.0, 2990.0), &arrangement(), &|_| None),
        layout(1500.0, 2990.0)
    );
}

/// Bought no wider than it is deep, a table has its chairs where it is narrow: storage does not grow into their place.
#[test]
fn storage_grows_into_no_place_of_a_chair_at_a_smaller_table() {
    let mut table = piece(PieceKind::DiningTable);
    table.width.least = 400.0;
    let room = |table| {
        let room = rectangle(4000.0, 2600.0).rule(Clearance::DiningChair, 700.0).rule(Clearance::StorageFront, 300.0);
        room.piece(table).piece(piece(PieceKind::Sideboard))
    };
    // Narrow, the table has its chairs as far as 500 mm from the west wall.
    let layout = || {
        let table = placed(0, (1600.0, -900.0), SOUTH, (1400.0, 800.0));
        vec![table, at_wall(placed(1, (0.0, -1300.0), Point::new(1.0, 0.0), (1500.0, 490.0)), 3)]
    };
    let sizes = |brief: &Brief| {
        let layout = Layout { placed: layout(), ..Layout::default() };
        growth(&CheckedRoom::of(brief), &layout, &arrangement()).iter().map(|it| it.wrong).collect::<Vec<_>>()
    };
    let [width, depth] = [Dimension::Width, Dimension::Depth].map(Wrong::CanGrow);
    assert_eq!(sizes(&room(table.clone())), [width]);
    table.width.least = 1000.0;
    assert_eq!(sizes(&room(table)), [width, depth]);
}

/// A circle to turn in is another one where what grows takes its place.
#[test]
fn what_grows_may_move_the_circle_to_turn_in() {
    let brief = rectangle(4000.0, 3000.0).rule(Clearance::TurningCircle, 1500.0).piece(piece(PieceKind::Sofa));
    let out = |circle: Option<Point>| {
        let turning_circle = Some(Point::new(760.0, -1700.0));
        let placed = vec![placed(0, (2000.0, 0.0), SOUTH, (2000.0, 940.0))];
        let layout = Layout { placed, turning_circle, ..Layout::default() };
        let out = let_out(&CheckedRoom::of(&brief), &layout, &arrangement(), &|_| circle);
        (out.placed[0].size.depth, out.turning_circle)
    };
    assert_eq!(out(None), (940.0, Some(Point::new(760.0, -1700.0))));
    let (depth, circle) = out(Some(Point::new(3200.0, -2200.0)));
    assert!(depth > 990.0 && circle == Some(Point::new(3200.0, -2200.0)), "{depth} {circle:?}");
}

#[test]
fn what_is_at_its_most_or_comes_in_steps_or_pairs_is_left_out() {
    let brief = |change: fn(&mut elbowroom_model::Piece)| {
        let mut sofa = piece(PieceKind::Sofa);
        change(&mut sofa);
        rectangle(5000.0, 4000.0).piece(sofa)
    };
    let sofa = || vec![placed(0, (2500.0, 0.0), SOUTH, (2000.0, 900.0))];
    assert_eq!(grows(&brief(|_| {}), sofa()), ["sofa width", "sofa depth"]);
    assert_eq!(grows(&brief(|sofa| sofa.width.most = 2010.0), sofa()), ["sofa depth"]);
    assert_eq!(grows(&brief(|sofa| sofa.alike = Some(elbowroom_model::PieceId(0))), sofa()), [""; 0]);
    assert_eq!(grows(&brief(|sofa| sofa.square = true), sofa()), [""; 0]);
    let step = elbowroom_model::Step { width: 2000.0, depth: 900.0 };
    let mut stepped = brief(|_| {});
    stepped.pieces[0].steps = vec![step];
    assert_eq!(grows(&stepped, sofa()), [""; 0]);
}

#[test]
fn a_deeper_seat_takes_its_table_along() {
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::SeatToTable, 400.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::CoffeeTable));
    let at = |depth: f64, table: f64| {
        let sofa = placed(0, (2500.0, 0.0), SOUTH, (4000.0, depth));
        vec![sofa, placed(1, (2500.0, -depth - 400.0), SOUTH, (4000.0, table))]
    };
    assert_eq!(grows(&brief, at(900.0, 2000.0)), ["sofa depth", "coffee table depth"]);
    assert_eq!(grows(&brief, at(900.0, 2690.0)), [""; 0]);
}

#[test]
fn a_corner_sofa_grows_from_its_corner_or_from_its_ends() {
    let brief = rectangle(4000.0, 3000.0).piece(piece(PieceKind::CornerSofa)).piece(piece(PieceKind::SideTable));
    let at = |x: f64| {
        let sofa = corner(placed(0, (x, 0.0), SOUTH, (3950.0, 900.0)), Hand::Right, 2990.0);
        vec![sofa, placed(1, (2500.0, -910.0), SOUTH, (3000.0, 2090.0))]
    };
    let held: Vec<String> = grows(&brief, at(0.0)).into_iter().filter(|held| held.starts_with("corner")).collect();
    assert_eq!(held, ["corner sofa width"], "its outer end has room");
    let held: Vec<String> = grows(&brief, at(50.0)).into_iter().filter(|held| held.starts_with("corner")).collect();
    assert_eq!(held, ["corner sofa width"], "its corner has room");
}

#[test]
fn smaller_pieces_fit_where_larger_ones_did() {
    let door =
        ItemKind::Door(Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: LeadsTo::Entrance });
    let mut sofa = piece(PieceKind::Sofa);
    sofa.width.least = 1500.0;
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::SeatToTable, 400.0)
        .rule(Clearance::Passage, 600.0)
        .item("hall door", 1, 100.0, 900.0, door)
        .piece(sofa)
        .piece(piece(PieceKind::CoffeeTable))
        .piece(piece(PieceKind::MediaUnit));
    let pieces = |table| {
        vec![
            at_wall(placed(0, (2500.0, 0.0), SOUTH, (2400.0, 900.0)), 0),
            table,
            at_wall(placed(2, (2500.0, -4000.0), NORTH, (1600.0, 450.0)), 2),
        ]
    };
    // The table is held at the side of its seat, whichever way it faces.
    assert_eq!(shrinks(&brief, pieces(placed(1, (2500.0, -1300.0), SOUTH, (1000.0, 1600.0)))), [""; 0]);
    assert_eq!(shrinks(&brief, pieces(placed(1, (2500.0, -2900.0), NORTH, (1000.0, 1600.0)))), [""; 0]);
    assert_eq!(shrinks(&brief, pieces(placed(1, (2200.0, -2100.0), (-SOUTH).left(), (1600.0, 1000.0)))), [""; 0]);
}

#[test]
fn a_promise_that_smaller_pieces_break_is_found() {
    let brief = rectangle(5000.0, 4000.0)
        .rule(Clearance::SeatToTable, 400.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::CoffeeTable));
    // The table serves the end of the sofa alone: a shorter sofa no longer stands behind it.
    let pieces =
        vec![placed(0, (2000.0, 0.0), SOUTH, (4000.0, 900.0)), placed(1, (4400.0, -1300.0), SOUTH, (1000.0, 600.0))];
    assert_eq!(shrinks(&brief, pieces), ["seat_to_table"]);
}
