//! What holds of every layout.

use elbowroom_model::{Criterion, Fixed, Hand, PieceKind, Point, Stance, View};
use elbowroom_solver::Placed;
use elbowroom_solver::criteria::sun::Almanac;
use proptest::prelude::{Strategy, any, proptest};

use super::stage::{DOWN, EAST, LEFT, NORTH, RIGHT, SOUTH, Stage, UP, WEST};

/// Where the pieces of a generated layout stand: no rule is kept, for a criterion must bear anything.
#[derive(Debug, Clone)]
struct Pose {
    places: Vec<(f64, f64)>,
    facings: Vec<usize>,
    hand: bool,
    chaise: bool,
}

fn poses() -> impl Strategy<Value = Pose> {
    let place = (200.0..4800.0_f64, -3600.0..-100.0_f64);
    let places = proptest::collection::vec(place, 7);
    let facings = proptest::collection::vec(0..4_usize, 7);
    let pose = |(places, facings, hand, chaise)| Pose { places, facings, hand, chaise };
    (places, facings, any::<bool>(), any::<bool>()).prop_map(pose)
}

/// A room with something for every criterion, furnished in that way, everything moved by `shift`.
fn furnished(pose: &Pose, shift: (f64, f64)) -> Stage {
    let at = |i: usize| (pose.places[i].0 + shift.0, pose.places[i].1 + shift.1);
    let facing = |i: usize| [UP, DOWN, LEFT, RIGHT][pose.facings[i]];
    let hand = if pose.hand { Hand::Left } else { Hand::Right };
    let room = Stage::room(5000.0, 3720.0)
        .window(NORTH, "bay", (820.0, 2200.0), View::Liked)
        .window(SOUTH, "yard window", (3000.0, 900.0), View::Avoided)
        .entrance(EAST, "hall door", 200.0)
        .opening(WEST, "dining side", (600.0, 2000.0), Stance::Open)
        .opening(EAST, "kitchen side", (2000.0, 1500.0), Stance::Away)
        .fireplace(SOUTH, "hearth", (900.0, 1100.0))
        .radiator(NORTH, "radiator", (1000.0, 1800.0))
        .socket(WEST, "socket", 300.0)
        .corner_sofa(at(0), facing(0), hand, (2350.0, 2000.0, 980.0))
        .with_piece(|sofa| sofa.chaise = pose.chaise)
        .piece(PieceKind::CoffeeTable, at(1), facing(1), (1000.0, 600.0))
        .piece(PieceKind::MediaUnit, at(2), facing(2), (1600.0, 450.0))
        .with_piece(|unit| unit.screen = Some(1397.0))
        .piece(PieceKind::Armchair, at(3), facing(3), (900.0, 900.0))
        .piece(PieceKind::Bookcase, at(4), facing(4), (800.0, 300.0))
        .piece(PieceKind::FloorLamp, at(5), facing(5), (350.0, 350.0))
        .piece(PieceKind::Rug, at(6), facing(6), (2400.0, 1700.0))
        .route("hall door", "dining side", 1100.0, 5400.0);
    let mut room = room;
    room.brief.room.latitude = Some(52.1);
    room.brief.room.bearing = Some((elbowroom_model::WallId(NORTH), 205.0));
    let post = [(2400.0, -1700.0), (2600.0, -1700.0), (2600.0, -1900.0), (2400.0, -1900.0)];
    let corners = post.map(|(x, y)| Point::new(x, y)).into_iter().rev().collect();
    room.layout.placed.iter_mut().for_each(|placed| move_in(placed, (5000.0, 3720.0)));
    room.brief.room.fixed.push(Fixed {
        name: "post".to_owned(),
        kind: "pillar".to_owned(),
        corners,
        height: None,
        use_depth: None,
        used_at: elbowroom_model::UsedAt::Longest,
    });
    room
}

/// Moves what sticks out of the room into it.
fn move_in(placed: &mut Placed, (width, depth): (f64, f64)) {
    let reach = |placed: &Placed, way: Point| {
        placed.parts().iter().map(|part| part.support(way)).fold(f64::NEG_INFINITY, f64::max)
    };
    for (way, most) in [((1.0, 0.0), width), ((-1.0, 0.0), 0.0), ((0.0, 1.0), 0.0), ((0.0, -1.0), depth)] {
        let way = Point::new(way.0, way.1);
        placed.anchor = placed.anchor - way * (reach(placed, way) - most + 10.0).max(0.0);
    }
}

/// Mirrors turn the compass too: the sun's part is judged without a bearing there.
fn without_sun(mut stage: Stage) -> Stage {
    stage.brief.room.bearing = None;
    stage
}

fn same(one: &Stage, other: &Stage) {
    for (one, same) in one.judged().iter().zip(other.judged()) {
        assert_eq!(one.criterion, same.criterion);
        assert!((one.score - same.score).abs() < 1e-6, "{:?}: {} {}", one.criterion, one.score, same.score);
        assert!((one.figure - same.figure).abs() < 1e-6, "{:?}: {} {}", one.criterion, one.figure, same.figure);
    }
}

proptest! {
    #![proptest_config(crate::laws::few(48))]

    #[test]
    fn all_criteria_come_in_their_order_and_in_range(pose in poses()) {
        let judged = furnished(&pose, (0.0, 0.0)).judged();
        let order: Vec<Criterion> = judged.iter().map(|judgement| judgement.criterion).collect();
        assert_eq!(order, Criterion::ALL);
        for judgement in judged {
            assert!((0.0..=100.0).contains(&judgement.score), "{judgement:?}");
            assert!(judgement.figure.is_finite(), "{judgement:?}");
        }
    }

    #[test]
    fn a_mirror_changes_no_score(pose in poses()) {
        let stage = without_sun(furnished(&pose, (0.0, 0.0)));
        same(&stage, &stage.mirrored());
    }

    #[test]
    fn a_turn_of_the_plan_changes_no_score(pose in poses(), degrees in 0.0..360.0_f64) {
        let stage = furnished(&pose, (0.0, 0.0));
        same(&stage, &stage.turned(degrees));
    }

    #[test]
    fn the_same_layout_is_judged_the_same(pose in poses()) {
        let stage = furnished(&pose, (0.0, 0.0));
        assert_eq!(stage.judged(), stage.judged());
    }

    /// Nothing leaps: a millimetre moves no score by more than a point or two. Ways and upkeep may leap where the
    /// shortest walk changes to the other side of a piece.
    #[test]
    fn scores_have_no_cliffs(pose in poses(), x in -1.0..1.0_f64, y in -1.0..1.0_f64) {
        let (before, after) = (furnished(&pose, (0.0, 0.0)).judged(), furnished(&pose, (x, y)).judged());
        for (before, after) in before.iter().zip(after) {
            let leaps = matches!(before.criterion, Criterion::Ways | Criterion::Upkeep);
            let change = (before.score - after.score).abs();
            assert!(leaps || change < 1.5, "{:?}: {} {}", before.criterion, before.score, after.score);
        }
    }
}

/// Which of two is met first at one distance is no matter of rounding.
#[test]
fn pieces_that_lie_over_one_another_are_met_the_same_in_a_turned_plan() {
    let aside = (200.0, -100.0);
    let places = vec![(2670.910946, -100.0), aside, (4788.664981, -100.0), aside, aside, aside, aside];
    let pose = Pose { places, facings: vec![1, 0, 3, 0, 0, 0, 0], hand: false, chaise: false };
    let stage = furnished(&pose, (0.0, 0.0));
    for degrees in [14.855, 30.0, 45.0, 90.0] {
        same(&stage, &stage.turned(degrees));
    }
}

/// The equation of time: at noon in Greenwich the sun is past the meridian by no more than 16 min 27 s, and short of it by no more than
/// 14 min 15 s (M: Meeus, Astronomical Algorithms, chapter on it), a quarter of a degree a minute; it comes close to both each year,
/// and to both tropics.
#[test]
fn the_sun_keeps_the_equation_of_time() {
    let at = |day: i32| {
        let sun = Almanac::at(f64::from(day));
        ((sun.greenwich_hour_angle + 180.0).rem_euclid(360.0) - 180.0, sun.declination)
    };
    for year in 0..40 {
        let range = |of: fn((f64, f64)) -> f64| {
            let days = (0..366).map(|day| of(at(year * 365 + day)));
            days.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), it| (least.min(it), most.max(it)))
        };
        let (short, past) = range(|sun| sun.0 * 4.0);
        assert!((-14.4..-14.0).contains(&short) && (16.2..16.6).contains(&past), "{year}: {short} {past}");
        let (south, north) = range(|sun| sun.1);
        assert!((-23.45..-23.4).contains(&south) && (23.4..23.45).contains(&north), "{year}: {south} {north}");
    }
}
