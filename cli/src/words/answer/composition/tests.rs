//! The sentence of each term, in a room whose terms are made by hand.

use elbowroom_model::{Brief, ItemId, PieceId, Term, WallId, scenario};
use elbowroom_solver::composition::TermCost;
use elbowroom_solver::rules::With;

use super::term;

const SOFA: PieceId = PieceId(0);
const CHAIR: PieceId = PieceId(1);
const UNIT: PieceId = PieceId(2);
const TABLE: PieceId = PieceId(3);
const RUG: PieceId = PieceId(4);
const SHELF: PieceId = PieceId(5);
const WALL: With = With::Wall(WallId(1));

fn brief() -> Brief {
    let text = "
units: cm
walls:
  - name: hall wall
    length: 500
    holds: [{ kind: window, name: bay, at: 100, width: 150, sill: 90, head: 210, view: liked }]
  - { name: stair wall, length: 400 }
  - { name: back wall, length: 500 }
  - { name: yard wall, length: 400 }
pieces:
  - { kind: sofa }
  - { kind: armchair }
  - { kind: media-unit, screen: 55 in }
  - { kind: coffee-table }
  - { kind: rug }
  - { kind: bookcase }
";
    scenario::read(text, None).unwrap()
}

fn told(of: Term, piece: PieceId, with: With, off: f64) -> String {
    term(&brief(), &TermCost { term: of, piece, with, off, cost: 200.0 })
}

#[test]
fn each_says_what_is_off_and_by_how_much() {
    let sofa = With::Piece(SOFA);
    let cases = [
        (Term::ScreenAside, UNIT, sofa, 118.0, "The media unit stands 12 cm off the middle of the front of the sofa."),
        (Term::TableAside, TABLE, sofa, 6.0, "The coffee table lies 0.6 cm off the middle of the front of the sofa."),
        (Term::WayAcross, SOFA, With::Piece(UNIT), 700.0, "A main way cuts between the sofa and the media unit."),
        (Term::CutOff, SHELF, With::Itself, 600_000.0, "2.1 m2 of floor by the bookcase cannot be walked to."),
        (
            Term::SmallByWay,
            RUG,
            With::Itself,
            114.4,
            "The rug stands 80 cm from where one walks from door to door; 91 cm keeps it out of the way.",
        ),
        (Term::FocusAside, SOFA, With::Item(ItemId(0)), 400.0, "The sofa faces the bay 40 cm off its middle."),
        (
            Term::ToTable,
            CHAIR,
            With::Piece(TABLE),
            550.0,
            "The armchair stands 55 cm further from the coffee table than one reaches.",
        ),
        (
            Term::SideAlong,
            CHAIR,
            With::Piece(TABLE),
            200.0,
            "The armchair stands 20 cm out of line with the middle of the coffee table.",
        ),
        (Term::SideAlong, CHAIR, sofa, 200.0, "The armchair stands 20 cm out of line with the middle of the group."),
        (
            Term::LooksPast,
            CHAIR,
            With::Piece(TABLE),
            200.0,
            "The armchair looks past the middle of the coffee table by 20 cm.",
        ),
        (Term::LooksPast, CHAIR, sofa, 200.0, "The armchair looks past the middle of the group by 20 cm."),
        (Term::Turned, CHAIR, sofa, 30.0, "The armchair is turned 30 degrees, where square would be plainer."),
        (
            Term::FrontsApart,
            CHAIR,
            sofa,
            266.0,
            "The fronts of the armchair and the sofa are 240 cm apart; one talks easily over up to 213 cm.",
        ),
        (
            Term::ScreenOffMiddle,
            UNIT,
            WALL,
            300.0,
            "The media unit, and the group with it, stands 30 cm off the middle of what is free of the stair wall.",
        ),
        (Term::OffMiddle, SOFA, WALL, 300.0, "The sofa stands 30 cm off the middle of what is free of the stair wall."),
        (
            Term::OffMiddle,
            SHELF,
            WALL,
            300.0,
            "The bookcase stands 30 cm off the middle, and off either end, of what is free of the stair wall.",
        ),
        (Term::FloorBehind, SOFA, With::Itself, 5_340_000.0, "The sofa leaves 5.3 m2 of floor behind it."),
        (
            Term::FloorBehindFireside,
            SOFA,
            With::Itself,
            5_340_000.0,
            "The sofa gathers about the fire and leaves 5.3 m2 of floor behind it.",
        ),
        (Term::RugUnderMain, RUG, sofa, 130.0, "The rug reaches 12 cm under the sofa; 25 cm holds it better."),
        (Term::RugUnderMain, RUG, sofa, 350.0, "The rug ends 10 cm before the sofa; 25 cm under it holds it better."),
        (
            Term::RugUnderSecond,
            CHAIR,
            With::Piece(RUG),
            50.0,
            "The rug reaches 10 cm under the armchair; 15 cm holds it better.",
        ),
        (Term::RugShort, RUG, sofa, 500.0, "The rug is 20 cm shorter than the sofa."),
        (
            Term::ScreenByFocus,
            UNIT,
            With::Item(ItemId(0)),
            1100.0,
            "The media unit stands beside the bay, 110 cm off the middle of the seat that faces it.",
        ),
        (Term::BackToView, SOFA, With::Item(ItemId(0)), 0.0, "The sofa has its back to the bay, whose view you like."),
        (
            Term::ReturnBackToView,
            SOFA,
            With::Item(ItemId(0)),
            0.0,
            "The return of the sofa has its back to the bay, whose view you like.",
        ),
        (Term::StorageFar, SHELF, sofa, 1400.0, "The bookcase stands 440 cm from the middle of the group."),
        (Term::StorageApart, SHELF, With::Piece(UNIT), 0.0, "The bookcase stands at another wall than the media unit."),
        (Term::BesideStorage, SHELF, sofa, 180.0, "The bookcase stands 12 cm beside the sofa, and looms over it."),
        (
            Term::AtEnd,
            SHELF,
            sofa,
            140.0,
            "The bookcase stands 14 cm from the end of the sofa; a hand finds it within 6 cm.",
        ),
    ];
    for (of, piece, with, off, expected) in cases {
        assert_eq!(told(of, piece, with, off), expected);
    }
}

#[test]
fn every_term_has_its_sentence_and_no_two_the_same() {
    let mut all: Vec<String> = Term::ALL.iter().map(|of| told(*of, CHAIR, With::Piece(SOFA), 120.0)).collect();
    for (said, of) in all.iter().zip(Term::ALL) {
        assert!(said.ends_with('.') && !said.contains('_') && said.contains("armchair"), "{of:?}: {said}");
    }
    // A table and a rug lie alike off an axis, a screen and a seat opposite stand so, a window and a fire are faced alike, a
    // fire lies alike between seats whether it is wished for or not, a view or a fire is behind alike, floor is left alike whether
    // one dines at that end or not, and each seat stands alike at a leaf.
    let alike = 8;
    all.sort();
    all.dedup();
    assert_eq!(all.len(), Term::ALL.len() - alike, "{all:#?}");
}
