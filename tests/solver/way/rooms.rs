//! With a way in, no size is larger than what gets in by it, and the result says what holds it.

use elbowroom_model::way_in::Load;
use elbowroom_model::{Brief, Dimension, PieceId, Rule, scenario};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::cautions::Caution;
use elbowroom_solver::notice::Notice;
use elbowroom_solver::refusal::{DoesNotGetIn, Why};
use elbowroom_solver::sizes::Holding;
use elbowroom_solver::way_in::{carried, most_that_gets_in};

use crate::support::ranked::{figures, piece, ranked_brief};
use crate::support::remedied::remedied;

const ROOM: &str = "
units: cm
measured_within: 0
walls:
  - { name: north, length: 600 }
  - { name: east, length: 500 }
  - { name: south, length: 600, holds: [{ kind: door, name: hall door, at: 20, width: 90, hinge: left, swings: out, leads_to: entrance }] }
  - { name: west, length: 500 }
pieces:
  - { kind: sofa, width: 150..280, depth: 80..110, height: 90 }
  - { kind: bookcase, name: books, width: 60..140, depth: 25..40, height: 200, needed: false }
way:
";

fn room(way: &str) -> Brief {
    let text = format!("{ROOM}{way}");
    scenario::read(&text, None).unwrap_or_else(|faults| panic!("{faults:#?}"))
}

fn solved(brief: &Brief) -> Answer {
    ranked_brief(brief, Limits { shown: 3, ..Limits::default() })
}

const TURN: &str = "  - { kind: turn, name: landing, from: 110, to: 105, ceiling: 150 }\n";

#[test]
fn no_size_is_larger_than_what_gets_in_and_the_way_is_named() {
    let brief = room(TURN);
    let way = brief.way.clone().unwrap();
    let most = most_that_gets_in(&way, &brief.pieces[0]).unwrap();
    assert!(most[0] < 2800.0, "{most:?}");
    let answer = solved(&brief);
    let mut named = 0;
    for option in &answer.options {
        let sofa = piece(&answer, option, "sofa").sizes;
        let (width, depth) = (figures(sofa, Dimension::Width), figures(sofa, Dimension::Depth));
        assert!(width.together <= most[0] + 0.1 && depth.together <= most[2] + 0.1);
        assert!(width.most <= most[0] + 0.1);
        let load = Load::of(&brief.pieces[0], width.together - 0.1, None, depth.together - 0.1);
        assert!(carried(&way, &load).gets_in);
        let landing = way.points.iter().position(|point| point.name == "landing");
        named += usize::from(sofa.held_by.iter().any(|held| held.by == Holding::Way(landing)));
    }
    assert!(named >= 1, "{:#?}", answer.options[0].sizes[0].held_by);
    assert!(answer.notices.contains(&Notice::Caution(Caution::MeasureTwice)));
}

#[test]
fn a_way_that_is_wide_enough_changes_nothing() {
    let wide = room("  - { kind: turn, from: 400, to: 400 }\n");
    let mut without = wide.clone();
    without.way = None;
    let (one, other) = (solved(&wide), solved(&without));
    assert_eq!((one.options, one.work), (other.options, other.work));
}

#[test]
fn what_may_go_is_left_out_and_what_may_not_stops_the_room() {
    // The landing is too short for the bookcase, also in the slope of the flight, and too low for it on its feet.
    let low = room(
        "  - { kind: stairs, width: 120, headroom: 210, landing: { turn: half, depth: 140, width: 155, ceiling: 190 } }\n",
    );
    let answer = solved(&low);
    assert!(!answer.options.is_empty());
    assert_eq!(low.pieces[1].name, "books");
    assert_eq!(answer.outside, [PieceId(1)]);
    assert!(answer.options.iter().all(|option| option.layout.of(PieceId(0)).is_some() && option.sizes.len() == 1));
    let narrow = room("  - { kind: door, name: slit, width: 75, height: 140 }\n");
    let answer = solved(&narrow);
    assert!(answer.options.is_empty());
    let refused = &answer.refused[0];
    assert_eq!((refused.rule(), refused.short_by()), (Rule::Way, Some(50.0)), "{refused:?}");
    let Why::DoesNotGetIn(DoesNotGetIn { piece: PieceId(0), fails }) = refused.why else { panic!("{refused:?}") };
    assert_eq!(narrow.way.as_ref().unwrap().points[fails.at].name, "slit");
    let [remedy] = answer.remedies.as_slice() else { panic!("{:?}", answer.remedies) };
    let eased = remedied(&narrow, remedy).unwrap();
    assert!(!solved(&eased).options.is_empty(), "{remedy:?}");
}

#[test]
fn the_room_s_own_door_ends_the_way() {
    let brief = room(TURN);
    let points: Vec<_> = brief.way.unwrap().points.into_iter().map(|point| point.name).collect();
    assert_eq!(points, ["landing", "hall door"]);
    let brief = room("  - { kind: door, room_door: hall door, height: 200 }\n");
    assert_eq!(brief.way.unwrap().points.len(), 1);
}
