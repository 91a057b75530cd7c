//! Sizes: by the scenario where it says, by the table where it does not.

use elbowroom_model::{Clearance, Hand, Piece, PieceKind, SizeRange, scenario};

use crate::plain_room::{brief, changed, with};

/// The second piece of the plain room with this row in place of the coffee table.
fn piece(row: &str) -> Piece {
    brief(&changed(&[("kind: coffee-table", row)])).pieces[1].clone()
}

fn ends(range: SizeRange) -> [f64; 3] {
    [range.least, range.usual, range.most]
}

#[test]
fn a_row_without_sizes_takes_the_tables() {
    let table = piece("kind: coffee-table");
    assert_eq!(ends(table.width), [600.0, 1000.0, 1500.0]);
    assert_eq!(ends(table.depth), [400.0, 600.0, 900.0]);
    assert_eq!((table.height, table.weight, table.needed, table.square), (430.0, 1.0, true, false));
}

#[test]
fn a_missing_end_is_the_tables_and_never_past_the_given_one() {
    assert_eq!(ends(piece("kind: sofa, name: s, width: ..260").width), [1500.0, 2100.0, 2600.0]);
    assert_eq!(ends(piece("kind: sofa, name: s, width: 200..").width), [2000.0, 2100.0, 2972.0]);
    assert_eq!(ends(piece("kind: sofa, name: s, width: ..120").width), [1200.0, 1200.0, 1200.0]);
    assert_eq!(ends(piece("kind: sofa, name: s, width: 320..").width), [3200.0, 3200.0, 3200.0]);
}

#[test]
fn what_is_usual_is_held_between_the_ends_and_one_length_is_fixed() {
    assert_eq!(ends(piece("kind: sofa, name: s, width: 220..260").width), [2200.0, 2200.0, 2600.0]);
    assert_eq!(ends(piece("kind: sofa, name: s, width: 160..180").width), [1600.0, 1800.0, 1800.0]);
    assert_eq!(ends(piece("kind: sofa, name: s, width: 7 ft").width), [2133.6; 3]);
}

#[test]
fn a_media_unit_is_as_wide_as_its_screen() {
    // 55 in across at 16:9: 1217.6 mm wide (D: 55 x 25.4 x 16 / sqrt 337).
    let unit = piece("kind: media-unit, screen: 55 in");
    assert!((unit.width.least - 1217.6).abs() < 0.05, "{:?}", unit.width);
    assert_eq!((unit.width.usual, unit.width.most), (1600.0, 2400.0));
    let wide = piece("kind: media-unit, screen: 120 in");
    assert_eq!(wide.width.least, wide.width.most);
    assert_eq!(ends(piece("kind: media-unit, screen: 55 in, width: 100..110").width), [1000.0, 1100.0, 1100.0]);
}

#[test]
fn rugs_come_in_steps_unless_they_are_given_a_size() {
    // Rugs of 5 x 8, 8 x 10, 9 x 12 and 10 x 14 ft, the long side along the back (C).
    let rug = piece("kind: rug");
    let feet: Vec<(f64, f64)> = rug.steps.iter().map(|step| (step.width / 304.8, step.depth / 304.8)).collect();
    let steps = [(8.0, 5.0), (10.0, 8.0), (12.0, 9.0), (14.0, 10.0)];
    for (found, step) in feet.iter().zip(steps) {
        assert!((found.0 - step.0).abs() < 1e-9 && (found.1 - step.1).abs() < 1e-9, "{feet:?}");
    }
    assert_eq!((feet.len(), rug.height), (4, 0.0));
    let given = piece("kind: rug, width: 200..300");
    assert_eq!((given.steps.len(), given.width.least), (0, 2000.0));
}

#[test]
fn a_dining_table_takes_the_size_that_its_seats_ask_for() {
    // Sizes by seats: drawing-office metric list (P).
    let table = |row: &str| piece(&format!("kind: dining-table{row}"));
    let four = table(", seats: 4");
    assert_eq!((ends(four.width), ends(four.depth)), ([1350.0; 3], [750.0; 3]));
    let five = table(", seats: 5");
    assert_eq!((five.width.least, five.depth.most, five.seats), (1500.0, 900.0, Some(5)));
    assert_eq!(table("").steps.len(), 4);
    assert_eq!(table(", seats: 4, width: 120..140").width.least, 1200.0);
}

#[test]
fn lamps_and_side_tables_are_square_where_they_have_one_size() {
    let lamp = piece("kind: floor-lamp");
    assert!(lamp.square && lamp.width == lamp.depth);
    let side = piece("kind: side-table, width: 40..50");
    assert!(side.square);
    assert_eq!(ends(side.depth), [400.0, 450.0, 500.0]);
    let oblong = piece("kind: side-table, width: 40..50, depth: 30");
    assert!(!oblong.square);
    assert_eq!(oblong.depth, SizeRange::fixed(300.0));
}

#[test]
fn off_wall_gaps_come_from_the_clearances_and_from_the_row() {
    let text = "clearances: { seat_off_wall: 7, storage_off_wall: 3, media_off_wall: 9 }\n";
    let rows = [
        ("sofa", 70.0),
        ("corner-sofa", 70.0),
        ("armchair", 70.0),
        ("bookcase", 30.0),
        ("sideboard", 30.0),
        ("desk", 30.0),
    ];
    let others = [
        ("media-unit", 90.0),
        ("coffee-table", 0.0),
        ("dining-table", 0.0),
        ("floor-lamp", 0.0),
        ("rug", 0.0),
        ("side-table", 0.0),
    ];
    for (kind, gap) in rows.into_iter().chain(others) {
        let text = changed(&[("kind: coffee-table", &format!("kind: {kind}, name: it"))]) + text;
        assert_eq!(brief(&text).pieces[1].off_wall, gap, "{kind}");
    }
    assert_eq!(piece("kind: armchair, off_wall: 30").off_wall, 300.0);
    assert_eq!(piece("kind: armchair, off_wall: 0").off_wall, 0.0);
}

#[test]
fn a_corner_sofa_has_the_hands_it_may_have() {
    assert_eq!(piece("kind: corner-sofa").hands, [Hand::Left, Hand::Right]);
    assert_eq!(piece("kind: corner-sofa, hand: right, return: 160..").hands, [Hand::Right]);
    assert_eq!(piece("kind: corner-sofa, return: 160..").return_length.unwrap().least, 1600.0);
    assert_eq!(piece("kind: armchair").hands, []);
}

/// Each run is told by its whole length, so what is left of it beyond the other's depth must be worth its name; ranges are
/// held to that, and it is said.
#[test]
fn the_runs_of_a_corner_sofa_are_longer_than_the_other_is_deep() {
    let held = |sizes: &str| {
        let brief = brief(&changed(&[("kind: coffee-table", &format!("kind: corner-sofa{sizes}"))]));
        let piece = &brief.pieces[1];
        let told = brief.notices.iter().filter(|notice| notice.text.contains("corner sofa")).count();
        let ends = |range: SizeRange| (range.least, range.most);
        ([ends(piece.width), ends(piece.return_length.unwrap()), ends(piece.depth)], told)
    };
    let table = (2000.0, 3000.0);
    // Sound as they are, to the millimetre.
    assert_eq!(held(", return: 150..230"), ([table, (1500.0, 2300.0), (850.0, 1100.0)], 0));
    assert_eq!(held(", return: 120, depth: 90"), ([table, (1200.0, 1200.0), (900.0, 900.0)], 0));
    assert_eq!(held(", return: 3 ft, depth: 24 3/16 in, width: 2 m").1, 0, "36 in and 24 3/16 in are 300.04 mm apart");
    // 300 mm more than the least depth of the table, 850; the most depth of what the longest return leaves.
    assert_eq!(held(", return: 100..150"), ([table, (1150.0, 1500.0), (850.0, 1100.0)], 1));
    assert_eq!(held(", return: ..120"), ([table, (1200.0, 1200.0), (850.0, 900.0)], 1));
    // Whatever is chosen of a wide range, no run is shorter than the other is deep.
    assert_eq!(held(", return: 80..230, depth: 60..140"), ([table, (1400.0, 2300.0), (600.0, 1400.0)], 1));
}

#[test]
fn every_kind_has_sizes_that_run_forward_and_a_weight() {
    for &kind in PieceKind::ALL {
        let piece = piece(&format!("kind: {}, name: it", kind.key()));
        for dimension in piece.dimensions() {
            let [least, usual, most] = ends(piece.range(dimension).unwrap());
            assert!(0.0 < least && least <= usual && usual <= most, "{kind:?} {dimension:?}");
        }
        assert!(piece.weight > 0.0, "{kind:?}");
        assert_eq!(piece.return_length.is_some(), kind == PieceKind::CornerSofa);
    }
}

#[test]
fn a_users_table_goes_over_the_built_in_one() {
    let table = "\
units: cm
sizes:
  sofa: { width: { least: 140, usual: 190, most: 250 }, weight: 5 }
  rug: { steps: [{ width: 200, depth: 140 }] }
clearances:
  passage: { easy: 70, snug: { figure: 20 in, tag: C, source: our own doorway } }
";
    let text = changed(&[("width: 180..240", "depth: 90"), ("kind: coffee-table", "kind: rug")]);
    let brief = scenario::read(&text, Some(table)).unwrap();
    assert_eq!(ends(brief.pieces[0].width), [1400.0, 1900.0, 2500.0]);
    assert_eq!(brief.pieces[0].weight, 5.0);
    assert_eq!(brief.pieces[1].steps.len(), 1);
    assert_eq!(brief.rules.get(Clearance::Passage), 700.0);
    let snug = scenario::read(&(text + "clearances: { profile: snug }\n"), Some(table)).unwrap();
    assert_eq!(snug.rules.get(Clearance::Passage), 508.0);
    assert_eq!(snug.rules.figure(Clearance::Passage).source, "(C) our own doorway");
}

#[test]
fn the_faults_of_a_table_are_told_as_the_tables() {
    let codes = |table: &str| {
        let faults = scenario::read(&with(""), Some(table)).unwrap_err();
        assert!(
            faults.iter().all(|fault| fault.message.starts_with("In the table") && fault.place.is_none()),
            "{faults:#?}"
        );
        faults.iter().map(|fault| fault.code).collect::<Vec<_>>()
    };
    assert_eq!(codes("sizes: { soffa: { weight: 3 } }"), ["unknown_key"]);
    assert_eq!(codes("sizes: { sofa: { weight: -3 } }"), ["weight_out_of_range"]);
    assert_eq!(codes("sizes: { sofa: { width: { least: 400 in } } }"), ["range_backward"]);
    assert_eq!(codes("sizes: { corner-sofa: { return: { least: 400, usual: 900, most: 1000 } } }"), ["run_too_short"]);
    assert_eq!(codes("clearances: { passage: { easy: wide } }"), ["not_a_length"]);
    assert_eq!(codes(""), ["empty_file"]);
}
