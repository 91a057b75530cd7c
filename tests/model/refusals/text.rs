//! What is wrong with the text, or with a key or value of it.

use super::{Case, case};
use crate::plain_room::{changed, with};

/// What is wrong with the text, or with a key or value of it.
pub(super) fn cases() -> Vec<Case> {
    vec![
        case(String::new(), ("empty_file", 0, None), &["empty"], "new"),
        case("# nothing\n---\n".into(), ("empty_file", 0, None), &["empty"], "new"),
        case("units: cm\0".into(), ("binary_file", 0, None), &["NUL"], "YAML"),
        case("#".repeat((1 << 20) + 1), ("file_too_large", 0, None), &["1048577", "1 MiB"], "one room"),
        case(changed(&[("units: cm", "units: [cm")]), ("not_yaml", 3, None), &["YAML"], "brackets"),
        case(with("---\nunits: m\n"), ("several_documents", 20, None), &["several documents"], "one room"),
        case("[".repeat(5000), ("too_much", 1, None), &["deeper"], "deeper"),
        case(changed(&[("units: cm", "units: cm\nunits: m")]), ("key_twice", 3, None), &["`units`", "twice"], "one"),
        case(
            changed(&[("length: 486\n    holds", "length: 486\n    length: 480\n    holds")]),
            ("key_twice", 6, Some("canal wall")),
            &["`length`", "canal wall"],
            "one",
        ),
        case(
            changed(&[("name: bay, at", "name: bay, sil: 80, at")]),
            ("unknown_key", 7, Some("bay")),
            &["`sil`", "bay"],
            "`sill`",
        ),
        case(
            with("way: [{ kind: stairs, width: 90, headroom: 200, pitch: 95 }]\n"),
            ("pitch_out_of_range", 19, Some("stairs")),
            &["95", "stairs"],
            "42",
        ),
        case(with("wishes: { wiew: 5 }\n"), ("unknown_key", 19, Some("wishes")), &["`wiew`"], "`view`"),
        case(
            with("clearances: { sofa_gap: 5 }\n"),
            ("unknown_key", 19, Some("clearances")),
            &["`sofa_gap`"],
            "walkway",
        ),
        case(
            changed(&[("kind: window", "kind: widow")]),
            ("unknown_kind", 7, Some("bay")),
            &["`widow`", "bay"],
            "`window`",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: cofee-table")]),
            ("unknown_kind", 18, Some("piece 2")),
            &["`cofee-table`", "piece 2"],
            "`coffee-table`",
        ),
        case(changed(&[("units: cm", "units: inches")]), ("unknown_unit", 2, None), &["`inches`"], "`in`"),
        case(
            changed(&[("length: 486\n    holds", "length: 4.86 metre\n    holds")]),
            ("unknown_unit", 5, Some("canal wall")),
            &["canal wall", "`metre`"],
            "`m`",
        ),
        case(
            changed(&[("hinge: left", "hinge: leftt")]),
            ("unknown_name", 11, Some("hall door")),
            &["`leftt`", "hall door", "hinge"],
            "`left`",
        ),
        case(
            with("clearances: { profile: snugg }\n"),
            ("unknown_name", 19, Some("clearances")),
            &["`snugg`", "profile"],
            "`snug`",
        ),
        case(changed(&[("units: cm\n", "")]), ("missing_key", 1, None), &["`units`"], "units"),
        case(
            changed(&[("hinge: left, ", "")]),
            ("missing_key", 11, Some("hall door")),
            &["hall door", "`hinge`"],
            "left or right",
        ),
        case(changed(&[("kind: window, ", "")]), ("missing_key", 7, Some("bay")), &["kind"], "window"),
        case(
            changed(&[("length: 486\n    holds", "holds")]),
            ("missing_key", 4, Some("canal wall")),
            &["canal wall", "`length`"],
            "start",
        ),
        case(changed(&[("at: 82, ", "at: , ")]), ("missing_value", 7, Some("bay")), &["`at`", "bay"], "value"),
        case(changed(&[("name: bay", "name: 12")]), ("wrong_type", 7, Some("window")), &["`name`", "`12`"], "quotes"),
        case(
            changed(&[("kind: coffee-table", "kind: coffee-table, needed: perhaps")]),
            ("wrong_type", 18, Some("coffee table")),
            &["`needed`", "`perhaps`"],
            "`true`",
        ),
        case(
            changed(&[("kind: coffee-table", "kind: coffee-table, count: -1")]),
            ("wrong_type", 18, Some("coffee table")),
            &["`count`", "`-1`"],
            "whole number",
        ),
        case(
            with("fixed: [{ kind: pillar, corners: [[1, 2, 3]] }]\n"),
            ("wrong_count", 19, Some("pillar")),
            &["3 entries", "pillar"],
            "[x, y]",
        ),
    ]
}
