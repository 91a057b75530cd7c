//! What is wrong with a length, a size or a figure.

use super::{Case, case};
use crate::plain_room::{changed, with};

/// What is wrong with a length, a size or a figure.
pub(super) fn cases() -> Vec<Case> {
    let sofa = |width: &str| changed(&[("width: 180..240", &format!("width: {width}"))]);
    vec![
        case(
            sofa("240..180"),
            ("range_backward", 17, Some("sofa")),
            &["sofa", "240 cm", "180 cm", "60 cm"],
            "smaller end first",
        ),
        case(sofa("6..7 ft 6 in"), ("compound_in_range", 17, Some("sofa")), &["sofa", "6..7 ft 6 in"], "one unit"),
        case(sofa("0"), ("not_positive", 17, Some("sofa")), &["width of sofa", "0"], "above 0"),
        case(sofa("-3..200"), ("not_positive", 17, Some("sofa")), &["width of sofa", "-3..200"], "above 0"),
        case(sofa(".nan"), ("not_finite", 17, Some("sofa")), &["width of sofa"], "10 km"),
        case(sofa("1e300"), ("not_finite", 17, Some("sofa")), &["width of sofa"], "10 km"),
        case(sofa("wide"), ("not_a_length", 17, Some("sofa")), &["sofa", "`wide`"], "3.52 m"),
        case(sofa("180-240"), ("not_a_length", 17, Some("sofa")), &["sofa", "180-240", "dash"], "200..260"),
        case(sofa("\"1,8 m\""), ("not_a_length", 17, Some("sofa")), &["sofa", "1,8 m"], "`1.8 m`"),
        case(sofa("180 cm..240"), ("not_a_length", 17, Some("sofa")), &["sofa", "lower end"], "200..260 cm"),
        case(changed(&[("at: 82", "at: 82..90")]), ("not_a_length", 7, Some("bay")), &["bay", "82..90"], "one length"),
        case(
            changed(&[("length: 486\n    holds", "length: .inf\n    holds")]),
            ("not_finite", 5, Some("canal wall")),
            &["canal wall"],
            "finite",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: armchair, count: 0")]),
            ("not_positive", 18, Some("armchair")),
            &["armchair", "0"],
            "Leave",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: coffee-table, height: 0")]),
            ("not_positive", 18, Some("coffee table")),
            &["height of coffee table", "0"],
            "above 0",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: media-unit, screen: 43")]),
            ("screen_in_doubt", 18, Some("media unit")),
            &["media unit", "43 cm (16.93 in)"],
            "`43 in` if it is 43 inches",
        ),
        case(
            with("clearances: { passage: -2 }\n"),
            ("not_positive", 19, Some("clearances")),
            &["`passage`", "-2"],
            "0 or more",
        ),
        case(
            with("wishes: { view: 5.5 }\n"),
            ("wish_out_of_range", 19, Some("view")),
            &["`view`", "5.5", "0 to 5"],
            "0",
        ),
        case(with("wishes: { view: .nan }\n"), ("wish_out_of_range", 19, Some("view")), &["`view`", "NaN"], "0"),
        case(with("latitude: 91\n"), ("latitude_out_of_range", 19, None), &["91", "90"], "north"),
        case(
            with("measured_within: 30\n"),
            ("measured_within_too_large", 19, None),
            &["30 cm", "25 cm"],
            "measure again",
        ),
        case(
            changed(&[("width: 220", "width: 220, sill: 230, head: 215")]),
            ("sill_above_head", 7, Some("bay")),
            &["bay", "230 cm", "215 cm", "15 cm"],
            "sill",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: dining-table, seats: 9")]),
            ("too_many_seats", 18, Some("dining table")),
            &["dining table", "9", "8"],
            "width and depth",
        ),
        case(
            changed(&[("kind: sofa", "kind: sofa, screen: 55 in")]),
            ("key_of_another_kind", 17, Some("sofa")),
            &["`screen`", "sofa"],
            "media-unit",
        ),
    ]
}

/// What is wrong with the sizes of a corner sofa.
pub(super) fn cases_of_corner_sofas() -> Vec<Case> {
    let sofa = |sizes: &str| changed(&[("kind: sofa, width: 180..240", &format!("kind: corner-sofa{sizes}"))]);
    vec![
        case(
            sofa(", return: 95, depth: 90"),
            ("run_too_short", 17, Some("corner sofa")),
            &["return of corner sofa is 95 cm,", "5 cm of it beyond the main run, 90 cm deep", "the corner included"],
            "give that and the depth, 185 cm;",
        ),
        case(
            sofa(", width: 70..100"),
            ("run_too_short", 17, Some("corner sofa")),
            &["width of corner sofa is at most 100 cm", "15 cm of it", "at least 85 cm deep"],
            "155 cm to 210 cm;",
        ),
        case(
            sofa(", depth: 320"),
            ("run_too_short", 17, Some("corner sofa")),
            &["return", "nothing of it", "320 cm deep"],
            "check both",
        ),
        case(
            sofa(", second_return: 95, depth: 90"),
            ("run_too_short", 17, Some("corner sofa")),
            &["second_return of corner sofa is 95 cm,", "5 cm of it beyond the main run, 90 cm deep"],
            "give that and the depth, 185 cm;",
        ),
        case(
            sofa(", second_return: 170, width: 240, depth: 95"),
            ("run_too_short", 17, Some("corner sofa")),
            &["width of corner sofa is 240 cm", "50 cm of it between the returns, together 190 cm deep"],
            "a width of 250 cm or more",
        ),
    ]
}

/// What is wrong with two sofas that are to be a pair.
pub(super) fn cases_of_pairs() -> Vec<Case> {
    let sofa = |row: &str| changed(&[("kind: sofa, width: 180..240", &format!("kind: sofa, {row}"))]);
    vec![
        case(
            sofa("count: 3, pair: corner"),
            ("pair_not_of_two", 17, Some("sofa 1")),
            &["`pair`", "sofa 1", "of 3"],
            "`count: 2`",
        ),
        case(
            sofa("count: 2, pair: facing, needed: false"),
            ("pair_left_out", 17, Some("sofa 1")),
            &["`pair: facing`", "`needed: false`"],
            "`pair: either`",
        ),
    ]
}
