//! What a criterion says where what it judges does not stand, or the room does not offer it.

use elbowroom_model::{Criterion, LeadsTo, PieceId, PieceKind, View};
use elbowroom_solver::criteria::{Absent, FigureUnit, Finding, left_out};

use super::stage::{DOWN, NORTH, SOUTH, Stage, UP, WEST};

/// A room with something for every criterion but a seat.
fn without_a_seat() -> Stage {
    Stage::room(5000.0, 4000.0)
        .window(NORTH, "bay", (1400.0, 1200.0), View::Liked)
        .entrance(WEST, "hall door", 200.0)
        .fireplace(SOUTH, "hearth", (2000.0, 1000.0))
        .piece(PieceKind::MediaUnit, (2500.0, -3800.0), UP, (1600.0, 450.0))
        .piece(PieceKind::Bookcase, (4000.0, 0.0), DOWN, (800.0, 300.0))
        .route("hall door", "bay", 1100.0, 4000.0)
}

fn sofa_left_out() -> Stage {
    without_a_seat().piece(PieceKind::Sofa, (2500.0, -2000.0), UP, (2100.0, 900.0)).left_out()
}

/// A sofa in the middle of a room has no wall behind it, and none is named: it is on an axis with nothing.
#[test]
fn a_free_seat_with_nothing_before_it_is_off_no_axis() {
    let room = Stage::room(6000.0, 6000.0).piece(PieceKind::Sofa, (3000.0, -2700.0), UP, (2000.0, 900.0));
    let judged = room.judge(Criterion::Balance);
    assert_eq!((judged.score, judged.figure, judged.unit), (100.0, 0.0, FigureUnit::Millimetres));
    assert_eq!(room.balance().worst, None);
    // The sofa's middle lies 450 before the middle of its back, which is 300 north of the room's middle.
    assert!((room.balance().lean - 750.0).abs() < 1e-6, "{:?}", room.balance());
}

#[test]
fn a_media_unit_that_was_asked_for_and_does_not_stand_counts_nothing() {
    let room = Stage::room(5000.0, 4000.0).piece(PieceKind::Sofa, (2500.0, -3900.0), UP, (2100.0, 900.0));
    let judged = room.piece(PieceKind::MediaUnit, (2500.0, 0.0), DOWN, (1600.0, 450.0)).left_out();
    let judged = judged.judge(Criterion::Screen);
    assert_eq!((judged.score, judged.figure, judged.unit), (0.0, 0.0, FigureUnit::Count));
    assert_eq!(judged.finding, Finding::Absent(Absent::Screen(PieceId(1))));
}

#[test]
fn where_nobody_sits_what_sitters_have_counts_nothing_and_the_rest_is_judged() {
    let stage = sofa_left_out();
    let absent = |criterion| stage.judge(criterion).finding == Finding::Absent(Absent::Seats);
    let of_sitters = [Criterion::View, Criterion::Entrance, Criterion::Screen, Criterion::Talk, Criterion::Daylight];
    for criterion in of_sitters.into_iter().chain([Criterion::Balance, Criterion::Fireside]) {
        assert!(absent(criterion) && stage.score(criterion) == 0.0, "{criterion:?}");
    }
    let judged = [Criterion::Openness, Criterion::Ways, Criterion::Seats, Criterion::Upkeep];
    assert!(judged.into_iter().all(|criterion| !absent(criterion) && stage.score(criterion) > 0.0));
    assert_eq!((stage.seats().places, stage.seats().left_out), (0, vec![PieceId(2)]));
}

#[test]
fn where_nothing_stands_that_a_way_leads_to_ways_count_nothing() {
    let mut stage = sofa_left_out();
    stage.routes.clear();
    assert_eq!(stage.judge(Criterion::Ways).finding, Finding::Absent(Absent::Ways));
}

#[test]
fn another_seat_takes_the_part_of_a_main_seat_that_does_not_stand() {
    let chair = |stage: Stage| stage.piece(PieceKind::Armchair, (1000.0, -2000.0), UP, (900.0, 900.0));
    let (with_sofa_left_out, alone) = (chair(sofa_left_out()), chair(without_a_seat()));
    for criterion in [Criterion::View, Criterion::Screen, Criterion::Talk, Criterion::Fireside] {
        let (one, other) = (with_sofa_left_out.judge(criterion), alone.judge(criterion));
        assert_eq!((one.score, one.figure), (other.score, other.figure), "{criterion:?}");
    }
    assert_eq!(with_sofa_left_out.balance().seat, PieceId(3));
}

#[test]
fn seats_are_judged_where_no_piece_has_a_weight() {
    let sofa = Stage::room(6000.0, 5000.0).piece(PieceKind::Sofa, (3000.0, -4900.0), UP, (2100.0, 950.0));
    let weightless = sofa.clone().with_piece(|piece| piece.weight = 0.0);
    assert_eq!(weightless.score(Criterion::Seats), sofa.score(Criterion::Seats));
}

#[test]
fn which_criteria_apply_is_a_matter_of_the_brief_alone() {
    let applying = |stage: &Stage| -> Vec<Criterion> {
        let missing: Vec<Criterion> = left_out(&stage.brief).iter().map(|left_out| left_out.criterion).collect();
        Criterion::ALL.iter().copied().filter(|criterion| !missing.contains(criterion)).collect()
    };
    let told = |stage: &Stage| -> Vec<Criterion> { stage.judged().iter().map(|one| one.criterion).collect() };
    let (full, empty) = (sofa_left_out(), Stage { layout: Default::default(), ..sofa_left_out() });
    let bare = Stage::room(4000.0, 4000.0).door(WEST, "door", 500.0, LeadsTo::Space("hall".to_owned()));
    let bare = bare.piece(PieceKind::Sofa, (2000.0, -3900.0), UP, (2100.0, 900.0)).left_out();
    for stage in [full, empty, bare] {
        assert_eq!(told(&stage), applying(&stage));
    }
}
