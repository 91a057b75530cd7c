//! Seats of one row: a pair of armchairs, two sofas that the file pairs.

use std::collections::BTreeSet;

use elbowroom_model::{Pair, Piece, PieceId, Point, SecondPlace};

use super::plan::{armchairs, brief, corner_sofa, media_unit, rectangle, sofa};
use super::{by_key, keys, of, strings};

fn pair(first: usize, pair: Pair) -> Vec<Piece> {
    let one = |number: usize| Piece { name: format!("sofa {number}"), pair, alike: Some(PieceId(first)), ..sofa() };
    vec![one(1), one(2)]
}

/// The keys of the arrangements with the main seat at the top wall, less that.
fn at_top(pieces: Vec<Piece>) -> BTreeSet<String> {
    let found = keys(&of(&brief(rectangle(7000.0, 7000.0), pieces)));
    found.iter().filter_map(|key| key.strip_prefix("top/")).map(str::to_owned).collect()
}

#[test]
fn a_pair_stands_as_the_file_says() {
    let either = strings(&["sofa-2-opposite", "sofa-2-left", "sofa-2-right"]);
    assert_eq!(at_top(pair(0, Pair::Either)), either);
    assert_eq!(at_top(pair(0, Pair::Facing)), strings(&["sofa-2-opposite"]));
    assert_eq!(at_top(pair(0, Pair::Corner)), strings(&["sofa-2-left", "sofa-2-right"]));
}

#[test]
fn a_pair_beside_another_main_seat_faces_across_it_or_makes_a_corner_beyond_it() {
    let beside = |how| at_top([vec![corner_sofa()], pair(1, how)].concat());
    // Behind the return of a corner sofa nobody sits, so that no side is left for a pair across.
    assert_eq!(beside(Pair::Facing), BTreeSet::new());
    let corner = ["left/sofas-right-opposite", "right/sofas-left-opposite"];
    assert_eq!(beside(Pair::Corner), strings(&corner));
}

/// The screen that the main sofa looks at has the place of the second: one of a pair that face each other has none before it.
#[test]
fn nothing_is_left_of_a_pair_that_face_each_other_before_a_screen() {
    let with = |unit: Piece| at_top([pair(0, Pair::Facing), vec![unit]].concat());
    assert_eq!(with(media_unit()), BTreeSet::new());
    assert_eq!(with(Piece { needed: false, ..media_unit() }), strings(&["no-screen/sofa-2-opposite"]));
}

#[test]
fn a_pair_of_armchairs_stands_together_or_one_on_each_side() {
    let pieces = [vec![sofa()], armchairs(1)].concat();
    let found = of(&brief(rectangle(6000.0, 6000.0), pieces));
    let at_top: BTreeSet<&str> = found.arrangements.iter().filter_map(|a| a.key.strip_prefix("top/")).collect();
    let expected = ["armchairs-opposite", "armchairs-left", "armchairs-right", "armchairs-left-right"];
    assert_eq!(at_top, BTreeSet::from(expected));
    let shared = by_key(&found, "top/armchairs-left-right");
    let places: Vec<_> = shared.choices.seats().iter().map(|seat| (seat.piece.0, seat.place)).collect();
    assert_eq!(places, [(1, SecondPlace::Left), (2, SecondPlace::Right)]);
    assert_eq!(
        shared.standings[1].stands[0].facing,
        Point::new(-1.0, 0.0),
        "from the left one looks across to the right"
    );
}
