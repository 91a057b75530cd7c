//! Small things at the ends of seats.

use std::collections::BTreeSet;

use elbowroom_model::{Piece, PieceKind};
use elbowroom_solver::arrangement::Relation;

use super::plan::{armchairs, brief, media_unit, piece, rectangle, sofa};
use super::{of, strings};

/// A lamp stands at either end of any seat, or of those that the file names.
#[test]
fn a_lamp_stands_at_the_seat_that_it_is_said_to() {
    let lamp = piece("lamp", PieceKind::FloorLamp, (300.0, 450.0), (300.0, 450.0));
    let at = |seats: &[&str]| Piece { at: seats.iter().map(|seat| (*seat).to_owned()).collect(), ..lamp.clone() };
    let seats_of = |lamp: Piece| {
        let mut pieces = vec![sofa(), media_unit()];
        pieces.extend(armchairs(pieces.len()));
        pieces.push(lamp);
        let brief = brief(rectangle(6000.0, 5000.0), pieces);
        let found = of(&brief);
        let stands = found.arrangements[0].standings.last().unwrap().stands.clone();
        let name = |relation| match relation {
            Relation::Beside { seat, .. } => brief.piece_name(seat).to_owned(),
            other => panic!("{other:?}"),
        };
        stands.iter().map(|stand| name(stand.relation)).collect::<BTreeSet<String>>()
    };
    let [sofa, first] = [sofa().name, armchairs(2)[0].name.clone()];
    assert!(seats_of(lamp.clone()).len() > 2);
    assert_eq!(seats_of(at(&[&sofa])), strings(&[&sofa]));
    assert_eq!(seats_of(at(&[&first])), strings(&[&first]));
}

/// The first of a pair on the left of its seat, the second on the right; where any seat will do each may stand anywhere.
#[test]
fn a_pair_at_one_seat_stands_at_both_its_ends() {
    let lamp = piece("lamp 1", PieceKind::FloorLamp, (300.0, 450.0), (300.0, 450.0));
    let sides_of = |at: &[&str]| {
        let first = Some(elbowroom_model::PieceId(2));
        let at: Vec<String> = at.iter().map(|seat| (*seat).to_owned()).collect();
        let one = Piece { at, alike: first, ..lamp.clone() };
        let other = Piece { name: "lamp 2".to_owned(), ..one.clone() };
        let brief = brief(rectangle(6000.0, 5000.0), vec![sofa(), media_unit(), one, other]);
        let standings = of(&brief).arrangements[0].standings.clone();
        let left = |relation| matches!(relation, Relation::Beside { left: true, .. });
        let sides = |stands: &[elbowroom_solver::arrangement::Stand]| -> Vec<bool> {
            stands.iter().map(|stand| left(stand.relation)).collect()
        };
        standings[2..].iter().map(|standing| sides(&standing.stands)).collect::<Vec<_>>()
    };
    assert_eq!(sides_of(&[&sofa().name]), [[true], [false]]);
    assert_eq!(sides_of(&[]), [[true, false], [true, false]]);
}
