//! What a plan shows agrees with the result that it is drawn from.

use elbowroom_model::Point;
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::plan::{Plan, ZoneKind, plan};
use elbowroom_solver::{Limits, Unwatched, rank};

use crate::support::ranked::brief_of;

/// Rooms with a square and with an oblique outline, a corner sofa, a fire, several ways.
const ROOMS: [&str; 5] = ["canal-flat", "fire-or-view", "oblique", "wheelchair", "which-hand"];

fn each(mut holds: impl FnMut(&Answer, &RankedOption, &Plan)) {
    for name in ROOMS {
        let path = format!("{}/../scenarios/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
        let text = std::fs::read_to_string(path).unwrap();
        let answer = rank(&brief_of(&text), &Limits { shown: 0, ..Limits::default() }, &Unwatched);
        for option in &answer.options {
            holds(&answer, option, &plan(&answer.brief, &option.layout));
        }
    }
}

#[test]
fn each_line_walked_is_as_long_as_its_way_is_told() {
    let mut walks = 0;
    each(|answer, option, plan| {
        assert_eq!(plan.walks.len(), option.routes.len());
        for (route, line) in option.routes.iter().zip(&plan.walks) {
            let length: f64 = line.windows(2).map(|leg| (leg[1] - leg[0]).norm()).sum();
            let told = route.length.unwrap();
            // Chords are a little shorter than their arcs; figures of the result are rounded.
            assert!(
                length <= told + 1.0 && length >= told * 0.995 - 1.0,
                "{} {}: {length}, {told}",
                option.key,
                route.to.name(&answer.brief)
            );
            walks += 1;
        }
    });
    assert!(walks > 100, "{walks}");
}

#[test]
fn each_gap_lies_between_places_that_are_as_far_apart_as_it_is_clear() {
    each(|_, option, plan| {
        assert_eq!(plan.gaps.len(), option.gaps.len());
        for (gap, [from, to]) in option.gaps.iter().zip(&plan.gaps) {
            let apart = (*to - *from).norm();
            assert!((apart - gap.clear).abs() < 0.01, "{} {:?}: {apart}, {}", option.key, gap.between, gap.clear);
        }
    });
}

#[test]
fn seats_lie_on_their_pieces_and_sight_lines_run_ahead() {
    each(|answer, option, plan| {
        let holds = |part: &Vec<Point>, at: Point| {
            part.iter().zip(part.iter().cycle().skip(1)).all(|(start, end)| (*end - *start).cross(at - *start) >= -1.0)
        };
        for seat in &plan.seats {
            let seats = option.pieces(&answer.brief).filter(|one| one.piece.kind.is_seat());
            let parts: Vec<Vec<Point>> = seats.flat_map(|one| one.parts()).collect();
            assert!(parts.iter().any(|part| holds(part, seat.at)), "{}", option.key);
        }
        for line in &plan.sight_lines {
            let seat = plan.seats.iter().find(|seat| seat.at == line.from).unwrap();
            assert!((line.to - line.from).dot(seat.facing) > 0.0, "{}: {line:?}", option.key);
        }
    });
}

/// A leaf sweeps a quarter disc: pi / 4 of the square on its width.
#[test]
fn a_swing_is_a_quarter_disc() {
    let mut swings = 0;
    each(|_, _, plan| {
        for zone in plan.zones.iter().filter(|zone| zone.kind == ZoneKind::Swing) {
            let twice: f64 = zone.ring.iter().zip(zone.ring.iter().cycle().skip(1)).map(|(a, b)| a.cross(*b)).sum();
            let radius = (zone.ring[1] - zone.ring[0]).norm();
            let share = twice.abs() / 2.0 / (radius * radius);
            assert!((share - std::f64::consts::FRAC_PI_4).abs() < 0.005, "{share}");
            swings += 1;
        }
    });
    assert!(swings > 20, "{swings}");
}
