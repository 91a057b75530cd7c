//! Ways, daylight, balance, upkeep: the group in its room.

use elbowroom_model::{Criterion, LeadsTo, PieceId, PieceKind, View, WallId};
use elbowroom_solver::criteria::FigureUnit;
use elbowroom_solver::criteria::balance::{Centred, Mark};
use elbowroom_solver::criteria::upkeep::CordFault;
use elbowroom_solver::criteria::ways::PastGroup;
use elbowroom_solver::routes::End;

use super::stage::{DOWN, EAST, NORTH, RIGHT, SOUTH, Stage, UP, WEST, window};

/// A sofa and a screen across the middle of a room, its doors opposite each other at `at` from the north.
fn two_doors(at: f64) -> Stage {
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

/// A sofa of 2400 at the south wall, `off` from its middle.
fn at_the_south_wall(off: f64) -> Stage {
    Stage::room(3600.0, 4000.0).at_wall(SOUTH, PieceKind::Sofa, (1800.0 + off, -4000.0), UP, (2400.0, 900.0))
}

#[test]
fn balance_wants_the_sofa_centred() {
    let (centred, off) =
        (at_the_south_wall(0.0).judge(Criterion::Balance), at_the_south_wall(300.0).judge(Criterion::Balance));
    assert!(centred.figure < 1e-9 && (off.figure - 300.0).abs() < 1e-6);
    assert!(centred.score > off.score + 10.0);
    let found = at_the_south_wall(300.0).balance();
    assert!(matches!(found.centred, Some(Centred { on: Mark::Wall(WallId(SOUTH)), .. })), "{found:?}");
    assert!((found.of_wall.unwrap() - 2400.0 / 3600.0).abs() < 1e-9, "{found:?}");
    // A window above it that is off in the same way makes it centred again.
    let under = at_the_south_wall(300.0).window(SOUTH, "bay", (900.0, 1200.0), View::Plain);
    assert!(under.judge(Criterion::Balance).figure < 1e-6);
}

#[test]
fn balance_knows_proportions() {
    let sofa = |width| {
        let stage = Stage::room(3600.0, 4000.0);
        stage.at_wall(SOUTH, PieceKind::Sofa, (1800.0, -4000.0), UP, (width, 900.0)).score(Criterion::Balance)
    };
    assert!(sofa(2400.0) > sofa(1500.0) && sofa(2400.0) > sofa(3500.0));
    let table = |width| {
        let stage = at_the_south_wall(0.0);
        stage.piece(PieceKind::CoffeeTable, (1800.0, -2600.0), UP, (width, 500.0)).score(Criterion::Balance)
    };
    assert!(table(1400.0) > table(700.0) && table(1400.0) > table(2400.0));
}

#[test]
fn balance_notices_a_seat_past_the_rug_and_an_empty_side() {
    let rug = |width| {
        let stage = at_the_south_wall(0.0);
        stage.piece(PieceKind::Rug, (1800.0, -3500.0), UP, (width, 1500.0))
    };
    let (wide, narrow) = (rug(2800.0), rug(2000.0));
    assert!((narrow.balance().past_rug.unwrap() - 200.0).abs() < 1e-6, "{:?}", narrow.balance());
    assert_eq!(wide.balance().past_rug, None);
    assert!(wide.score(Criterion::Balance) > narrow.score(Criterion::Balance));
    let even = at_the_south_wall(0.0).piece(PieceKind::MediaUnit, (1800.0, 0.0), DOWN, (2400.0, 900.0));
    let lopsided = at_the_south_wall(0.0);
    assert!(lopsided.balance().empty_side && !even.balance().empty_side);
    assert!(even.score(Criterion::Balance) > lopsided.score(Criterion::Balance));
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
fn upkeep_likes_a_gap_to_clean() {
    let sofa = |gap: f64| {
        let stage = Stage::room(5000.0, 6000.0).window(NORTH, "bay", (1000.0, 1000.0), View::Plain);
        stage.at_wall(SOUTH, PieceKind::Sofa, (2500.0, -6000.0 + gap), UP, (2100.0, 900.0)).score(Criterion::Upkeep)
    };
    assert!(sofa(304.8) > sofa(50.0) && sofa(50.0) > sofa(0.0));
}
