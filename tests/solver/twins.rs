//! Pieces that are alike are looked at in one order only; that costs no layout.

use std::collections::BTreeMap;

use elbowroom_model::Point;
use elbowroom_solver::Outcome;
use elbowroom_solver::outcome::OptionFound;

use crate::support::ranked::{piece, ranked, ranked_briefly};

/// No layout has a size value more than this share above what is proven (method: a thousandth).
const PROVEN_WITHIN: f64 = 1e-3;

fn demo(name: &str) -> String {
    let path = format!("{}/../scenarios/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).unwrap()
}

/// The room with these rows among its pieces.
fn with_rows(room: &str, rows: &str) -> Outcome {
    ranked_briefly(&room.replacen("\npieces:\n", &format!("\npieces:\n{rows}"), 1))
}

fn by_key(outcome: &Outcome) -> BTreeMap<&str, &OptionFound> {
    outcome.options.iter().map(|option| (option.key.as_str(), option)).collect()
}

/// A row of two and two rows of one ask for the same where the size is fixed, and two rows of one are looked at in either
/// order.
fn a_pair_fits_as_two_do(room: &str, more: &str) {
    let row = |name: &str, count: u32| {
        format!("  - {{ kind: bookcase, name: {name}, count: {count}, width: 80 cm, depth: 30 cm{more} }}\n")
    };
    let room = demo(room);
    let pair = with_rows(&room, &row("books", 2));
    let two = with_rows(&room, &(row("books", 1) + &row("folios", 1)));
    let (pair_by_key, two_by_key) = (by_key(&pair), by_key(&two));
    assert_eq!(pair_by_key.keys().collect::<Vec<_>>(), two_by_key.keys().collect::<Vec<_>>());
    assert!(!pair_by_key.is_empty());
    for (key, one) in &pair_by_key {
        let other = two_by_key[key];
        assert_eq!(one.left_out.len(), other.left_out.len(), "{key}");
        let apart = (one.size_value - other.size_value).abs();
        assert!(!one.proven || !other.proven || apart <= PROVEN_WITHIN * other.size_value, "{key}: {apart} mm");
    }
    assert!(
        pair.work.programs < two.work.programs,
        "{} programs, not fewer than {}",
        pair.work.programs,
        two.work.programs
    );
}

#[test]
fn a_pair_of_bookcases_fits_as_two_bookcases_do() {
    a_pair_fits_as_two_do("open-side", "");
    a_pair_fits_as_two_do("oblique", "");
}

#[test]
fn a_pair_of_bookcases_that_may_be_left_out_fits_as_two_do() {
    a_pair_fits_as_two_do("which-hand", ", needed: false");
    a_pair_fits_as_two_do("wheelchair", ", needed: false");
}

/// Where one of a pair is left out it is the second.
#[test]
fn of_a_pair_the_first_stands() {
    let row = "  - { kind: bookcase, name: books, count: 2, width: 280 cm, depth: 50 cm, needed: false }\n";
    let outcome = with_rows(&demo("narrow"), row);
    let left_out = |option: &OptionFound| -> Vec<String> {
        option.left_out.iter().map(|left| left.name.clone()).filter(|name| name.starts_with("books")).collect()
    };
    let all: Vec<Vec<String>> = outcome.options.iter().map(left_out).collect();
    assert!(all.iter().any(|left| left.len() == 1), "{all:?}");
    assert!(all.iter().all(|left| left != &["books 1"]), "{all:?}");
}

/// A search that is cut short while it tries both still places the one that fits.
#[test]
fn of_a_pair_that_does_not_fit_one_stands_though_the_work_is_used_up() {
    let row = "  - { kind: bookcase, name: books, count: 2, width: 320 cm, depth: 50 cm, needed: false }\n";
    let outcome = with_rows(&demo("open-side"), row);
    let unproven = outcome.options.iter().filter(|option| !option.proven).count();
    assert!(unproven > 0, "the work allowed is enough");
    for option in &outcome.options {
        let left: Vec<&str> = option.left_out.iter().map(|left| left.name.as_str()).collect();
        assert!(!left.contains(&"books 1"), "{}: {left:?}", option.key);
        assert!(option.bound >= option.objective, "{}", option.key);
    }
}

/// Of two at one wall that look one way, the first is the left one as one faces them.
#[test]
fn of_a_pair_at_one_wall_the_first_is_the_left_one() {
    let outcome = ranked(&demo("pair-of-armchairs"));
    let mut met = 0;
    for option in &outcome.options {
        let [first, second] = ["armchair 1", "armchair 2"].map(|name| piece(option, name));
        let places: Vec<&str> = option.choices.second_seats.iter().map(|seat| seat.place.as_str()).collect();
        if places.iter().any(|place| *place != places[0])
            || (&first.at_wall, first.facing) != (&second.at_wall, second.facing)
        {
            continue;
        }
        let (sine, cosine) = (second.facing - 90.0).to_radians().sin_cos();
        let across = |corner: &Point| corner.x * cosine + corner.y * sine;
        let least = |corners: &Vec<Point>| corners.iter().map(across).fold(f64::INFINITY, f64::min);
        let [first, second] = [&first.parts[0], &second.parts[0]].map(least);
        // The right of one who sits there is the left of one who faces them.
        assert!(first >= second - 0.1, "{}: {first} and {second}", option.key);
        met += 1;
    }
    assert!(met > 0);
}
