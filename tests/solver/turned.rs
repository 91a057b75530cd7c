//! Chairs at an angle, in plans.

use elbowroom_model::{PieceId, Term};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::scenarios::room;
use crate::support::ranked::ranked;

/// The pair of a demo room, and the same that may be turned.
const PAIR: &str = "kind: armchair, count: 2";
const EITHER: &str = "kind: armchair, count: 2, turned: either";

/// How far each chair is turned in an option, degrees, by its place in the brief.
fn turns(answer: &Answer, option: &RankedOption) -> Vec<(PieceId, f64)> {
    let chairs = option.pieces(&answer.brief).filter(|one| one.piece.turned.may_turn());
    chairs
        .map(|one| {
            let id = one.placed.piece;
            (id, option.turned(&answer.brief, id).map_or(0.0, |turned| turned.degrees))
        })
        .collect()
}

fn is_turned(answer: &Answer, option: &RankedOption) -> bool {
    turns(answer, option).iter().any(|(_, degrees)| *degrees > 1.0)
}

fn value_of<'a>(answer: &'a Answer, key: &str) -> Option<&'a RankedOption> {
    answer.options.iter().find(|option| option.key == key)
}

/// Both chairs of a pair, toward the table, and told what it costs.
#[test]
fn a_pair_is_turned_alike_where_that_is_better_than_square() {
    let text = room("chairs-at-an-angle");
    let answer = ranked(&text);
    let square = ranked(&text.replace("turned: either", "turned: no"));
    let turned: Vec<&RankedOption> = answer.options.iter().filter(|option| is_turned(&answer, option)).collect();
    assert!(turned.iter().any(|option| option.rank == 1), "the demo room shows what it is for");
    for option in &turned {
        let turns = turns(&answer, option);
        assert!((turns[0].1 - turns[1].1).abs() < 1e-6, "{}: {turns:?}", option.key);
        let table = option.turned(&answer.brief, turns[0].0).map(|turned| turned.toward);
        assert_eq!(table.map(|table| answer.brief.piece_name(table)), Some("coffee table"));
        let paid = option.planned.composition.iter().filter(|told| told.term == Term::Turned).count();
        assert_eq!(paid, 2, "{}", option.key);
        // It is chosen because it is the better plan.
        if let Some(other) = value_of(&square, &option.key) {
            assert!(
                option.planned.value < other.planned.value,
                "{}: {:?} {:?}",
                option.key,
                option.planned,
                other.planned
            );
        }
    }
}

/// Whatever may be turned may still stand square: no plan is the worse for it.
#[test]
fn a_choice_more_never_costs_a_plan() {
    for name in ["pair-of-armchairs", "everyday"] {
        let text = room(name);
        let (square, either) = (ranked(&text), ranked(&text.replace(PAIR, EITHER)));
        for option in &square.options {
            let other = value_of(&either, &option.key).unwrap_or_else(|| panic!("{name}: {} is lost", option.key));
            assert!(other.planned.value <= option.planned.value + 1.0, "{name}: {}", option.key);
        }
    }
}

/// A pair opposite the sofa, or one on each side of its table, stands square where that costs nothing.
#[test]
fn where_square_is_as_good_nothing_is_turned() {
    let answer = ranked(&room("everyday").replace(PAIR, EITHER));
    let first = &answer.options[0];
    assert!(first.key.ends_with("left-right") && !is_turned(&answer, first), "{}", first.key);
}

/// Where they are to be turned all are, and only then.
#[test]
fn chairs_that_are_to_be_turned_are() {
    let text = room("pair-of-armchairs").replace("count: 2", "count: 2, turned: yes");
    let answer = ranked(&text);
    assert!(answer.options.len() > 10, "{}", answer.options.len());
    for option in &answer.options {
        let all: Vec<f64> = turns(&answer, option).iter().map(|(_, degrees)| degrees.round()).collect();
        assert!(all.iter().all(|degrees| [15.0, 30.0, 45.0].contains(degrees)), "{}: {all:?}", option.key);
    }
}

/// The seat that the others stand about stands square.
#[test]
fn the_main_seat_is_never_turned() {
    let text = "units: cm\nwalls:\n  - { length: 400, holds: [{ kind: door, at: 20, width: 83, swings: slides, leads_to: entrance }] }\n  - { length: 400 }\n  - { length: 400 }\n  - { length: 400 }\npieces:\n  - { kind: armchair, count: 2, turned: either }\n  - kind: coffee-table\n";
    let answer = ranked(text);
    assert!(!answer.options.is_empty());
    let of_main = |option: &RankedOption| option.turned(&answer.brief, option.main_seat).is_some();
    assert!(!answer.options.iter().any(of_main));
}
