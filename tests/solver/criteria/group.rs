//! Screen, talk, seats, fireside: the group itself.

use elbowroom_model::{Criterion, Hand, PieceId, PieceKind, Point, SizeRange, View};
use elbowroom_solver::criteria::FigureUnit;
use elbowroom_solver::criteria::obstacles::Whose;
use elbowroom_solver::criteria::screen::Hung;
use elbowroom_solver::criteria::talk::Seated;
use elbowroom_solver::ranking::{Lapse, lapses};

use super::stage::{DOWN, LEFT, NORTH, RIGHT, SOUTH, Stage, UP, WEST};

/// A screen of 55 in at the north wall, and an armchair whose eye lies `off` before it.
fn before_the_screen(off: f64) -> Stage {
    let room = Stage::room(5000.0, 8000.0);
    let unit = room.at_wall(NORTH, PieceKind::MediaUnit, (2500.0, 0.0), DOWN, (1600.0, 450.0));
    let unit = unit.with_piece(|unit| unit.screen = Some(1397.0));
    unit.piece(PieceKind::Armchair, (2500.0, -225.0 - off - 450.0), UP, (900.0, 900.0))
}

#[test]
fn screen_is_best_where_it_fills_thirty_degrees() {
    let score = |off| before_the_screen(off).score(Criterion::Screen);
    let best = before_the_screen(2200.0).judge(Criterion::Screen);
    assert!((best.figure - 2200.0).abs() < 1e-6 && (best.score - 100.0).abs() < 1e-9, "{best:?}");
    // 1.5 picture heights of 684.9 are 1027.3, and 1397 / 1000 x 1626.4 is 2272.1.
    let suits = before_the_screen(2200.0).screen().suits.unwrap();
    assert!((suits.nearest - 1027.3).abs() < 0.1 && (suits.fills_thirty - 2272.1).abs() < 0.1, "{suits:?}");
    assert!(score(3500.0) < 95.0 && score(5000.0) < score(3500.0));
    assert!(score(1000.0) < 95.0 && score(700.0) < score(1000.0));
}

#[test]
fn screen_wants_seats_near_its_axis() {
    let aside = |x| {
        let stage = before_the_screen(2200.0);
        stage.piece(PieceKind::Armchair, (x, -225.0 - 2200.0 - 450.0), UP, (900.0, 900.0))
    };
    let (near, far) = (aside(3400.0), aside(4500.0));
    assert!(near.score(Criterion::Screen) > far.score(Criterion::Screen));
    let by_hand = (2000.0_f64 / 2200.0).atan().to_degrees();
    assert!((far.screen().worst_off_axis - by_hand).abs() < 1e-9, "{by_hand} {:?}", far.screen());
}

/// A chair that faces along the screen's wall turns by a right angle; one other that faces it is enough.
#[test]
fn a_screen_that_nobody_has_within_45_degrees_sets_aside() {
    let unit = Stage::room(5000.0, 8000.0).at_wall(NORTH, PieceKind::MediaUnit, (2500.0, 0.0), DOWN, (1600.0, 450.0));
    let along = unit.piece(PieceKind::Armchair, (2050.0, -3000.0), RIGHT, (900.0, 900.0));
    assert!((along.screen().least_turn - 90.0).abs() < 1e-9, "{:?}", along.screen());
    let lapse = |stage: &Stage| lapses(&[stage.judge(Criterion::Screen)]).first().map(|it| it.lapse);
    assert_eq!(lapse(&along), Some(Lapse::OutOfSight));
    let facing = along.piece(PieceKind::Armchair, (2500.0, -4000.0), UP, (900.0, 900.0));
    assert_eq!(lapse(&facing), None);
}

#[test]
fn screen_notices_windows_that_face_it_or_stand_behind_it() {
    let square = before_the_screen(2200.0).window(WEST, "side light", (5500.0, 1000.0), View::Plain);
    let facing = before_the_screen(2200.0).window(SOUTH, "garden window", (1500.0, 2000.0), View::Plain);
    let behind = before_the_screen(2200.0).window(NORTH, "street window", (1500.0, 2000.0), View::Plain);
    let in_a_bad_place = |stage: &Stage| (stage.screen().mirrored, stage.screen().dazzles);
    assert_eq!(in_a_bad_place(&square), (None, None));
    assert_eq!(in_a_bad_place(&facing), (Some(facing.item("garden window")), None));
    assert_eq!(in_a_bad_place(&behind), (None, Some(behind.item("street window"))));
    let score = |stage: &Stage| stage.score(Criterion::Screen);
    assert!(score(&square) > score(&facing) + 5.0 && score(&square) > score(&behind) + 5.0);
}

#[test]
fn screen_notices_the_sun_where_latitude_and_bearing_are_known() {
    let facing = |bearing| {
        let mut stage = before_the_screen(2200.0).window(SOUTH, "garden window", (1500.0, 2000.0), View::Plain);
        stage.brief.room.latitude = Some(52.0);
        stage.brief.room.bearing = Some((elbowroom_model::WallId(SOUTH), bearing));
        stage.score(Criterion::Screen)
    };
    // A window to the north has no low sun; one to the south-west has.
    assert!(facing(0.0) > facing(225.0) + 2.0, "{} {}", facing(0.0), facing(225.0));
}

#[test]
fn screen_notices_heat_and_height_over_a_fire() {
    let over = before_the_screen(2200.0).fireplace(NORTH, "hearth", (1900.0, 1200.0));
    assert_eq!(over.screen().hung, Hung::OverFire);
    assert!(over.score(Criterion::Screen) < 75.0);
    let mut high = before_the_screen(2200.0);
    high.brief.pieces[0].height = 1700.0;
    // Its middle is 1700 + 342 high, the eyes are at 1200: 842 up over 2200.
    let lift = (842.4_f64 / 2200.0).atan().to_degrees();
    let Hung::High(degrees) = high.screen().hung else { panic!("{:?}", high.screen()) };
    assert!((degrees - lift).abs() < 0.01, "{degrees} {lift}");
    assert!(high.score(Criterion::Screen) < 100.0);
}

/// A screen of 55 in, and an armchair 2200 before it on its axis that faces so many degrees aside.
fn turned_from_the_screen(degrees: f64) -> Stage {
    let stage = before_the_screen(2200.0).left_out();
    let facing = Point::toward(90.0 + degrees);
    let anchor = Point::new(2500.0, -225.0 - 2200.0) - facing * 450.0;
    stage.piece(PieceKind::Armchair, (anchor.x, anchor.y), (facing.x, facing.y), (900.0, 900.0))
}

/// P: NUREG-0700 rev. 3, 11.3.1.2-2: 15 degrees preferred, 35 at most, 60 where the head may turn. All else of the screen is
/// full at 2200.
#[test]
fn screen_is_as_good_as_the_head_turn_lets_it_be() {
    for (degrees, score) in [(0.0, 100.0), (15.0, 100.0), (35.0, 80.0), (45.0, 50.0), (60.0, 0.0), (80.0, 0.0)] {
        let stage = turned_from_the_screen(degrees);
        let judged = stage.score(Criterion::Screen);
        assert!((judged - score).abs() < 1e-6, "{degrees}: {judged}");
        let turns = [stage.screen().least_turn, stage.screen().largest_turn];
        assert!(turns.iter().all(|turn| (turn - degrees).abs() < 1e-6), "{turns:?}");
    }
    // Each place counts: one of two that turns too far takes a half.
    let facing = Point::toward(90.0 + 70.0);
    let anchor = Point::new(2500.0, -225.0 - 2200.0) - facing * 450.0;
    let chair = (anchor.x, anchor.y);
    let two = before_the_screen(2200.0).piece(PieceKind::Armchair, chair, (facing.x, facing.y), (900.0, 900.0));
    assert!((two.score(Criterion::Screen) - 50.0).abs() < 1e-6, "{}", two.score(Criterion::Screen));
    assert!((two.screen().largest_turn - 70.0).abs() < 1e-6 && two.screen().least_turn < 1e-6);
}

/// The picture is 1218 wide about x = 2500; seen from 925 before it, a bookcase from there to 600 aside hides its right half.
#[test]
fn screen_wants_a_clear_line() {
    let clear = before_the_screen(2200.0);
    let half = clear.clone().piece(PieceKind::Bookcase, (2800.0, -1500.0), UP, (600.0, 200.0));
    assert_eq!(clear.screen().hidden, None);
    let hidden = half.screen().hidden.unwrap();
    assert!((hidden.share - 0.5).abs() < 1e-6 && hidden.by == Some(Whose::Piece(PieceId(2))), "{hidden:?}");
    assert!((half.score(Criterion::Screen) - 50.0).abs() < 1e-4, "{}", half.score(Criterion::Screen));
    // One looks over a table.
    let table = clear.piece(PieceKind::CoffeeTable, (2500.0, -1500.0), UP, (1000.0, 600.0));
    assert_eq!(table.screen().hidden, None);
}

/// Its middle lies 1500 aside of the screen's in the same wall: beside it, not behind it.
#[test]
fn a_window_beside_a_screen_neither_faces_nor_backs_it() {
    let screen = before_the_screen(2200.0);
    let beside = screen.clone().window(NORTH, "street window", (3600.0, 800.0), View::Plain);
    assert_eq!((beside.screen().mirrored, beside.screen().dazzles), (None, None));
    assert!((beside.score(Criterion::Screen) - 100.0).abs() < 1e-9);
    // In a side wall 2500 off, its middle 2500 before the screen is just 45 degrees aside, 4000 before it 32.
    let aside = |middle: f64| {
        let from_the_south = 8000.0 - 225.0 - middle - 1000.0;
        screen.clone().window(WEST, "side light", (from_the_south, 2000.0), View::Plain).screen().mirrored
    };
    assert_eq!(aside(2500.0), None);
    assert!(aside(4000.0).is_some());
}

/// Two armchairs whose eyes are `apart`, face to face.
fn face_to_face(apart: f64) -> Stage {
    let room = Stage::room(9000.0, 4000.0).piece(PieceKind::Armchair, (500.0, -2000.0), RIGHT, (900.0, 900.0));
    room.piece(PieceKind::Armchair, (1400.0 + apart, -2000.0), LEFT, (900.0, 900.0))
}

#[test]
fn talk_is_best_at_the_distance_of_company() {
    let near = face_to_face(1800.0).judge(Criterion::Talk);
    assert!((near.score - 100.0).abs() < 1e-9 && (near.figure - 1800.0).abs() < 1e-6, "{near:?}");
    let (far, out) = (face_to_face(2900.0), face_to_face(4000.0));
    let score = |stage: &Stage| stage.score(Criterion::Talk);
    assert!(near.score > score(&far) + 10.0 && score(&far) > score(&out) + 20.0);
    assert!(!far.talk().wide && far.talk().out.is_none());
    // The second armchair is out of it.
    assert!(out.talk().wide && out.talk().out == Some(PieceId(1)), "{:?}", out.talk());
    let side_by_side = Stage::room(9000.0, 4000.0).piece(PieceKind::Sofa, (2000.0, -4000.0), UP, (2100.0, 900.0));
    assert!(score(&side_by_side) < near.score);
    assert_eq!((side_by_side.talk().seated, far.talk().seated), (Seated::SideBySide, Seated::Otherwise));
}

#[test]
fn the_corner_of_a_corner_sofa_counts_one() {
    // Beyond the corner of 950: 2450 - 950 - 114 has two places of 686, 1760 - 950 - 114 has one.
    let sofa = Stage::room(6000.0, 5000.0).corner_sofa((0.0, -5000.0), UP, Hand::Left, (2450.0, 1760.0, 950.0));
    let judged = sofa.judge(Criterion::Seats);
    assert_eq!((judged.figure, judged.unit), (4.0, FigureUnit::Count));
    assert_eq!(sofa.talk().seated, Seated::AboutCorner);
    let chaise = sofa.with_piece(|piece| piece.chaise = true);
    assert_eq!(chaise.judge(Criterion::Seats).figure, 3.0);
}

#[test]
fn seats_count_places_of_27_inches_after_9_for_the_arms() {
    let sofa = |width| Stage::room(6000.0, 5000.0).piece(PieceKind::Sofa, (3000.0, -5000.0), UP, (width, 950.0));
    assert_eq!(sofa(1500.0).judge(Criterion::Seats).figure, 1.0);
    assert_eq!(sofa(63.0 * 25.4).judge(Criterion::Seats).figure, 2.0);
    assert_eq!(sofa(90.0 * 25.4 - 1.0).judge(Criterion::Seats).figure, 2.0);
    assert_eq!(sofa(90.0 * 25.4).judge(Criterion::Seats).figure, 3.0);
}

#[test]
fn seats_give_full_marks_at_usual_sizes_and_none_beyond() {
    let sofa = |width| {
        let stage = Stage::room(6000.0, 5000.0).piece(PieceKind::Sofa, (3000.0, -4900.0), UP, (width, 950.0));
        stage.with_piece(|piece| piece.width = SizeRange { least: 1500.0, usual: 2100.0, most: 2972.0 })
    };
    let (less, usual, more) = (sofa(1800.0), sofa(2100.0), sofa(2900.0));
    assert!(less.score(Criterion::Seats) < usual.score(Criterion::Seats) - 5.0);
    assert!((usual.score(Criterion::Seats) - more.score(Criterion::Seats)).abs() < 1e-9);
    let left_out = usual.clone().piece(PieceKind::Bookcase, (0.0, 0.0), DOWN, (800.0, 300.0)).left_out();
    assert!(left_out.score(Criterion::Seats) < usual.score(Criterion::Seats));
    assert_eq!(left_out.seats().left_out, [PieceId(1)]);
}

#[test]
fn seats_want_a_surface_within_450_mm() {
    let sofa = || Stage::room(6000.0, 5000.0).piece(PieceKind::Sofa, (3000.0, -5000.0), UP, (2100.0, 900.0));
    let table = |gap: f64| sofa().piece(PieceKind::CoffeeTable, (3000.0, -4100.0 + gap), UP, (1000.0, 600.0));
    let (near, far, none) = (table(450.0), table(700.0), sofa());
    let score = |stage: &Stage| stage.score(Criterion::Seats);
    assert!(score(&near) > score(&far) + 5.0 && score(&far) > score(&none) + 5.0);
    let with_surface = |stage: &Stage| (stage.seats().with_surface, stage.seats().places);
    assert_eq!((with_surface(&near), with_surface(&none)), ((2, 2), (0, 2)));
}

/// A fire in the middle of the north wall, and a sofa 2500 before it.
fn by_the_fire(facing: (f64, f64)) -> Stage {
    let room = Stage::room(5000.0, 6000.0).fireplace(NORTH, "hearth", (2000.0, 1000.0));
    room.piece(PieceKind::Sofa, (2500.0, -2500.0), facing, (2100.0, 900.0))
}

#[test]
fn fireside_wants_the_seats_turned_to_the_fire() {
    let room = Stage::room(5000.0, 6000.0).fireplace(NORTH, "hearth", (2000.0, 1000.0));
    let square = room.piece(PieceKind::Sofa, (1500.0, -2500.0), RIGHT, (2100.0, 900.0));
    let (facing, turned) = (by_the_fire(UP), by_the_fire(DOWN));
    let score = |stage: &Stage| stage.score(Criterion::Fireside);
    assert!(score(&facing) > score(&square) + 10.0 && score(&square) > 50.0 && score(&turned) == 0.0);
    assert_eq!((turned.fireside().backs, turned.fireside().places), (2, 2));
    let figure = facing.judge(Criterion::Fireside).figure;
    // Two places, 468 off the axis each (half of (2100 - 229) / 2), 2050 before the fire.
    let by_hand = (467.85_f64 / 2050.0).atan().to_degrees();
    assert!((figure - by_hand).abs() < 1e-6, "{figure} {by_hand}");
}

/// An armchair 3000 before the fire, full marks for its distance, turned so many degrees from it.
#[test]
fn a_seat_with_the_fire_more_than_100_degrees_behind_has_nothing_of_it() {
    let turned = |degrees: f64| {
        let facing = Point::toward(90.0 + degrees);
        let anchor = Point::new(2500.0, -3000.0) - facing * 450.0;
        let room = Stage::room(5000.0, 6000.0).fireplace(NORTH, "hearth", (2000.0, 1000.0));
        room.piece(PieceKind::Armchair, (anchor.x, anchor.y), (facing.x, facing.y), (900.0, 900.0))
    };
    let marks = [(0.0, 100.0), (45.0, 95.0), (90.0, 60.0), (95.0, 30.0), (100.0, 0.0), (120.0, 0.0), (180.0, 0.0)];
    for (degrees, score) in marks {
        let judged = turned(degrees).score(Criterion::Fireside);
        assert!((judged - score).abs() < 1e-6, "{degrees}: {judged}");
    }
    assert_eq!((turned(100.0).fireside().backs, turned(101.0).fireside().backs), (0, 1));
}

#[test]
fn a_fire_behind_the_main_seat_sets_aside() {
    let lapse = |stage: &Stage| lapses(&[stage.judge(Criterion::Fireside)]).first().map(|it| it.lapse);
    assert_eq!(lapse(&by_the_fire(UP)), None);
    assert_eq!(lapse(&by_the_fire(DOWN)), Some(Lapse::FireBehind));
    // Its middle is 450 past the fire's and 2500 before it.
    let by_hand = 90.0 + (450.0_f64 / 2500.0).atan().to_degrees();
    let square = by_the_fire(RIGHT).fireside();
    assert!((square.main_turn - by_hand).abs() < 1e-6, "{square:?} {by_hand}");
}

#[test]
fn fireside_notices_chairs_that_flank_the_hearth() {
    let flanked = by_the_fire(UP).piece(PieceKind::Armchair, (500.0, -900.0), RIGHT, (900.0, 900.0)).piece(
        PieceKind::Armchair,
        (4500.0, -900.0),
        LEFT,
        (900.0, 900.0),
    );
    let away = by_the_fire(UP).piece(PieceKind::Armchair, (1400.0, -900.0), LEFT, (900.0, 900.0)).piece(
        PieceKind::Armchair,
        (3600.0, -900.0),
        RIGHT,
        (900.0, 900.0),
    );
    assert!(flanked.fireside().flanked && !away.fireside().flanked);
    let score = |stage: &Stage| stage.score(Criterion::Fireside);
    assert!(score(&flanked) > score(&away) + 10.0, "{} {}", score(&flanked), score(&away));
}
