//! Every fault: its code, its line, the item in the room's own words, the figure, and a remedy.

use std::collections::BTreeSet;

use crate::plain_room::{changed, faults, with};

/// A text with one fault, and what is told of it.
struct Case {
    text: String,
    code: &'static str,
    line: usize,
    item: Option<&'static str>,
    /// Words of the message: the item and the figure.
    says: &'static [&'static str],
    /// A word of the remedy.
    remedy: &'static str,
}

fn case(
    text: String,
    (code, line, item): (&'static str, usize, Option<&'static str>),
    says: &'static [&'static str],
    remedy: &'static str,
) -> Case {
    Case { text, code, line, item, says, remedy }
}

/// What is wrong with the text, or with a key or value of it.
fn cases_of_text() -> Vec<Case> {
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
            changed(&[("kind: coffee-table", "kind: coffee-table, needed: yes")]),
            ("wrong_type", 18, Some("coffee table")),
            &["`needed`", "`yes`"],
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

/// What is wrong with a length, a size or a figure.
fn cases_of_figures() -> Vec<Case> {
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

/// What is wrong with walls and what they hold.
fn cases_of_walls() -> Vec<Case> {
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
            with("fixed: [{ kind: pillar, corners: [[100,-100],[130,-100],[110,-100]] }]\n"),
            ("fixed_without_area", 19, Some("pillar")),
            &["pillar"],
            "round",
        ),
    ]
}

/// What is wrong with the sizes of a corner sofa.
fn cases_of_corner_sofas() -> Vec<Case> {
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
    ]
}

/// What is wrong with names and numbers of things.
fn cases_of_names() -> Vec<Case> {
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

fn cases() -> Vec<Case> {
    let families = [cases_of_text(), cases_of_figures(), cases_of_walls(), cases_of_corner_sofas(), cases_of_names()];
    families.into_iter().flatten().collect()
}

#[test]
fn each_fault_says_what_where_how_much_and_what_to_do() {
    let wrong: Vec<String> = cases().iter().filter_map(|case| case.wrong()).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

impl Case {
    /// What is told otherwise than the case says.
    fn wrong(&self) -> Option<String> {
        let told = faults(&self.text);
        let [fault] = told.as_slice() else {
            return Some(format!("{}: one fault alone, not {told:#?}", self.code));
        };
        let line = fault.place.map_or(0, |place| place.line);
        let sound = (fault.code, line, fault.item.as_deref()) == (self.code, self.line, self.item)
            && self.says.iter().all(|word| fault.message.contains(word))
            && fault.remedy.contains(self.remedy);
        (!sound).then(|| {
            let wanted = (self.code, self.line, self.item, self.says, self.remedy);
            format!("wanted {wanted:?}\ntold {fault:?}")
        })
    }
}

#[test]
fn every_code_that_a_scenario_can_have_is_shown_above() {
    // Of a table alone; what serde alone can find; what no file of real numbers reaches; of what is asked beside the file.
    let beside = ["not_a_setting", "unknown_setting", "not_a_choice", "unknown_choice"];
    let elsewhere = ["weight_out_of_range", "not_understood", "no_outline_fits"].into_iter().chain(beside);
    let shown: BTreeSet<&str> = cases().iter().map(|case| case.code).chain(elsewhere).collect();
    let listed: BTreeSet<&str> = elbowroom_model::Fault::CODES.into_iter().collect();
    assert_eq!(shown, listed);
}

#[test]
fn all_faults_of_a_file_are_told_at_once_and_in_its_order() {
    let text = changed(&[
        ("units: cm", "units: cmm"),
        ("at: 82", "at: x"),
        ("hinge: left", "hinge: middle"),
        ("180..240", "240..180"),
        ("kind: coffee-table", "kind: coffee-tabel, with: 3"),
    ]) + "wishes: { view: 7 }\nclearances: { pasage: 60 }\n";
    let told: Vec<(&str, usize)> =
        faults(&text).iter().map(|fault| (fault.code, fault.place.map_or(0, |place| place.line))).collect();
    let expected = [
        ("unknown_unit", 2),
        ("not_a_length", 7),
        ("unknown_name", 11),
        ("range_backward", 17),
        ("unknown_kind", 18),
        ("unknown_key", 18),
        ("wish_out_of_range", 19),
        ("unknown_key", 20),
    ];
    assert_eq!(told, expected);
}
