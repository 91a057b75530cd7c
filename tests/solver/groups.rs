//! A second group in a room that is ranked: it stands by itself, whole, and counts for nothing in the main one.

use elbowroom_model::{Criterion, PieceId, Point};
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::criteria::Finding;
use elbowroom_solver::geometry::apart;
use elbowroom_solver::group_places::{GroupBy, group_places};
use elbowroom_solver::{Layout, Placed};

use crate::support::ranked::ranked;

/// A room with two windows, a sofa's group, and what `more` says.
fn room(more: &str) -> String {
    format!(
        "units: cm\nwalls:\n  - {{ name: north, length: 620, holds: [{{ kind: window, name: bay, at: 380, width: 160, sill: 80 }}] }}\n  \
         - {{ name: east, length: 460 }}\n  - {{ name: south, length: 620, holds: [{{ kind: door, name: hall door, at: 500, width: 83, \
         hinge: right, swings: in, leads_to: entrance }}] }}\n  - {{ name: west, length: 460 }}\npieces:\n  - {{ kind: sofa, width: 200 }}\n  \
         - {{ kind: coffee-table, width: 100, depth: 60 }}\n{more}"
    )
}

const READING: &str = "  - { kind: armchair, name: reading chair, group: reading, width: 80, depth: 85 }\n  \
                       - { kind: floor-lamp, name: reading light, group: reading, width: 35 }\n  \
                       - { kind: side-table, name: reading table, at: reading chair, width: 40 }\n";

fn named<'a>(answer: &Answer, option: &'a RankedOption, name: &str) -> &'a Placed {
    let id = answer.brief.piece_ids().find(|id| answer.brief.piece_name(*id) == name).unwrap();
    option.layout.of(id).unwrap()
}

#[test]
fn a_reading_group_stands_by_itself_with_its_lamp_and_its_table() {
    let answer = ranked(&room(READING));
    assert!(!answer.options.is_empty(), "{:?}", answer.refused);
    for option in &answer.options {
        let [sofa, chair] = ["sofa", "reading chair"].map(|name| named(&answer, option, name));
        assert!(apart(&sofa.main(), &chair.main()) >= 600.0 - 0.5, "{}", option.key);
        for served in ["reading light", "reading table"] {
            let served = named(&answer, option, served);
            assert!(apart(&served.main(), &chair.main()) <= 300.5, "{}", option.key);
        }
        // A chair by itself stands at a wall, and its place is told.
        assert!(chair.at_wall.is_some(), "{}", option.key);
        let places = group_places(&answer.brief, &option.layout);
        assert!(places.len() == 1 && places[0].group == "reading" && places[0].by != GroupBy::Free, "{places:?}");
        assert!(option.choices.second_seats.iter().all(Vec::is_empty), "it is no second seat: {}", option.key);
    }
}

#[test]
fn the_main_group_is_judged_as_if_the_other_were_not_there() {
    let talk = |option: &RankedOption| match option.judgement(Criterion::Talk).map(|talk| &talk.finding) {
        Some(Finding::Talk(finding)) => finding.places,
        _ => panic!("{}", option.key),
    };
    let answer = ranked(&room(READING));
    let option = &answer.options[0];
    // Three places on a sofa of 200 cm, as such are sold (common practice).
    assert_eq!(talk(option), 3);
    let terms = option.planned.composition.iter().map(|term| term.term.key());
    let of_main = ["mirrored", "to_table", "side_along", "opposite_aside", "turned_away"];
    assert!(terms.clone().all(|term| !of_main.contains(&term)), "{:?}", terms.collect::<Vec<_>>());
}

#[test]
fn two_chairs_of_a_group_face_one_way_or_each_other() {
    let pair = "  - { kind: armchair, name: reader, count: 2, group: reading, width: 80, depth: 85 }\n  \
                - { kind: side-table, name: reading table, group: reading, width: 40 }\n";
    let answer = ranked(&room(pair));
    assert!(!answer.options.is_empty(), "{:?}", answer.refused);
    for option in &answer.options {
        let [one, other] = ["reader 1", "reader 2"].map(|name| named(&answer, option, name));
        assert!(one.facing.dot(other.facing).abs() > 0.98, "{}", option.key);
        let front = |seat: &Placed| {
            let (left, right) = seat.front();
            (left + right) * 0.5
        };
        assert!((front(one) - front(other)).norm() <= 2134.0, "Hall 1966: {}", option.key);
        let ahead = |seat: &Placed, of: Point| (of - front(seat)).dot(seat.facing);
        assert!(ahead(one, front(other)) >= -301.0 && ahead(other, front(one)) >= -301.0, "{}", option.key);
    }
}

/// On one side of a step: the chair, and what serves it.
#[test]
fn a_chair_and_its_lamp_stand_on_one_level() {
    let step = "fixed: [{ kind: step, line: [[400, 0], [400, -460]] }]\n";
    let answer = ranked(&format!("{}{step}", room(READING)));
    assert!(!answer.options.is_empty(), "{:?}", answer.refused);
    let side = |placed: &Placed| placed.main().middle().x > 4000.0;
    let crosses = |placed: &Placed| {
        let all: Vec<bool> =
            placed.parts().iter().flat_map(|part| part.corners().to_vec()).map(|at| at.x > 4000.0).collect();
        all.iter().any(|above| *above) && all.iter().any(|above| !*above)
    };
    for option in &answer.options {
        let chair = side(named(&answer, option, "reading chair"));
        assert_eq!(["reading light", "reading table"].map(|name| side(named(&answer, option, name))), [chair; 2]);
        assert!(option.layout.placed.iter().all(|placed| !crosses(placed)), "{}", option.key);
    }
}

/// A parlour with a step across the middle of its floor, that ends 1.5 m short of one wall: a sofa, its table and a chair.
const WITH_A_STEP: &str = "units: mm
measured_within: 5
walls:
  - { name: wall a, start: [0, 0] }
  - { name: wall b, start: [3570, 0] }
  - name: wall c
    start: [3570, -740]
    holds: [{ kind: door, name: hall door, at: 190, width: 820, hinge: right, swings: in, leads_to: entrance }]
  - { name: wall d, start: [5490, -740] }
  - { name: wall e, start: [5490, -4370] }
  - { name: wall f, start: [0, -4370] }
fixed:
  - { kind: step, name: kerb, line: [[1520, -2300], [4520, -2300]] }
pieces:
  - { kind: sofa }
  - { kind: coffee-table }
  - { kind: media-unit }
clearances: { profile: snug }
";

/// However large they are: no more of a sofa than there is room for beside the step, where its table lies beyond the line of it.
#[test]
fn a_sofa_grows_no_further_than_is_on_one_level_with_its_table() {
    let answer = ranked(WITH_A_STEP);
    let corners = |layout: &Layout, place: usize| {
        let placed = layout.of(PieceId(place)).unwrap();
        placed.parts().iter().flat_map(|part| part.corners().to_vec()).collect::<Vec<_>>()
    };
    let mut astride = 0;
    for option in &answer.options {
        for layout in [&option.layout, &option.largest.layout] {
            let both = [corners(layout, 0), corners(layout, 1)].concat();
            let is_past = |past: fn(&Point) -> bool| both.iter().all(past);
            let is_past_an_end = is_past(|at| at.x < 1515.5) || is_past(|at| at.x > 4524.5);
            let is_on_one_side = is_past(|at| at.y > -2295.5) || is_past(|at| at.y < -2304.5);
            assert!(is_past_an_end || is_on_one_side, "{}: {both:?}", option.key);
            astride += usize::from(!is_on_one_side);
        }
    }
    assert!(astride > 0, "some lie past the end of the step");
}
