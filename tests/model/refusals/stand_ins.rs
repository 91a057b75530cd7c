//! What is wrong with what may stand in.

use super::{Case, case};
use crate::plain_room::changed;

/// What is wrong with what may stand in.
pub(super) fn cases() -> Vec<Case> {
    let sofa = |keys: &str| changed(&[("kind: sofa, width: 180..240", &format!("kind: sofa, {keys}"))]);
    let told = |code| (code, 17, Some("sofa"));
    vec![
        case(
            sofa("width: 200, depth: 90, place: { wall: party wall, from: 60 }, hold: true, instead: [armchair]"),
            told("stand_in_for_held"),
            &["sofa", "held"],
            "`instead`",
        ),
        case(sofa("instead: [bookcase]"), told("stand_in_no_seat"), &["bookcase", "sofa"], "armchair"),
        case(sofa("instead: [sofa]"), told("stand_in_of_its_kind"), &["sofa"], "`instead`"),
        case(sofa("instead: [armchair, armchair]"), told("stand_in_twice"), &["armchair", "sofa"], "once"),
        case(
            changed(&[("kind: coffee-table", "kind: coffee-table, instead: [open-floor]")]),
            ("stand_in_of_open_floor", 18, Some("coffee table")),
            &["coffee table"],
            "open-floor",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: open-floor, width: 90, depth: 90, instead: [rug]")]),
            ("stand_in_of_open_floor", 18, Some("open floor")),
            &["open floor"],
            "`instead`",
        ),
    ]
}
