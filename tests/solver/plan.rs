//! What a plan shows agrees with the result that it is drawn from.

use elbowroom_model::Point;
use elbowroom_solver::Placed;
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::plan::{Plan, ZoneKind, plan};
use elbowroom_solver::routes::{End, Route};
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
        for (route, walked) in option.routes.iter().zip(&plan.walks) {
            let line = &walked.line;
            let length: f64 = line.windows(2).map(|leg| (leg[1] - leg[0]).norm()).sum();
            let (told, to_seat) = (route.length.unwrap(), leads_to_a_seat(answer, route));
            // Chords are a little shorter than their arcs; figures of the result are rounded.
            assert!(
                walked.steps_in || (length >= told * 0.995 - 1.0 && (length <= told + 1.0 || to_seat)),
                "{} {}: {length}, {told}",
                option.key,
                route.to.name(&answer.brief)
            );
            walks += 1;
        }
    });
    assert!(walks > 100, "{walks}");
}

/// Round the table before it, which is left out of how long the way is told.
fn leads_to_a_seat(answer: &Answer, route: &Route) -> bool {
    matches!(route.to, End::Piece(id) if answer.brief.piece(id).is_some_and(|piece| piece.kind.is_seat()))
}

#[test]
fn a_line_walked_ends_at_the_front_of_its_seat_and_runs_over_no_table() {
    let (mut to_seats, mut steps_in) = (0, 0);
    each(|answer, option, plan| {
        for (route, walked) in option.routes.iter().zip(&plan.walks).filter(|(route, _)| leads_to_a_seat(answer, route))
        {
            let End::Piece(id) = route.to else { continue };
            let seat = option.layout.of(id).unwrap();
            let end = *walked.line.last().unwrap();
            let off = seat.facing.dot(end - seat.anchor) - seat.size.depth;
            assert!(off.abs() < 1.0, "{} {}: {off} off its front", option.key, route.to.name(&answer.brief));
            let solid = |placed: &&Placed| answer.brief.piece(placed.piece).unwrap().stops_walkers();
            for part in option.layout.placed.iter().filter(solid).flat_map(Placed::parts) {
                for leg in walked.line.windows(2) {
                    let middle = (leg[0] + leg[1]) * 0.5;
                    assert!(part.depth_of(middle) < 5.0, "{} {}", option.key, route.to.name(&answer.brief));
                }
            }
            to_seats += 1;
            steps_in += usize::from(walked.steps_in);
        }
    });
    assert!(to_seats > 50 && steps_in > 10, "{to_seats} {steps_in}");
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
