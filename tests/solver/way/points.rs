//! Each point of a way at its edge, and a hair past it.

use elbowroom_model::way_in::{LandingTurn, Load, LoadPart, PointKind, Way, WayPoint};
use elbowroom_solver::way_in::turn::longest;
use elbowroom_solver::way_in::{Asks, Failed, PartCarried, Pose, carried};
use proptest::prelude::*;

pub(super) fn way(points: &[PointKind]) -> Way {
    let point = |(place, kind): (usize, &PointKind)| WayPoint { name: format!("point {}", place + 1), kind: *kind };
    Way { points: points.iter().enumerate().map(point).collect(), measured_within: 0.0, ..Way::default() }
}

fn part(sides: [f64; 3], diagonal_depth: Option<f64>) -> Load {
    let part = LoadPart { diagonal_depth, ..LoadPart::of_box("sofa".to_owned(), sides) };
    Load { name: "sofa".to_owned(), parts: vec![part] }
}

fn tried(points: &[PointKind], sides: [f64; 3]) -> PartCarried {
    carried(&way(points), &part(sides, None)).parts.remove(0)
}

fn failed(part: &PartCarried) -> Failed {
    part.fails.unwrap()
}

pub(super) const fn door(width: f64, height: f64) -> PointKind {
    PointKind::Door { width, height, from: None }
}

#[test]
fn a_door_takes_what_is_as_narrow_and_as_low() {
    // 2100 x 950 x 850: upright it needs 950, on its back 850.
    let part = tried(&[door(850.0, 2000.0)], [2100.0, 950.0, 850.0]);
    assert!(part.gets_in && part.held == [Pose::Lying], "{part:?}");
    assert_eq!(part.poses[0].fails.unwrap().short_by, Some(100.0));
    let part = tried(&[door(849.0, 2000.0)], [2100.0, 950.0, 850.0]);
    assert_eq!((failed(&part).asks, failed(&part).short_by, failed(&part).pose), (Asks::Width, Some(1.0), Pose::Lying));
    // On end its length must clear the head (C).
    let part = tried(&[door(800.0, 2000.0)], [2001.0, 950.0, 800.5]);
    assert!(!part.gets_in);
    assert_eq!(part.poses[2].fails.unwrap().asks, Asks::Height);
}

#[test]
fn a_diagonal_depth_that_is_given_counts() {
    let way = way(&[door(780.0, 2000.0)]);
    let sides = [2100.0, 950.0, 850.0];
    assert!(!carried(&way, &part(sides, None)).gets_in);
    assert!(!carried(&way, &part(sides, Some(781.0))).gets_in);
    let tilted = carried(&way, &part(sides, Some(780.0)));
    assert!(tilted.gets_in && tilted.parts[0].held == [Pose::Tilted], "{tilted:?}");
}

#[test]
fn a_measurement_that_may_be_off_counts_as_so_much_less() {
    let mut narrow = way(&[door(850.0, 2000.0)]);
    narrow.measured_within = 5.0;
    assert!(!carried(&narrow, &part([2100.0, 950.0, 846.0], None)).gets_in);
    assert!(carried(&narrow, &part([2100.0, 950.0, 845.0], None)).gets_in);
}

#[test]
fn a_turn_is_by_the_exact_formula_and_by_height() {
    let turn = PointKind::Turn { from: 1200.0, to: 1200.0, ceiling: Some(1400.0) };
    let most = longest(1200.0, 1200.0, 950.0);
    // Too long on end for the ceiling, too high to lie on its back: upright, or not at all.
    assert!(tried(&[turn], [most - 0.001, 950.0, 1300.0]).gets_in);
    let part = tried(&[turn], [most + 3.0, 950.0, 1300.0]);
    assert_eq!(part.held, [Pose::OnEnd; 0]);
    assert_eq!(part.poses[0].fails.unwrap().asks, Asks::Turn);
    assert!((part.poses[0].fails.unwrap().short_by.unwrap() - 3.0).abs() < 1e-6);
}

#[test]
fn stairs_ask_for_width_and_for_headroom_along_the_slope() {
    let stairs = |headroom: f64| PointKind::Stairs { width: 900.0, headroom, pitch: 42_f64.to_radians() };
    // 800 high, carried along the slope, takes 800 / cos 42 straight up (D).
    let needs = 800.0 / 42_f64.to_radians().cos();
    let sides = [2400.0, 850.0, 800.0];
    assert!(tried(&[stairs(needs + 0.01)], sides).gets_in);
    let part = tried(&[stairs(needs - 10.0)], [2400.0, 800.0, 850.0]);
    assert!(!part.gets_in && failed(&part).asks == Asks::Headroom, "{part:?}");
}

#[test]
fn a_half_turn_takes_what_lies_along_the_landing_or_stands_on_end() {
    let landing = |turn, ceiling| PointKind::Landing {
        turn,
        from: 900.0,
        pitch: 0.0,
        depth: 1000.0,
        width: 2000.0,
        ceiling: Some(ceiling),
    };
    let part = tried(&[landing(LandingTurn::Half, 2009.0)], [2010.0, 300.0, 300.0]);
    assert_eq!((failed(&part).asks, failed(&part).short_by), (Asks::Height, Some(1.0)));
    assert_eq!(part.poses[0].fails.unwrap().short_by, Some(10.0));
    assert!(tried(&[landing(LandingTurn::Quarter, 2009.0)], [2010.0, 300.0, 300.0]).gets_in);
    assert_eq!(tried(&[landing(LandingTurn::Half, 2011.0)], [2010.0, 300.0, 300.0]).held, [Pose::OnEnd]);
}

/// (D) 2300 x 300 x 300 in the slope of a flight of 40 degrees is 2300 cos 40 + 300 sin 40 = 1954.7 seen from above, and
/// reaches 2300 sin 40 + 300 cos 40 = 1708.2 high.
#[test]
fn on_a_landing_a_piece_turns_in_the_plane_of_the_stairs() {
    let landing = |pitch: f64, width, ceiling| PointKind::Landing {
        turn: LandingTurn::Half,
        from: 1200.0,
        pitch: pitch.to_radians(),
        depth: 1200.0,
        width,
        ceiling: Some(ceiling),
    };
    let long = [2300.0, 300.0, 300.0];
    assert!(tried(&[landing(40.0, 1954.8, 1708.3)], long).gets_in);
    assert!(!tried(&[landing(40.0, 1954.6, 1708.3)], long).gets_in);
    assert!(!tried(&[landing(40.0, 1954.8, 1708.1)], long).gets_in);
    assert!(!tried(&[landing(1.0, 1954.8, 1708.3)], long).gets_in);
    // Level is never lost by it.
    assert!(tried(&[landing(40.0, 2300.0, 301.0)], long).gets_in);
}

#[test]
fn a_lift_takes_what_goes_straight_in() {
    let lift = PointKind::Lift { door: 800.0, height: 2000.0, width: 1100.0, depth: 1400.0, ceiling: Some(2200.0) };
    assert!(tried(&[lift], [1400.0, 800.0, 900.0]).gets_in);
    // 1401 long stands on end under the door's head.
    assert_eq!(tried(&[lift], [1401.0, 800.0, 900.0]).held, [Pose::OnEnd]);
    let part = tried(&[lift], [2050.0, 800.0, 900.0]);
    assert!(!part.gets_in);
    assert_eq!((failed(&part).asks, failed(&part).short_by), (Asks::Height, Some(50.0)));
}

#[test]
fn a_piece_is_turned_over_where_a_hall_has_room_for_that() {
    let sides = [1900.0, 950.0, 700.0];
    // It enters upright or lying under a low head, and turns only on end.
    let low = door(1000.0, 1000.0);
    let tight = PointKind::Turn { from: 960.0, to: 960.0, ceiling: None };
    let hall = |ceiling: f64| PointKind::Hall { width: 1500.0, ceiling: Some(ceiling) };
    let upward = 1900_f64.hypot(700.0).min(1900_f64.hypot(950.0));
    assert!(tried(&[low, hall(upward + 1.0), tight], sides).gets_in);
    let no_room = PointKind::Turn { from: 960.0, to: 960.0, ceiling: Some(1950.0) };
    let part = tried(&[low, hall(upward - 1.0), no_room], sides);
    assert_eq!((failed(&part).at, failed(&part).pose, failed(&part).short_by), (2, Pose::OnEnd, None));
}

fn kinds() -> impl Strategy<Value = PointKind> {
    let high = || proptest::option::of(1500.0_f64..3000.0);
    prop_oneof![
        (600.0_f64..1200.0, 1700.0_f64..2300.0, proptest::option::of(700.0_f64..1500.0))
            .prop_map(|(width, height, from)| PointKind::Door { width, height, from }),
        (700.0_f64..1500.0, high()).prop_map(|(width, ceiling)| PointKind::Hall { width, ceiling }),
        (700.0_f64..1500.0, 700.0_f64..1500.0, high()).prop_map(|(from, to, ceiling)| PointKind::Turn {
            from,
            to,
            ceiling
        }),
        (700.0_f64..1300.0, 1800.0_f64..3000.0, 0.3_f64..0.8).prop_map(|(width, headroom, pitch)| PointKind::Stairs {
            width,
            headroom,
            pitch
        }),
        (any::<bool>(), 700.0_f64..1300.0, 0.3_f64..0.8, 600.0_f64..1500.0, 800.0_f64..3000.0, high()).prop_map(
            |(half, from, pitch, depth, width, ceiling)| {
                let turn = if half { LandingTurn::Half } else { LandingTurn::Quarter };
                PointKind::Landing { turn, from, pitch, depth, width, ceiling }
            }
        ),
        (700.0_f64..1100.0, 1900.0_f64..2200.0, 900.0_f64..1600.0, 1000.0_f64..2400.0, high())
            .prop_map(|(door, height, width, depth, ceiling)| PointKind::Lift { door, height, width, depth, ceiling }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    /// What gets in, gets in smaller; and where it fails, it fails by no less when larger.
    #[test]
    fn what_is_smaller_gets_in_too(
        points in proptest::collection::vec(kinds(), 1..5),
        sides in [300.0_f64..2500.0, 300.0_f64..1200.0, 300.0_f64..1200.0],
        less in [0.5_f64..1.0, 0.5_f64..1.0, 0.5_f64..1.0],
    ) {
        let way = way(&points);
        let smaller = [sides[0] * less[0], sides[1] * less[1], sides[2] * less[2]];
        if carried(&way, &part(sides, None)).gets_in {
            prop_assert!(carried(&way, &part(smaller, None)).gets_in);
        }
    }

    /// A piece gets in where some pose passes everywhere, and a failure names a point that no pose passes or reaches.
    #[test]
    fn a_verdict_holds_with_its_poses(
        points in proptest::collection::vec(kinds(), 1..5),
        sides in [300.0_f64..2500.0, 300.0_f64..1200.0, 300.0_f64..1200.0],
    ) {
        let found = carried(&way(&points), &part(sides, None)).parts.remove(0);
        let kept = found.poses.iter().any(|tried| tried.fails.is_none());
        prop_assert!(!kept || found.gets_in);
        prop_assert_eq!(found.gets_in, found.fails.is_none());
        prop_assert_eq!(found.held.len(), if found.gets_in { points.len() } else { 0 });
        if let Some(tight) = found.tightest {
            prop_assert!(tight.spare >= -1e-6);
        }
        if let Some(short) = found.fails.and_then(|fails| fails.short_by) {
            prop_assert!(short > 0.0);
        }
    }
}
