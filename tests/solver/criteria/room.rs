//! Ways, daylight, upkeep: the group in its room.

use elbowroom_model::{Criterion, LeadsTo, PieceId, PieceKind, View};
use elbowroom_solver::criteria::upkeep::CordFault;
use elbowroom_solver::criteria::ways::PastGroup;
use elbowroom_solver::criteria::{FigureUnit, Missing, left_out};
use elbowroom_solver::routes::End;

use super::stage::{DOWN, EAST, NORTH, RIGHT, SOUTH, Stage, UP, WEST, window};

/// A sofa and a screen across the middle of a room, its doors opposite each other at `at` from the north.
pub(super) fn two_doors(at: f64) -> Stage {
    Stage::room(5000.0, 6000.0)
        .entrance(EAST, "hall door", at)
        .door(WEST, "kitchen door", 6000.0 - at - 800.0, LeadsTo::Space("kitchen".to_owned()))
        .piece(PieceKind::Sofa, (2500.0, -4500.0), UP, (2100.0, 900.0))
        .piece(PieceKind::MediaUnit, (2500.0, -100.0), DOWN, (1600.0, 450.0))
}

#[test]
fn ways_grow_with_width_and_straightness() {
    let ways = |width, length| two_doors(5000.0).route("hall door", "kitchen door", width, length);
    let (tight, wide, long) = (ways(900.0, 5000.0), ways(1200.0, 5000.0), ways(1200.0, 7500.0));
    let judged = tight.judge(Criterion::Ways);
    assert_eq!((judged.figure, judged.unit), (900.0, FigureUnit::Millimetres));
    let score = |stage: &Stage| stage.score(Criterion::Ways);
    assert!(score(&wide) > score(&tight) + 10.0 && score(&wide) > score(&long) + 5.0);
    let tightest = tight.ways().tightest;
    assert_eq!((tightest.width, tightest.needs), (900.0, 900.0));
    assert_eq!(tightest.ends.to, End::Item(tight.item("kitchen door")));
    // The doors lie 5000 straight across from each other.
    let longer = long.ways().detour.unwrap().longer;
    assert!((longer - 0.5).abs() < 1e-9, "{longer}");
}

#[test]
fn ways_notice_a_main_route_through_the_group() {
    let ways = |at| two_doors(at).route("hall door", "kitchen door", 1200.0, 5000.0);
    let (through, behind) = (ways(2000.0), ways(5000.0));
    // Between the sofa and the media unit.
    assert!(
        matches!(through.ways().past_group, PastGroup::Through { between: [PieceId(0), PieceId(1)], .. }),
        "{:?}",
        through.ways()
    );
    assert!(matches!(behind.ways().past_group, PastGroup::Behind(_)), "{:?}", behind.ways());
    let score = |stage: &Stage| stage.score(Criterion::Ways);
    assert!(score(&behind) > score(&through) + 20.0, "{} {}", score(&behind), score(&through));
}

/// The way from door to door, straight across the room 2400 from the north, leads between each two of these.
#[test]
fn ways_notice_a_main_route_between_seats_that_face_and_a_seat_and_its_table() {
    let doors = || {
        let room = Stage::room(5000.0, 6000.0).entrance(EAST, "hall door", 2000.0);
        let kitchen = LeadsTo::Space("kitchen".to_owned());
        room.door(WEST, "kitchen door", 3200.0, kitchen)
    };
    let way = |stage: Stage| stage.route("hall door", "kitchen door", 1200.0, 5000.0);
    let through = |stage: &Stage| match stage.ways().past_group {
        PastGroup::Through { between, .. } => Some(between),
        _ => None,
    };
    let seat = |stage: Stage| stage.piece(PieceKind::Sofa, (2500.0, -4500.0), UP, (2100.0, 900.0));
    let chair = |facing, y| seat(doors()).piece(PieceKind::Armchair, (2500.0, y), facing, (900.0, 900.0));
    let between = Some([PieceId(0), PieceId(1)]);
    assert_eq!(through(&way(chair(DOWN, -600.0))), between);
    // One that turns its back does not face, and is nothing to cut off.
    assert_eq!(through(&way(chair(UP, -1500.0))), None);
    let table = |y| seat(doors()).piece(PieceKind::CoffeeTable, (2500.0, y), UP, (1200.0, 600.0));
    assert_eq!(through(&way(table(-1800.0))), between);
    // Nearer than the way it stands aside of it.
    assert_eq!(through(&way(table(-3300.0))), None);
    let score = |stage: Stage| way(stage).score(Criterion::Ways);
    assert!(score(table(-1800.0)) < score(table(-3300.0)) - 20.0);
}

/// A room of 30 m2 with two bookcases 300 deep across its middle, and a gap between them at the side.
pub(super) fn parted(gap: f64) -> Stage {
    let shelf = 2500.0 - gap / 2.0;
    Stage::room(5000.0, 6000.0)
        .entrance(EAST, "hall door", 300.0)
        .door(WEST, "kitchen door", 4900.0, LeadsTo::Space("kitchen".to_owned()))
        .piece(PieceKind::Sofa, (2500.0, -6000.0), UP, (2100.0, 900.0))
        .piece(PieceKind::Bookcase, (shelf / 2.0, -2850.0), DOWN, (shelf, 300.0))
        .piece(PieceKind::Bookcase, (5000.0 - shelf / 2.0, -2850.0), DOWN, (shelf, 300.0))
        .route("hall door", "kitchen door", 1200.0, 5000.0)
}

#[test]
fn ways_count_the_floor_that_a_disc_of_passage_sweeps() {
    let (open, shut) = (parted(800.0).ways().floor, parted(400.0).ways().floor);
    // In the empty room all but the corners: a square of half a passage, less a quarter disc, at each.
    let corners = (4.0 - std::f64::consts::PI) * 300.0 * 300.0;
    assert!((open.when_empty - (1.0 - corners / 30e6)).abs() < 0.005, "{open:?}");
    assert_eq!(open.when_empty, shut.when_empty);
    // A gap of 800 lets 600 through: all but corners. One of 400 does not: the northern 2850 are left of what is free.
    let free = 30e6 - 2100.0 * 900.0 - 2.0 * 2300.0 * 300.0;
    assert!(open.now > 0.97, "{open:?}");
    assert!((shut.now - 2850.0 * 5000.0 / free).abs() < 0.02, "{shut:?}");
    // Half of the floor or less against the empty room takes all of a quarter of the mark.
    let (open, shut) = (parted(800.0).score(Criterion::Ways), parted(400.0).score(Criterion::Ways));
    assert!(open - shut > 15.0, "{open} {shut}");
}

#[test]
fn ways_follow_the_walk_round_what_stands_in_the_straight_way() {
    // The straight way runs through the sofa: one walks round its back, which is nearer than its front.
    let stage = two_doors(4200.0 - 400.0).route("hall door", "kitchen door", 1200.0, 5200.0);
    assert!(matches!(stage.ways().past_group, PastGroup::Behind(_)), "{:?}", stage.ways());
}

#[test]
fn daylight_fades_with_depth_and_a_lamp_helps() {
    let chair = |off: f64| {
        let room = Stage::room(4000.0, 9000.0).window(NORTH, "bay", (1000.0, 2000.0), View::Plain);
        room.piece(PieceKind::Armchair, (2000.0, -off - 450.0), UP, (900.0, 900.0))
    };
    let near = chair(2100.0).judge(Criterion::Daylight);
    assert!((near.figure - 2100.0).abs() < 1e-6 && (near.score - 90.0).abs() < 1e-9, "{near:?}");
    // Head at 2100: 2.5 times as deep is 5250.
    assert!((chair(5250.0).score(Criterion::Daylight) - 35.0).abs() < 1e-9);
    let lamp = |x| chair(3000.0).piece(PieceKind::FloorLamp, (x, -3800.0), UP, (300.0, 300.0));
    let (beside, away) = (lamp(2700.0), lamp(3900.0));
    assert!(beside.score(Criterion::Daylight) > away.score(Criterion::Daylight) + 10.0);
    let reached = |stage: &Stage| stage.daylight().lamps.map(|lamps| (lamps.reached, lamps.places));
    assert_eq!((reached(&beside), reached(&away)), (Some((1, 1)), Some((0, 1))));
    let hidden = chair(3000.0).piece(PieceKind::Bookcase, (2000.0, -1500.0), UP, (1500.0, 300.0));
    assert!(hidden.score(Criterion::Daylight) < chair(3000.0).score(Criterion::Daylight) - 10.0);
}

#[test]
fn upkeep_notices_a_tall_back_before_a_radiator() {
    let room = || Stage::room(4000.0, 4000.0).radiator(NORTH, "radiator", (1000.0, 1000.0));
    let sofa = |gap: f64| room().piece(PieceKind::Sofa, (1500.0, -100.0 - gap), DOWN, (2100.0, 900.0));
    let (near, far) = (sofa(100.0), sofa(1000.0));
    let figure = |stage: &Stage| stage.judge(Criterion::Upkeep).figure;
    assert!(figure(&near) < 1e-6 && (figure(&far) - 100.0).abs() < 1e-6);
    assert_eq!((near.upkeep().heat_taken, far.upkeep().heat_taken), (vec![near.item("radiator")], Vec::new()));
    let fronts = room().piece(PieceKind::Sofa, (1500.0, -2000.0), UP, (2100.0, 900.0));
    assert!((fronts.judge(Criterion::Upkeep).figure - 100.0).abs() < 1e-6);
}

#[test]
fn upkeep_counts_a_window_over_a_low_piece_half() {
    let room = || Stage::room(4000.0, 4000.0).holds(NORTH, "bay", (1000.0, 1500.0), window(900.0, 2100.0, View::Plain));
    let seat = |stage: Stage| stage.piece(PieceKind::Armchair, (3500.0, -4000.0), UP, (900.0, 900.0));
    let free = seat(room()).judge(Criterion::Upkeep);
    let low = seat(room()).piece(PieceKind::Sideboard, (1750.0, 0.0), DOWN, (2000.0, 600.0));
    assert_eq!(low.upkeep().out_of_reach, [low.item("bay")]);
    let low = low.judge(Criterion::Upkeep);
    let deep = seat(room()).piece(PieceKind::Sofa, (1750.0, 0.0), DOWN, (2000.0, 1000.0)).judge(Criterion::Upkeep);
    assert!((free.figure - 100.0).abs() < 1e-6 && (low.figure - 50.0).abs() < 1e-6 && deep.figure < 1e-6);
}

#[test]
fn upkeep_wants_a_socket_within_six_feet_and_no_cord_across_a_way() {
    let lamp = |x: f64| {
        let room = Stage::room(5000.0, 6000.0).socket(WEST, "socket", 3000.0);
        let room = room.piece(PieceKind::Sofa, (2500.0, -5900.0), UP, (2100.0, 900.0));
        room.piece(PieceKind::FloorLamp, (x, -3000.0), RIGHT, (300.0, 300.0))
    };
    let (near, far) = (lamp(1800.0), lamp(2300.0));
    let figure = |stage: &Stage| stage.judge(Criterion::Upkeep).figure;
    assert!((figure(&near) - 100.0).abs() < 1e-6 && figure(&far) < 100.0);
    assert_eq!(near.upkeep().cords, []);
    let cords = far.upkeep().cords;
    let [CordFault::FarFromSocket { piece: PieceId(1), distance, floats: true }] = cords[..] else {
        panic!("{cords:?}")
    };
    assert!((distance - 2300.0).abs() < 1e-6, "{distance}");
    let crossed = lamp(1800.0)
        .entrance(NORTH, "hall door", 500.0)
        .door(SOUTH, "kitchen door", 3700.0, LeadsTo::Space("kitchen".to_owned()))
        .route("hall door", "kitchen door", 1200.0, 6000.0);
    let to = End::Item(crossed.item("kitchen door"));
    assert_eq!(crossed.upkeep().cords, [CordFault::AcrossWay { piece: PieceId(1), to }]);
    assert!(figure(&crossed) < 50.0);
}

#[test]
fn upkeep_grades_a_free_seat_like_one_at_a_wall() {
    let room = || Stage::room(5000.0, 6000.0).window(NORTH, "bay", (1000.0, 1000.0), View::Plain);
    let sofa = |x: f64, gap: f64, (facing, width): ((f64, f64), f64)| {
        room().piece(PieceKind::Sofa, (x, -6000.0 + gap), facing, (width, 900.0)).score(Criterion::Upkeep)
    };
    let at_wall = |gap: f64| {
        room().at_wall(SOUTH, PieceKind::Sofa, (2500.0, -6000.0 + gap), UP, (2100.0, 900.0)).score(Criterion::Upkeep)
    };
    for gap in [0.0, 50.0, 200.0, 304.8] {
        assert!((sofa(2500.0, gap, (UP, 2100.0)) - at_wall(gap)).abs() < 1e-9, "{gap}");
    }
    // The window is reached and the floor behind is wide: full marks, however far it stands from walls, and though its end
    // touches the side wall.
    assert!((sofa(2500.0, 2000.0, (UP, 2100.0)) - 100.0).abs() < 1e-9);
    assert!((sofa(1050.0, 2000.0, (UP, 2100.0)) - 100.0).abs() < 1e-9);
    // Turned, it has the west wall 100 behind it.
    let turned = sofa(100.0, 3000.0, (RIGHT, 2100.0));
    assert!((turned - at_wall(100.0)).abs() < 1e-9, "{turned}");
}

#[test]
fn upkeep_is_left_out_where_there_is_nothing_to_keep() {
    let missing = |stage: &Stage| {
        let left_out = left_out(&stage.brief);
        left_out.iter().find(|left_out| left_out.criterion == Criterion::Upkeep).map(|left_out| left_out.missing)
    };
    let bare = Stage::room(4000.0, 4000.0);
    assert_eq!(missing(&bare), Some(Missing::NothingToKeep));
    assert_eq!(missing(&bare.clone().socket(WEST, "socket", 300.0)), None);
    assert_eq!(missing(&bare.clone().radiator(WEST, "radiator", (300.0, 900.0))), None);
    assert_eq!(missing(&bare.window(WEST, "bay", (300.0, 900.0), View::Plain)), None);
}

#[test]
fn upkeep_likes_a_gap_to_clean() {
    let sofa = |gap: f64| {
        let stage = Stage::room(5000.0, 6000.0).window(NORTH, "bay", (1000.0, 1000.0), View::Plain);
        stage.at_wall(SOUTH, PieceKind::Sofa, (2500.0, -6000.0 + gap), UP, (2100.0, 900.0)).score(Criterion::Upkeep)
    };
    assert!(sofa(304.8) > sofa(50.0) && sofa(50.0) > sofa(0.0));
}
