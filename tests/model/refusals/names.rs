//! What is wrong with names and numbers of things.

use super::{Case, case};
use crate::plain_room::{changed, with};

/// What is wrong with names and numbers of things.
pub(super) fn cases() -> Vec<Case> {
    let walls = format!("units: m\nwalls:\n{}pieces: [{{ kind: sofa }}]\n", "  - { length: 1 }\n".repeat(65));
    let sockets =
        changed(&[("width: 220 }", &format!("width: 220 }}{}", "\n      - { kind: socket, at: 1 }".repeat(63)))]);
    vec![
        case(walls, ("too_many", 3, None), &["65 walls", "1 more", "64"], "64"),
        case(sockets, ("too_many", 4, None), &["65 items", "1 more", "64"], "64"),
        case(
            changed(&[("kind: coffee-table", "kind: armchair, count: 4294967295")]),
            ("too_many", 17, None),
            &["4294967296 pieces", "24"],
            "24",
        ),
        case(
            changed(&[("kind: sofa", "kind: rug"), ("180..240", "180..240, name: seat")]),
            ("no_seat", 17, None),
            &["no seat"],
            "sofa",
        ),
        case(changed(&[("name: stair wall", "name: bay")]), ("name_twice", 7, Some("bay")), &["`bay`"], "else"),
        case(
            changed(&[("name: bay", "name: wall 4"), ("  - name: dining side\n    length: 372", "  - length: 372")]),
            ("name_twice", 7, Some("wall 4")),
            &["`wall 4`", "default"],
            "else",
        ),
        case(changed(&[("name: bay", "name: \" \"")]), ("empty_name", 7, None), &["empty"], "leave"),
        case(
            changed(&[("name: bay", "name: \"b\\e[2Jy\"")]),
            ("control_character", 7, Some("b\u{fffd}[2Jy")),
            &["control"],
            "plain",
        ),
        case(
            changed(&[("leads_to: entrance", "leads_to: \"a\\tb\"")]),
            ("control_character", 11, Some("hall door")),
            &["hall door"],
            "entrance",
        ),
        case(
            changed(&[("name: Plain room", "name: \"Plain\\u202e room\"")]),
            ("control_character", 1, None),
            &["room"],
            "plain",
        ),
        case(
            with("fixed: [{ kind: \"a\\u0007\", name: post, corners: [[100,-100],[130,-100],[110,-110]] }]\n"),
            ("control_character", 19, Some("post")),
            &["post"],
            "plain",
        ),
    ]
}
