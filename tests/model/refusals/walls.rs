//! What is wrong with walls and what they hold.

use super::{Case, case};
use crate::plain_room::{changed, with};

/// What is wrong with walls and what they hold.
pub(super) fn cases() -> Vec<Case> {
    let crossed = "units: m\nwalls:\n  - { start: [0, 0] }\n  - { start: [4, 3] }\n  - { start: [4, 0] }\n  - { start: [0, 3] }\npieces: [{ kind: sofa }]\n";
    let around = "units: m\nwalls:\n  - { start: [0, 0] }\n  - { start: [4, 0] }\n  - { start: [4, 3] }\n  - { start: [0, 3] }\npieces: [{ kind: sofa }]\n";
    let twice = "units: m\nwalls:\n  - { start: [0, 0] }\n  - { start: [4, 0] }\n  - { start: [4, 0] }\n  - { start: [4, -3] }\n  - { start: [0, -3] }\npieces: [{ kind: sofa }]\n";
    let mixed = "units: m\nwalls:\n  - { start: [0, 0] }\n  - { length: 4 }\n  - { start: [4, -3] }\npieces: [{ kind: sofa }]\n";
    let two = "units: m\nwalls:\n  - { length: 4 }\n  - { length: 4 }\npieces: [{ kind: sofa }]\n";
    vec![
        case(two.into(), ("too_few_walls", 3, None), &["2 walls", "3"], "every wall"),
        case(crossed.into(), ("walls_cross", 5, Some("wall 3")), &["wall 1", "wall 3"], "Check"),
        case(around.into(), ("runs_counter_clockwise", 3, None), &["counter-clockwise"], "opposite order"),
        case(twice.into(), ("wall_without_length", 4, Some("wall 2")), &["wall 2"], "start"),
        case(mixed.into(), ("mixed_walls", 4, Some("wall 2")), &["wall 2", "`start`"], "every wall"),
        case(
            changed(&[("units: cm", "units: mm"), ("at: 82", "at: 8")]),
            ("too_small", 4, None),
            &["0.18 m2", "2 m2"],
            "units",
        ),
        case(changed(&[("units: cm", "units: ft")]), ("too_large", 4, None), &["m2", "400 m2"], "units"),
        case(
            changed(&[("name: party wall\n    length: 486", "name: party wall\n    length: 436")]),
            ("does_not_close", 4, None),
            &["50 cm", "1 %"],
            "canal wall, party wall",
        ),
        case(
            changed(&[("length: 372\n    holds", "length: 372\n    corner: 94\n    holds")]),
            ("corners_do_not_add_up", 4, None),
            &["364", "360", "4 degrees"],
            "outside corners",
        ),
        case(
            changed(&[("length: 372\n    holds", "length: 372\n    corner: 0\n    holds")]),
            ("corner_out_of_range", 10, Some("stair wall")),
            &["stair wall", "0 degrees"],
            "inside angle",
        ),
        case(
            changed(&[("length: 486\n    holds", "length: 486\n    bearing: 361\n    holds")]),
            ("bearing_out_of_range", 6, Some("canal wall")),
            &["canal wall", "361"],
            "north",
        ),
        case(
            changed(&[
                ("length: 486\n    holds", "length: 486\n    bearing: 10\n    holds"),
                ("length: 372\n    holds", "length: 372\n    bearing: 100\n    holds"),
            ]),
            ("two_bearings", 11, Some("stair wall")),
            &["stair wall", "canal wall"],
            "one of the two",
        ),
        case(
            changed(&[("at: 82", "at: 282")]),
            ("item_past_wall_end", 7, Some("bay")),
            &["bay", "canal wall", "16 cm"],
            "`width`",
        ),
        case(
            changed(&[(
                "name: party wall\n    length: 486",
                "name: party wall\n    length: 486\n    holds:\n      - { kind: fireplace, at: 130, width: 160, depth: 40, opening: 170 }",
            )]),
            ("opening_past_breast", 15, Some("fireplace")),
            &["fireplace", "170 cm", "160 cm", "10 cm"],
            "chimney breast",
        ),
        case(
            changed(&[(
                "name: party wall",
                "name: party wall\n    ceiling_from: 240\n    ceiling_to: 250\n    ceiling_over: 150",
            )]),
            ("ceiling_not_falling", 14, Some("party wall")),
            &["party wall", "250 cm", "240 cm"],
            "less than `ceiling_from`",
        ),
        case(
            changed(&[("name: party wall", "name: party wall\n    ceiling_from: 240\n    ceiling_over: 150")]),
            ("missing_key", 12, Some("party wall")),
            &["party wall", "`ceiling_to`"],
            "at the wall",
        ),
        case(
            changed(&[("at: 82", "at: -4")]),
            ("item_past_wall_end", 7, Some("bay")),
            &["bay", "canal wall", "4 cm"],
            "`at`",
        ),
        case(
            changed(&[(
                "width: 220 }",
                "width: 220 }\n      - { kind: door, name: yard door, at: 290, width: 80, swings: slides }",
            )]),
            ("items_overlap", 8, Some("yard door")),
            &["yard door", "bay", "12 cm"],
            "`width`",
        ),
        case(
            changed(&[(
                "width: 220 }",
                "width: 220 }\n      - { kind: radiator, at: 310, width: 80, depth: 9, height: 60 }\n      - { kind: socket, at: 350 }",
            )]),
            ("items_overlap", 9, Some("socket")),
            &["socket", "radiator", "40 cm"],
            "`at`",
        ),
        case(
            changed(&[
                ("at: 20, width: 83, hinge: left", "at: 0, width: 83, hinge: left"),
                ("length: 486\n    holds", "length: 486\n    corner: 88\n    holds"),
                ("name: party wall\n    length: 486", "name: party wall\n    length: 486\n    corner: 88"),
                ("length: 372\n    holds", "length: 372\n    corner: 92\n    holds"),
                ("name: dining side\n    length: 372", "name: dining side\n    length: 372\n    corner: 92"),
            ]),
            ("swing_hits_wall", 13, Some("hall door")),
            &["hall door", "canal wall", "cm"],
            "`hinge`",
        ),
        case(
            changed(&[(
                "at: 20, width: 83, hinge: left, swings: in",
                "at: 20, width: 83, hinge: left, swings: in, opens_to: 180",
            )]),
            ("swing_hits_wall", 11, Some("hall door")),
            &["hall door", "180 degrees", "canal wall", "at about 103 degrees", "20 cm from its hinge"],
            "`opens_to: 103`",
        ),
        case(
            changed(&[("hinge: left, swings: in", "hinge: left, swings: in, opens_to: 75")]),
            ("opens_to_out_of_range", 11, Some("hall door")),
            &["hall door", "75", "90 and 180"],
            "where it rests",
        ),
        case(
            changed(&[("hinge: left, swings: in", "swings: pocket, opens_to: 120")]),
            ("key_of_another_kind", 11, Some("hall door")),
            &["hall door", "`opens_to`"],
            "leaf that swings",
        ),
        case(
            with("diagonals: [{ from: canal wal, to: party wall, length: 600 }]\n"),
            ("unknown_wall", 19, Some("canal wal")),
            &["`canal wal`"],
            "`canal wall`",
        ),
        case(
            with("diagonals: [{ from: canal wall, to: canal wall, length: 600 }]\n"),
            ("diagonal_to_itself", 19, Some("canal wall")),
            &["canal wall"],
            "two walls",
        ),
        case(
            with("fixed: [{ kind: pillar, corners: [[100,-100],[130,-100],[110,-110],[130,-130]] }]\n"),
            ("fixed_not_convex", 19, Some("pillar")),
            &["pillar"],
            "convex parts",
        ),
        case(
            with("fixed: [{ kind: step, corners: [[100,-100],[130,-100],[110,-110]] }]\n"),
            ("missing_key", 19, Some("step")),
            &["step", "`line`"],
            "both ends",
        ),
        case(
            with("fixed: [{ kind: pillar, line: [[100,-100],[130,-100]] }]\n"),
            ("key_of_another_kind", 19, Some("pillar")),
            &["pillar", "`line`"],
            "`kind: step`",
        ),
        case(
            with("fixed: [{ kind: step, line: [[100,-100],[230,-100]], use: 90 }]\n"),
            ("key_of_another_kind", 19, Some("step")),
            &["step", "`line`"],
            "`use`",
        ),
        case(
            with("fixed: [{ kind: step, line: [[100,-100],[105,-100]] }]\n"),
            ("too_small", 19, Some("step")),
            &["step", "5 cm"],
            "both ends",
        ),
        case(
            with("fixed: [{ kind: pillar, height: 200 }]\n"),
            ("missing_key", 19, Some("pillar")),
            &["pillar", "`corners`"],
            "convex",
        ),
        case(
            with("fixed: [{ kind: pillar, corners: [[100,-100],[130,-100],[110,-100]] }]\n"),
            ("fixed_without_area", 19, Some("pillar")),
            &["pillar"],
            "round",
        ),
    ]
}
