//! View, entrance, openness: which wall, which hand.

use elbowroom_model::{Criterion, Hand, PieceId, PieceKind, Stance, View};
use elbowroom_solver::criteria::across::Bar;
use elbowroom_solver::criteria::arrival::FirstSeen;
use elbowroom_solver::criteria::entrance::Met;
use elbowroom_solver::criteria::obstacles::Whose;
use elbowroom_solver::criteria::openness::{ArrivalFinding, SideFinding};
use elbowroom_solver::criteria::{FigureUnit, Missing};

use super::stage::{DOWN, EAST, LEFT, NORTH, RIGHT, Stage, UP, WEST};

/// An armchair whose eye lies `off` before the middle of the bay in the north wall.
fn before_the_bay(off: f64) -> Stage {
    let room = Stage::room(4000.0, 5000.0).window(NORTH, "bay", (1400.0, 1200.0), View::Liked);
    room.piece(PieceKind::Armchair, (2000.0, -off - 450.0), UP, (900.0, 900.0))
}

#[test]
fn view_is_the_plan_angle_that_the_window_fills() {
    let judged = before_the_bay(3000.0).judge(Criterion::View);
    let by_hand = 2.0 * (600.0_f64 / 3000.0).atan().to_degrees();
    assert!((judged.figure - by_hand).abs() < 1e-6, "{}", judged.figure);
    assert_eq!(judged.unit, FigureUnit::Degrees);
}

#[test]
fn view_is_better_nearer_the_window_and_nothing_with_the_back_to_it() {
    let (far, near) = (before_the_bay(3500.0), before_the_bay(2000.0));
    assert!(near.score(Criterion::View) > far.score(Criterion::View) + 10.0);
    let room = Stage::room(4000.0, 5000.0).window(NORTH, "bay", (1400.0, 1200.0), View::Liked);
    let turned = room.piece(PieceKind::Sofa, (2000.0, -100.0), DOWN, (2100.0, 900.0)).judge(Criterion::View);
    assert_eq!((turned.score, turned.figure), (0.0, 0.0));
}

#[test]
fn view_notices_a_tall_piece_before_the_window() {
    let open = before_the_bay(3000.0);
    // Half of the bay, seen at 1500 before it, lies between x = 2000 and 2300.
    let shut = open.clone().piece(PieceKind::Bookcase, (2150.0, -1500.0), UP, (300.0, 200.0));
    let hidden_by = shut.view().hidden.map(|hidden| hidden.by);
    assert_eq!((open.view().hidden, hidden_by), (None, Some(Whose::Piece(PieceId(1)))));
    let (open, shut) = (open.judge(Criterion::View), shut.judge(Criterion::View));
    // The near side of the bookcase, 1500 from the eye, reaches from straight ahead to 300 aside.
    let hidden = (300.0_f64 / 1500.0).atan().to_degrees();
    assert!((open.figure - shut.figure - hidden).abs() < 1e-6, "{} {}", open.figure, shut.figure);
    assert!(shut.score < open.score - 10.0);
}

#[test]
fn view_notices_a_return_before_the_window_unless_it_is_a_chaise() {
    let sofa = |chaise| {
        Stage::room(5000.0, 4000.0)
            .holds(EAST, "low window", (1000.0, 2000.0), super::stage::window(100.0, 1300.0, View::Liked))
            .corner_sofa((4400.0, -3900.0), UP, Hand::Right, (2600.0, 2200.0, 950.0))
            .with_piece(|piece| piece.chaise = chaise)
    };
    let (back, chaise) = (sofa(false), sofa(true));
    // Only the main run's places are compared: those of the return sit with their backs to the window.
    assert_eq!(back.view().hidden.map(|hidden| hidden.by), Some(Whose::ReturnBack(PieceId(0))));
    assert_eq!(chaise.view().hidden, None);
}

#[test]
fn view_counts_avoided_windows_against() {
    let chair = |view| {
        let room = Stage::room(4000.0, 5000.0).window(NORTH, "yard window", (1400.0, 1200.0), view);
        room.piece(PieceKind::Armchair, (2000.0, -2450.0), UP, (900.0, 900.0))
    };
    let (liked, avoided) = (chair(View::Liked).judge(Criterion::View), chair(View::Avoided).judge(Criterion::View));
    assert!((liked.score + avoided.score - 100.0).abs() < 1e-9);
    let both = before_the_bay(3000.0);
    let less = both.clone().window(EAST, "yard window", (500.0, 1500.0), View::Avoided);
    let more = both.window(EAST, "yard window", (500.0, 2500.0), View::Avoided);
    assert!(more.score(Criterion::View) < less.score(Criterion::View));
    assert_eq!(more.view().avoided.map(|avoided| avoided.windows), Some(vec![more.item("yard window")]));
}

/// A room with the hall door in the middle of its east wall.
fn with_hall_door() -> Stage {
    Stage::room(5000.0, 4000.0).entrance(EAST, "hall door", 1600.0)
}

#[test]
fn entrance_is_the_angle_to_the_door() {
    let chair = |facing| with_hall_door().piece(PieceKind::Armchair, (1000.0, -2000.0), facing, (900.0, 900.0));
    let (facing, square, turned) = (chair(RIGHT), chair(UP), chair(LEFT));
    assert!(facing.judge(Criterion::Entrance).figure < 1e-6);
    // Facing north, the eye lies 450 before the back edge: the door is 450 south of square to the right.
    let by_hand = 90.0 + (450.0_f64 / 4000.0).atan().to_degrees();
    assert!((square.judge(Criterion::Entrance).figure - by_hand).abs() < 1e-6);
    assert!((turned.judge(Criterion::Entrance).figure - 180.0).abs() < 1e-6);
    let score = |stage: &Stage| stage.score(Criterion::Entrance);
    assert!(score(&facing) > score(&square) + 10.0 && score(&square) > score(&turned) + 10.0);
    assert_eq!((facing.entrance_finding().see, turned.entrance_finding().see), (1, 0));
}

#[test]
fn entrance_notices_backs_met_on_arrival() {
    let turned = with_hall_door().piece(PieceKind::Sofa, (2500.0, -2000.0), LEFT, (2100.0, 900.0));
    // The back, 2100 wide, stands 2500 before the door.
    let by_hand = 2.0 * (1050.0_f64 / 2500.0).atan().to_degrees();
    let met = turned.entrance_finding().met;
    assert!(matches!(met, Some(Met::Back { seat: PieceId(0), angle }) if (angle - by_hand).abs() < 1e-6), "{met:?}");
}

#[test]
fn entrance_notices_a_return_across_the_way_in() {
    // Backs to the south wall, facing north: the sitter's right is the east, where one comes in.
    let sofa = |x, hand| with_hall_door().corner_sofa((x, -4000.0), UP, hand, (2400.0, 2400.0, 950.0));
    let (across, aside) = (sofa(4000.0, Hand::Right), sofa(1600.0, Hand::Left));
    // The return ends at x = 4000, the door is at 5000.
    let Some(Bar { whose, share, off, .. }) = across.entrance_finding().barred else { panic!() };
    assert_eq!((whose, share.round(), off.round()), (Whose::ReturnBack(PieceId(0)), 1.0, 1000.0));
    assert_eq!(aside.entrance_finding().barred, None);
    let score = |stage: &Stage| stage.score(Criterion::Entrance);
    assert!(score(&aside) > score(&across) + 15.0, "{} {}", score(&aside), score(&across));
}

#[test]
fn entrance_tells_what_is_seen_first() {
    let room = |view| with_hall_door().window(WEST, "bay", (500.0, 3000.0), view);
    let seat = |room: Stage| room.piece(PieceKind::Armchair, (2500.0, -3950.0), UP, (900.0, 900.0));
    let (liked, avoided) = (seat(room(View::Liked)), seat(room(View::Avoided)));
    assert_eq!(liked.entrance_finding().met, Some(Met::First(FirstSeen::Item(liked.item("bay")))));
    assert!(liked.score(Criterion::Entrance) > avoided.score(Criterion::Entrance));
}

#[test]
fn entrance_and_ways_are_left_out_without_one() {
    let stage = Stage::room(4000.0, 4000.0).piece(PieceKind::Sofa, (2000.0, -3900.0), UP, (2100.0, 900.0));
    let told: Vec<Criterion> = stage.judged().iter().map(|judgement| judgement.criterion).collect();
    assert_eq!(told, [Criterion::Talk, Criterion::Seats, Criterion::Balance]);
    let left_out = elbowroom_solver::criteria::left_out(&stage.brief);
    assert_eq!(left_out.len(), 8);
    assert_eq!((left_out[1].criterion, left_out[1].missing), (Criterion::Entrance, Missing::Entrance));
}

#[test]
fn openness_prefers_the_hand_whose_return_does_not_close_the_open_side() {
    let room = || {
        Stage::room(5000.0, 4000.0).opening(EAST, "dining side", (600.0, 2800.0), Stance::Open).entrance(
            WEST,
            "hall door",
            100.0,
        )
    };
    // Backs to the north wall, facing south: the sitter's left is the east.
    let closed = room().corner_sofa((4200.0, 0.0), DOWN, Hand::Left, (2600.0, 2200.0, 950.0));
    let open = room().corner_sofa((1600.0, 0.0), DOWN, Hand::Right, (2600.0, 2200.0, 950.0));
    let chaise = closed.clone().with_piece(|piece| piece.chaise = true);
    let score = |stage: &Stage| stage.score(Criterion::Openness);
    assert!(score(&open) > score(&closed) + 10.0, "{} {}", score(&open), score(&closed));
    let bar = |stage: &Stage| match stage.openness().sides[0] {
        SideFinding::Open { closed, .. } => closed,
        SideFinding::Away { .. } => panic!(),
    };
    // The return ends 2200 down the wall, of which the opening takes 600 to 3400, and 800 off it.
    let Some(Bar { whose, share, off, .. }) = bar(&closed) else { panic!() };
    assert_eq!((whose, off.round()), (Whose::ReturnBack(PieceId(0)), 800.0));
    assert!((share - 1600.0 / 2800.0).abs() < 1e-9, "{share}");
    // A chaise on the same side has no back there.
    assert!(score(&chaise) > score(&closed) + 10.0, "{} {}", score(&chaise), score(&closed));
    assert!(!matches!(bar(&chaise), Some(Bar { whose: Whose::ReturnBack(_), .. })));
}

#[test]
fn openness_is_the_share_of_the_open_side_that_is_seen() {
    // Eye at (2000, -2000), facing east to an opening of 2000 at x = 5000; a bookcase hides what lies south of straight.
    let room = Stage::room(5000.0, 4000.0).opening(EAST, "dining side", (1000.0, 2000.0), Stance::Open);
    let open = room.piece(PieceKind::Armchair, (1550.0, -2000.0), RIGHT, (900.0, 900.0));
    let half = open.clone().piece(PieceKind::Bookcase, (3500.0, -3000.0), LEFT, (2000.0, 300.0));
    let half = half.with_piece(|piece| piece.height = 2400.0);
    let (open, half) = (open.judge(Criterion::Openness), half.judge(Criterion::Openness));
    assert!((open.figure - 100.0).abs() < 1e-6 && open.unit == FigureUnit::Percent);
    assert!((half.figure - 50.0).abs() < 1e-6, "{}", half.figure);
}

#[test]
fn openness_wants_backs_to_what_is_to_be_turned_from() {
    let room = || Stage::room(5000.0, 4000.0).opening(EAST, "kitchen side", (1000.0, 2000.0), Stance::Away);
    let judged =
        |facing| room().piece(PieceKind::Sofa, (2500.0, -2000.0), facing, (2100.0, 900.0)).judge(Criterion::Openness);
    let (turned, facing) = (judged(LEFT), judged(RIGHT));
    assert_eq!((turned.score, turned.figure), (100.0, 100.0));
    assert_eq!((facing.score, facing.figure), (0.0, 0.0));
}

#[test]
fn openness_sees_less_of_the_room_past_something_tall() {
    let bare = with_hall_door().piece(PieceKind::Armchair, (2500.0, -3950.0), UP, (900.0, 900.0));
    let hidden = bare.clone().piece(PieceKind::Bookcase, (3000.0, -2000.0), RIGHT, (1900.0, 300.0));
    let score = |stage: &Stage| stage.score(Criterion::Openness);
    assert!(score(&hidden) < score(&bare) - 20.0, "{} {}", score(&hidden), score(&bare));
    let isovist = |stage: &Stage| stage.openness().arrival.map(|ArrivalFinding { isovist, .. }| isovist).unwrap();
    assert!((isovist(&bare) - 1.0).abs() < 1e-6, "{}", isovist(&bare));
    // Behind its front, 1900 wide and 1700 before the door, lies the trapezium down to the west wall, less the room.
    let (near, slope) = (1700.0_f64, 950.0 / 1700.0);
    let to_sides = 2000.0 / slope;
    let lost = slope * (to_sides * to_sides - near * near) + (5000.0 - to_sides) * 4000.0;
    let share = 1.0 - lost / 20_000_000.0;
    assert!((isovist(&hidden) - share).abs() < 1e-3, "{share} {}", isovist(&hidden));
}
