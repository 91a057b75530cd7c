//! Balance: what the terms of a plan cost, and what found no place in it.

use elbowroom_model::{Criterion, PieceId, PieceKind, Term, WallId, tables};
use elbowroom_solver::answer::Thing;
use elbowroom_solver::composition::TermCost;
use elbowroom_solver::criteria::FigureUnit;
use elbowroom_solver::criteria::balance::OffAxis;
use elbowroom_solver::rules::With;

use super::stage::{DOWN, NORTH, SOUTH, Stage, UP};

const SOFA: PieceId = PieceId(0);
const UNIT: PieceId = PieceId(1);

/// A sofa of 2400 at the south wall, a screen at the north wall `off` from its axis.
fn before_a_screen(off: f64) -> Stage {
    let sofa = Stage::room(3600.0, 4000.0).at_wall(SOUTH, PieceKind::Sofa, (1800.0, -4000.0), UP, (2400.0, 900.0));
    sofa.at_wall(NORTH, PieceKind::MediaUnit, (1800.0 + off, 0.0), DOWN, (1600.0, 450.0))
}

fn term(term: Term, piece: PieceId, with: With, (off, cost): (f64, f64)) -> TermCost {
    TermCost { term, piece, with, off, cost }
}

/// Two sides of 900 and 100 for a plan as a search found it, 1000 in all: 40 points.
#[test]
fn balance_is_100_less_a_twenty_fifth_of_what_the_terms_cost() {
    let mut stage = before_a_screen(0.0);
    stage.composition = Some(vec![
        term(Term::ScreenAside, UNIT, With::Piece(SOFA), (120.0, 900.0)),
        term(Term::OffWall, SOFA, With::Wall(WallId(SOUTH)), (50.0, 100.0)),
    ]);
    let judged = stage.judge(Criterion::Balance);
    assert!((judged.score - 60.0).abs() < 1e-9, "{judged:?}");
    assert_eq!((judged.figure, judged.unit), (120.0, FigureUnit::Millimetres));
    let worst = OffAxis { term: Term::ScreenAside, piece: UNIT, from: Thing::Piece(SOFA), off: 120.0 };
    assert_eq!((stage.balance().worst, stage.balance().placement), (Some(worst), 1000.0));
    // What stands off its wall alone is off no axis, and costs all the same.
    stage.composition = Some(vec![term(Term::OffWall, SOFA, With::Wall(WallId(SOUTH)), (50.0, 100.0))]);
    assert_eq!((stage.balance().worst, stage.judge(Criterion::Balance).figure), (None, 0.0));
    assert!((stage.score(Criterion::Balance) - 96.0).abs() < 1e-9);
    stage.composition = Some(vec![term(Term::TwoAtEnd, SOFA, With::Piece(UNIT), (0.0, 3000.0))]);
    assert_eq!(stage.score(Criterion::Balance), 0.0);
    stage.composition = Some(Vec::new());
    assert_eq!(stage.score(Criterion::Balance), 100.0);
}

/// A bookcase is worth 1000: 40 points. A chair is worth 2500 where seats are wished at 3: all hundred.
#[test]
fn balance_loses_what_the_pieces_left_out_are_worth() {
    let without = |kind| {
        let mut stage = before_a_screen(0.0).piece(kind, (500.0, -2000.0), UP, (800.0, 400.0)).left_out();
        stage.composition = Some(Vec::new());
        stage
    };
    let bookcase = without(PieceKind::Bookcase);
    assert!((bookcase.score(Criterion::Balance) - 60.0).abs() < 1e-9, "{:?}", bookcase.balance());
    assert_eq!((bookcase.balance().left_out, bookcase.balance().left_out_worth), (vec![PieceId(2)], 1000.0));
    let chair = without(PieceKind::Armchair);
    assert_eq!((chair.score(Criterion::Balance), chair.balance().left_out_worth), (0.0, 2500.0));
}

/// A room as it stands has no plan: what lies off the main seat's axis is measured, at the prices of the terms.
#[test]
fn balance_of_what_no_search_laid_out_is_what_lies_off_the_axis() {
    assert_eq!(before_a_screen(0.0).score(Criterion::Balance), 100.0);
    let stage = before_a_screen(100.0).piece(PieceKind::CoffeeTable, (1750.0, -2600.0), UP, (1200.0, 500.0)).piece(
        PieceKind::Rug,
        (1820.0, -3500.0),
        UP,
        (2800.0, 1500.0),
    );
    let price = |term| tables::price(term).cost;
    let cost = 100.0 * price(Term::ScreenAside) + 50.0 * price(Term::TableAside) + 20.0 * price(Term::RugAside);
    assert!((stage.balance().placement - cost).abs() < 1e-6, "{cost} {:?}", stage.balance());
    // 750, 300 and 72: 1122 in all.
    assert!((stage.score(Criterion::Balance) - (100.0 - 1122.0 / 25.0)).abs() < 1e-6, "{:?}", stage.balance());
    assert!((stage.judge(Criterion::Balance).figure - 100.0).abs() < 1e-6);
    // A screen that the seat does not face is on no axis of it.
    let aside = before_a_screen(0.0).left_out();
    let aside = aside.piece(PieceKind::MediaUnit, (0.0, -1500.0), (1.0, 0.0), (1600.0, 450.0));
    assert_eq!(aside.balance().worst, None);
}

#[test]
fn balance_tells_how_the_areas_lie_and_an_empty_side() {
    let lopsided = Stage::room(3600.0, 4000.0).at_wall(SOUTH, PieceKind::Sofa, (1800.0, -4000.0), UP, (2400.0, 900.0));
    // Its middle lies 450 from the south wall, the room's 2000; half of the room's side is 1897.
    assert!((lopsided.balance().lean - 1550.0).abs() < 1e-6 && lopsided.balance().empty_side);
    let even = lopsided.piece(PieceKind::MediaUnit, (1800.0, 0.0), DOWN, (2400.0, 900.0));
    assert!(even.balance().lean < 1e-6 && !even.balance().empty_side);
}
