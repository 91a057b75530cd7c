//! What a stock has, as a room is solved for it: sizes that no catalogue has, and pieces that are carried in at their own height.

use elbowroom_model::PieceKind;
use elbowroom_solver::Limits;
use elbowroom_solver::stock::{Asking, By, Days, Miss, Owned, assign, plans, room_for};

use super::enumeration::WORK;
use super::owned;
use crate::support::ranked::brief_of;

const WALLS: &str = "
units: cm
walls: [{ length: 620 }, { length: 520 }, { length: 620, holds: [{ kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: in, leads_to: entrance }] }, { length: 520 }]
";

/// The room, which must have all that it asks for, handed what the stock has.
fn handed(pieces: &str, stock: &[Owned]) -> (Vec<Asking>, elbowroom_solver::stock::Assignment) {
    let brief = brief_of(&format!("{WALLS}{pieces}"));
    let limits = Limits { shown: 0, ..Limits::default() };
    let room = room_for(&brief, stock, &limits).into();
    let must = brief.piece_ids().collect();
    let rooms = vec![Asking { room, days: Days { from: 0, to: 0 }, priority: 1, must }];
    let found = assign(&rooms, stock, WORK);
    (rooms, found)
}

#[test]
fn a_rug_and_a_dining_table_may_have_the_sizes_of_the_stock() {
    let pieces =
        "pieces:\n  - { kind: sofa, width: 150..240 }\n  - { kind: rug }\n  - { kind: dining-table, seats: 4 }\n";
    let mut stock = vec![
        owned("sofa", PieceKind::Sofa, (2000.0, None, 900.0), 1),
        owned("rug", PieceKind::Rug, (2400.0, None, 1700.0), 1),
        owned("table for two", PieceKind::DiningTable, (800.0, None, 700.0), 1),
        owned("table for four", PieceKind::DiningTable, (1200.0, None, 750.0), 1),
    ];
    (stock[2].piece.seats, stock[3].piece.seats) = (Some(2), Some(4));
    let (rooms, found) = handed(pieces, &stock);
    let picked: Vec<By> = found.rooms[0].asked.iter().map(|one| one.by).collect();
    assert_eq!(picked, [0, 1, 3].map(|row| By::Stock { row }));
    let plan = plans(&rooms, &stock, &found, &Limits::default()).remove(0).unwrap();
    assert_eq!(plan.asked.pieces.iter().map(|piece| piece.width.most).collect::<Vec<_>>(), [2000.0, 2400.0, 1200.0]);
    assert!(!plan.options.is_empty());
}

/// A door 700 mm wide and 2 m high: a sofa 1 m deep passes it on its back where it is 650 high, and not where it is as high
/// as usual.
#[test]
fn a_piece_is_carried_in_at_its_own_height() {
    let pieces = "pieces:\n  - { kind: sofa, width: 150..240, depth: 80..110 }\nway:\n  - { kind: door, name: front door, width: 70, height: 200 }\n";
    let mut stock = vec![
        owned("high", PieceKind::Sofa, (2200.0, None, 1000.0), 1),
        owned("low", PieceKind::Sofa, (2000.0, None, 1000.0), 1),
    ];
    stock[1].piece.height = Some(650.0);
    let (rooms, found) = handed(pieces, &stock);
    assert_eq!(rooms[0].room.gets_in, [false, true]);
    assert_eq!(found.rooms[0].asked[0].by, By::Stock { row: 1 });
    let (_, found) = handed(pieces, &stock[..1]);
    assert_eq!((found.rooms[0].asked[0].by, found.rooms[0].nearest.unwrap().miss), (By::NoneFits, Miss::Way));
}

#[test]
fn every_piece_that_is_short_tells_what_comes_nearest() {
    let pieces = "pieces:\n  - { kind: sofa, width: 150..240 }\n  - { kind: bookcase, width: 100..140, depth: 30 }\n  - { kind: armchair, count: 2 }\n";
    let stock = [
        owned("sofa", PieceKind::Sofa, (2000.0, None, 900.0), 1),
        owned("narrow", PieceKind::Bookcase, (993.0, None, 300.0), 1),
        owned("far too wide", PieceKind::Bookcase, (3000.0, None, 300.0), 1),
        owned("one chair", PieceKind::Armchair, (800.0, None, 800.0), 1),
    ];
    let (_, found) = handed(pieces, &stock);
    let asked = &found.rooms[0].asked;
    assert_eq!((asked[1].by, asked[2].by), (By::NoneFits, By::TooFewAlike));
    let nearest = asked[1].nearest.unwrap();
    assert_eq!(nearest.row, 1);
    assert!(matches!(nearest.miss, Miss::Size { by, .. } if (by + 7.0).abs() < 0.5), "{nearest:?}");
}
