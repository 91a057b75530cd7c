//! Pieces that are alike are looked at in one order only; that costs no layout.

use std::collections::BTreeMap;

use elbowroom_model::Point;
use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, OptionPiece, RankedOption};
use elbowroom_solver::refusal::{Change, Lever, Why};

use crate::scenarios::room as demo_room;
use crate::support::checker::plane::apart;
use crate::support::ranked::{brief_of, left_out, piece, ranked, ranked_brief, ranked_briefly};

/// No plan costs less by more than this, or this share, than one that is proven (composition: 25, or a hundredth).
const PROVEN_WITHIN: f64 = 25.0;
const PROVEN_SHARE: f64 = 1e-2;

/// The room with these rows among its pieces.
fn with_rows(room: &str, rows: &str) -> Answer {
    ranked_briefly(&room.replacen("\npieces:\n", &format!("\npieces:\n{rows}"), 1))
}

fn by_key(answer: &Answer) -> BTreeMap<&str, &RankedOption> {
    answer.options.iter().map(|option| (option.key.as_str(), option)).collect()
}

/// What was not decided within the work allowed.
fn undecided(answer: &Answer) -> Vec<&str> {
    let refused = answer.refused.iter().filter(|refusal| refusal.why == Why::NotDecided);
    refused.map(|refusal| refusal.key.as_str()).collect()
}

/// A row of two and two rows of one ask for the same where the size is fixed, and two rows of one are looked at in either
/// order.
fn a_pair_fits_as_two_do(room: &str, more: &str) {
    let row = |name: &str, count: u32| {
        format!("  - {{ kind: bookcase, name: {name}, count: {count}, width: 80 cm, depth: 30 cm{more} }}\n")
    };
    let room = demo_room(room);
    let pair = with_rows(&room, &row("books", 2));
    let two = with_rows(&room, &(row("books", 1) + &row("folios", 1)));
    let (mut pair_by_key, mut two_by_key) = (by_key(&pair), by_key(&two));
    // What one of the searches did not come to the end of says nothing of the other.
    let undecided = [undecided(&pair), undecided(&two)].concat();
    pair_by_key.retain(|key, _| !undecided.contains(key));
    two_by_key.retain(|key, _| !undecided.contains(key));
    assert_eq!(pair_by_key.keys().collect::<Vec<_>>(), two_by_key.keys().collect::<Vec<_>>());
    assert!(pair_by_key.len() > undecided.len());
    for (key, one) in &pair_by_key {
        let other = two_by_key[key];
        let proven = one.planned.proven && other.planned.proven;
        // A hundredth of a plan that eases rules is more than a piece is worth.
        let settles_pieces = proven && one.eased.is_empty();
        assert!(!settles_pieces || one.layout.left_out.len() == other.layout.left_out.len(), "{key}");
        let apart = (one.planned.value - other.planned.value).abs();
        let within = PROVEN_WITHIN.max(PROVEN_SHARE * other.planned.value);
        assert!(!proven || apart <= within, "{key}: {apart} of {}", other.planned.value);
    }
    // What need not stand is added one by one, to what may be another plan, and what bars ways is learned as one comes to it: a
    // few programs more are no other order.
    let most = two.work.programs * 11 / 10;
    assert!(
        !undecided.is_empty() || pair.work.programs < most,
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
    let answer = with_rows(&demo_room("narrow"), row);
    let books = |option: &RankedOption| -> Vec<&str> {
        left_out(&answer, option).into_iter().filter(|name| name.starts_with("books")).collect()
    };
    let all: Vec<Vec<&str>> = answer.options.iter().map(books).collect();
    assert!(all.iter().any(|left| left.len() == 1), "{all:?}");
    assert!(all.iter().all(|left| left != &["books 1"]), "{all:?}");
}

/// A search that is cut short while it tries both still places the one that fits.
#[test]
fn of_a_pair_that_does_not_fit_one_stands_though_the_work_is_used_up() {
    let row = "  - { kind: bookcase, name: books, count: 2, width: 320 cm, depth: 50 cm, needed: false }\n";
    let text = demo_room("open-side").replacen("\npieces:\n", &format!("\npieces:\n{row}"), 1);
    let (much, little) =
        (ranked_briefly(&text), ranked_brief(&brief_of(&text), Limits { nodes: 120, shown: 0, ..Limits::default() }));
    let much_by_key = by_key(&much);
    let mut met = 0;
    for option in &little.options {
        let left = left_out(&little, option);
        assert!(left.contains(&"books 2"), "{}: both fit", option.key);
        let best = much_by_key[option.key.as_str()];
        assert!(best.planned.value >= option.planned.bound - 0.01, "{}", option.key);
        // What is eased counts for more than any bookcase.
        let is_eased = !option.layout.eased.is_empty();
        if option.planned.proven || is_eased || left_out(&much, best).contains(&"books 1") {
            continue;
        }
        assert!(!left.contains(&"books 1"), "{}: {left:?}", option.key);
        met += 1;
    }
    assert!(met > 0, "the work allowed is enough");
}

/// Of two at one wall that look one way, the first is the left one as one faces them.
#[test]
fn of_a_pair_at_one_wall_the_first_is_the_left_one() {
    let answer = ranked(&demo_room("pair-of-armchairs"));
    let mut met = 0;
    for option in &answer.options {
        let [first, second] = ["armchair 1", "armchair 2"].map(|name| piece(&answer, option, name));
        let seats = option.choices.seats();
        let stands = |one: OptionPiece<'_>| (one.placed.at_wall, one.facing());
        if seats.iter().any(|seat| seat.place != seats[0].place) || stands(first) != stands(second) {
            continue;
        }
        let (sine, cosine) = (second.facing() - 90.0).to_radians().sin_cos();
        let across = |corner: &Point| corner.x * cosine + corner.y * sine;
        let least = |corners: &Vec<Point>| corners.iter().map(across).fold(f64::INFINITY, f64::min);
        let [first, second] = [&first.main(), &second.main()].map(least);
        // The right of one who sits there is the left of one who faces them.
        assert!(first >= second - 0.1, "{}: {first} and {second}", option.key);
        met += 1;
    }
    assert!(met > 0);
}

/// Where a row stands in the file is nothing to what would help.
#[test]
fn leaving_out_the_first_of_a_pair_leaves_the_second() {
    let walls = "units: cm\nwalls:\n  - { name: wa, length: 310 }\n  - { name: wb, length: 260 }\n  - { name: wc, length: 310, \
                 holds: [ { kind: door, at: 20, width: 85, hinge: left, swings: in, leads_to: entrance } ] }\n  - { name: wd, \
                 length: 260 }\npieces:\n";
    let big = "  - { kind: bookcase, name: big, count: 2, width: 210..240, depth: 60..70 }\n";
    let sofa = "  - { kind: sofa, width: 190..240 }\n";
    let told = |rows: [&str; 2]| -> Vec<(usize, Vec<(String, f64)>)> {
        let answer = ranked_briefly(&format!("{walls}{}{}", rows[0], rows[1]));
        let what = |lever: Lever| match lever {
            Lever::Least(piece, dimension) | Lever::Raised(piece, dimension) | Lever::GetsIn(piece, dimension) => {
                format!("{} {}", answer.brief.piece_name(piece), dimension.key())
            }
            Lever::LeaveOut(piece) | Lever::Hang(piece, _) => answer.brief.piece_name(piece).to_owned(),
            Lever::Clearance(rule) => rule.key().to_owned(),
            Lever::Wall(wall) => answer.brief.room.wall_name(wall).to_owned(),
            Lever::Only(_) | Lever::Exclude(_) => String::new(),
        };
        let changes = |changes: &[Change]| changes.iter().map(|change| (what(change.lever), change.to)).collect();
        answer.remedies.iter().map(|remedy| (remedy.options, changes(&remedy.changes))).collect()
    };
    let first = told([big, sofa]);
    assert!(first.contains(&(4, vec![("big 1".to_owned(), 0.0)])), "{first:?}");
    assert_eq!(first, told([sofa, big]));
}

/// A lamp stands within arm's reach of a seat that stands (method: beside a seat), though armchairs may be left out.
#[test]
fn what_stands_by_a_seat_stands_by_one_that_is_there() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/about-a-post.yaml");
    let answer = ranked_briefly(&std::fs::read_to_string(path).unwrap());
    let is_out = |option: &RankedOption| left_out(&answer, option).iter().any(|name| name.starts_with("armchair"));
    assert!(answer.options.iter().any(is_out));
    let mut met = 0;
    for option in &answer.options {
        let pieces = || option.pieces(&answer.brief);
        let seats: Vec<Vec<Point>> =
            pieces().filter(|one| one.piece.kind.is_seat()).flat_map(|one| one.parts()).collect();
        for lamp in pieces().filter(|one| one.piece.name.starts_with("lamp")) {
            let plain = |part: &Vec<Point>| part.iter().map(|corner| [corner.x, corner.y]).collect::<Vec<_>>();
            let stands = plain(&lamp.main());
            let reach = seats.iter().map(|part| apart(&stands, &plain(part)));
            assert!(reach.fold(f64::INFINITY, f64::min) <= ARM, "{}: {}", option.key, lamp.piece.name);
            met += 1;
        }
    }
    assert!(met > 0);
}

/// As far as a lamp stands from the seat it lights at most, mm (a foot), and what rounding may add.
const ARM: f64 = 305.0;
