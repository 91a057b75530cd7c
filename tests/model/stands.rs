//! What plans aim at, where pieces stand in the room as it is, and which fixed things are used.

use elbowroom_model::{AimedSizes, Brief, Dimension, Piece, PieceAim, Point, SizesAim, StandsAt, WallId, scenario};

use crate::plain_room::{brief, changed, with};

/// The sofa of the plain room with these keys.
fn sofa(keys: &str) -> Piece {
    brief(&changed(&[("kind: sofa, width: 180..240", &format!("kind: sofa, {keys}"))])).pieces[0].clone()
}

fn near(one: Point, other: Point) -> bool {
    (one - other).norm() < 1e-6
}

#[test]
fn a_file_that_says_nothing_aims_at_what_is_usual() {
    let plain = brief(&with(""));
    assert_eq!((plain.sizes, plain.pieces[0].aim, plain.pieces[0].stands), (SizesAim::Usual, None, None));
    assert_eq!(plain.aimed(&plain.pieces[0], Dimension::Width), None);
}

#[test]
fn an_aim_is_usual_largest_or_sizes_of_its_own() {
    assert_eq!(sofa("aim: usual").aim, Some(PieceAim::Usual));
    assert_eq!(sofa("aim: largest").aim, Some(PieceAim::Largest));
    let sizes = AimedSizes { width: Some(2200.0), depth: Some(950.0), ..AimedSizes::default() };
    let piece = sofa("width: 180..240, aim: { width: 220, depth: 95 }");
    assert_eq!(piece.aim, Some(PieceAim::Sizes(sizes)));
    assert_eq!(piece.aimed(Dimension::Width, SizesAim::Usual), Some(2200.0));
    // A size that is not among them is as all others.
    let wide = sofa("width: 180..240, aim: { width: 220 }");
    assert_eq!(wide.aimed(Dimension::Depth, SizesAim::Usual), None);
    assert_eq!(wide.aimed(Dimension::Depth, SizesAim::Largest), Some(wide.depth.most));
}

#[test]
fn the_largest_of_all_leaves_out_the_piece_that_asks_for_the_usual() {
    let large = brief(&with("sizes: largest\n"));
    assert_eq!(large.aimed(&large.pieces[0], Dimension::Width), Some(2400.0));
    let text = changed(&[("kind: coffee-table", "kind: coffee-table, aim: usual")]) + "sizes: largest\n";
    let table = brief(&text);
    assert_eq!(table.aimed(&table.pieces[1], Dimension::Width), None);
}

#[test]
fn what_is_as_deep_as_wide_has_one_aim() {
    let lamp = brief(&changed(&[("kind: coffee-table", "kind: floor-lamp, aim: { width: 40 }")]));
    assert_eq!(lamp.aimed(&lamp.pieces[1], Dimension::Depth), Some(400.0));
}

#[test]
fn a_place_at_a_wall_runs_from_its_left_end_as_one_faces_it() {
    // Facing the stair wall (the second, at the right of the plan) from inside, left is up the plan: its left end is (486, 0).
    let piece = sofa("width: 200, depth: 90, place: { wall: stair wall, from: 110, off: 6 }, hold: true");
    assert_eq!(piece.stands, Some(StandsAt::Wall { wall: WallId(1), from: 1100.0, off: 60.0 }));
    assert!(piece.held);
    let room = brief(&with("")).room;
    let back = piece.stands.unwrap().back(&room, 2000.0).unwrap();
    assert!(near(back.middle, Point::new(4860.0 - 60.0, -2100.0)), "{back:?}");
    assert!(near(back.facing, Point::new(-1.0, 0.0)), "{back:?}");
}

#[test]
fn off_is_by_default_the_gap_that_the_piece_keeps() {
    let piece = sofa("width: 200, depth: 90, off_wall: 8, place: { wall: stair wall, from: 110 }");
    assert_eq!(piece.stands, Some(StandsAt::Wall { wall: WallId(1), from: 1100.0, off: 80.0 }));
    assert!(!piece.held);
}

#[test]
fn a_place_by_coordinates_is_the_middle_of_the_back() {
    let piece = sofa("width: 200, depth: 90, place: { at: [200, -100], facing: 270 }");
    let Some(StandsAt::Place { back, facing }) = piece.stands else { panic!("{piece:?}") };
    assert!(near(back, Point::new(2000.0, -1000.0)) && near(facing, Point::new(0.0, -1.0)), "{piece:?}");
}

#[test]
fn what_stands_with_a_size_left_open_is_taken_as_usual_and_that_is_told() {
    let told = |keys: &str| {
        let text = changed(&[("kind: sofa, width: 180..240", &format!("kind: sofa, {keys}"))]);
        let Brief { notices, pieces, .. } = brief(&text);
        let told = notices.into_iter().map(|notice| notice.text).filter(|notice| notice.contains("in its place"));
        (told.collect::<Vec<_>>().join("\n"), pieces[0].size_as_it_stands(Dimension::Width))
    };
    let (notice, width) = told("width: 180..240, depth: 90, place: { wall: party wall, from: 100 }");
    assert!(notice.contains("width 210 cm") && !notice.contains("depth"), "{notice}");
    assert_eq!(width, Some(2100.0));
    let (none, aimed) = told("width: 180..240, aim: { width: 230 }, depth: 90, place: { wall: party wall, from: 100 }");
    assert_eq!((none.as_str(), aimed), ("", Some(2300.0)));
}

#[test]
fn a_step_is_a_line_and_is_told_once() {
    let read = |more: &str| {
        let text = with(&format!("fixed: [{{ kind: step, line: [[0, -100], [300, -100]], height: 18 }}]\n{more}"));
        scenario::read(&text, None).unwrap_or_else(|faults| panic!("{faults:#?}"))
    };
    let brief = read("");
    let step = &brief.room.fixed[0];
    let ends = step.step().map(|ends| ends.map(|end| (end.x, end.y)));
    assert_eq!((ends, step.height, step.use_depth), (Some([(0.0, -1000.0), (3000.0, -1000.0)]), Some(180.0), None));
    let told = |brief: &elbowroom_model::Brief, part: &str| {
        brief.notices.iter().filter(|notice| notice.text.contains("step") && notice.text.contains(part)).count()
    };
    assert_eq!((told(&brief, "rugs neither"), told(&brief, "wheelchair")), (1, 0));
    assert_eq!(told(&read("clearances: { profile: wheelchair }\n"), "wheelchair"), 1);
}

#[test]
fn kitchen_fixtures_are_used_unless_the_file_says_otherwise() {
    let fixed = |keys: &str| {
        let corners = "corners: [[0, -60], [180, -60], [180, 0], [0, 0]]";
        let text = with(&format!("fixed: [{{ kind: {keys}, {corners} }}]\n"));
        let brief = scenario::read(&text, None).unwrap_or_else(|faults| panic!("{faults:#?}"));
        let told = brief.notices.iter().filter(|notice| notice.text.contains("counts as used")).count();
        (brief.room.fixed[0].use_depth, told)
    };
    // 36 in, the work aisle of a kitchen, as 900 mm (M).
    assert_eq!(fixed("counter"), (Some(900.0), 1));
    assert_eq!(fixed("washing machine"), (Some(900.0), 1));
    assert_eq!(fixed("pillar"), (None, 0));
    assert_eq!(fixed("pillar, use: 80"), (Some(800.0), 0));
    assert_eq!(fixed("counter, use: 100"), (Some(1000.0), 0));
    assert_eq!(fixed("counter, use: 0"), (None, 0));
}
