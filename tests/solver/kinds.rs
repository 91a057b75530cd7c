//! What the kinds of piece beside the group do.

use elbowroom_model::{Clearance, ItemKind, PieceKind, Term};
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::geometry::{Convex, gap, overlap_depth};
use elbowroom_solver::routes::End;

use crate::scenarios::room;
use crate::support::ranked::{ranked, told_to_the_mm};

/// The piece of a kind as it stands in an option.
fn of_kind(answer: &Answer, option: &RankedOption, kind: PieceKind) -> Option<elbowroom_solver::Placed> {
    let is_such =
        |placed: &&elbowroom_solver::Placed| answer.brief.piece(placed.piece).is_some_and(|piece| piece.kind == kind);
    option.layout.placed.iter().find(is_such).cloned()
}

/// Common practice: an inner wall, away from heat.
#[test]
fn a_piano_stands_at_a_wall_with_no_window_radiator_or_fire() {
    let answer = ranked(&room("music-room"));
    assert!(answer.options.len() >= 2, "{:#?}", answer.refused);
    for option in &answer.options {
        let piano = of_kind(&answer, option, PieceKind::Piano).expect("it is needed");
        let wall = piano.at_wall.expect("at a wall");
        let is_such =
            |kind: &ItemKind| matches!(kind, ItemKind::Window(_) | ItemKind::Radiator(_) | ItemKind::Fireplace(_));
        let held = answer.brief.room.items.iter().filter(|item| item.wall == wall);
        assert!(!held.clone().any(|item| is_such(&item.kind)), "{}", option.key);
    }
}

#[test]
fn a_console_stands_at_a_wall_or_close_behind_a_sofa_that_stands_free() {
    let answer = ranked(&room("music-room"));
    let mut behind = 0;
    for option in &answer.options {
        let Some(console) = of_kind(&answer, option, PieceKind::Console).filter(|it| it.at_wall.is_none()) else {
            continue;
        };
        let sofa = of_kind(&answer, option, PieceKind::Sofa).expect("it is needed");
        assert!(sofa.at_wall.is_none(), "{}", option.key);
        let off = (sofa.anchor - console.anchor).dot(sofa.facing);
        assert!((-0.01..=100.01).contains(&off), "{}: {off} behind", option.key);
        assert!(console.facing.dot(sofa.facing) < -0.99, "{}", option.key);
        let aside = (sofa.anchor - console.anchor).dot(sofa.left()).abs() + console.size.width / 2.0;
        assert!(aside <= sofa.size.width / 2.0 + 0.01, "{}: past its end", option.key);
        behind += 1;
    }
    assert!(behind > 0, "{:#?}", answer.options.iter().map(|option| &option.key).collect::<Vec<_>>());
}

const LOUNGE: &str = "
units: cm
measured_within: 0
walls:
  - { name: north wall, length: 520 }
  - { name: east wall, length: 460 }
  - { name: south wall, length: 520, holds: [{ kind: door, at: 20, width: 83, hinge: left, swings: in, leads_to: entrance }] }
  - { name: west wall, length: 460 }
pieces:
  - kind: sofa
  - kind: armchair
";

/// Common practice: what one puts the feet on belongs to a seat, within reach of it.
#[test]
fn a_pouf_and_a_floor_cushion_stand_within_reach_of_a_seat() {
    let answer = ranked(&format!("{LOUNGE}  - {{ kind: pouf, at: armchair }}\n  - {{ kind: floor-cushion }}\n"));
    assert!(!answer.options.is_empty(), "{:#?}", answer.refused);
    for option in answer.options.iter().filter(|option| option.layout.left_out.is_empty()) {
        let [chair, pouf, cushion] = [PieceKind::Armchair, PieceKind::Pouf, PieceKind::FloorCushion]
            .map(|kind| of_kind(&answer, option, kind).expect("nothing is left out").main());
        let sofa = of_kind(&answer, option, PieceKind::Sofa).expect("it is needed").main();
        assert!(gap(&pouf, &chair).clear <= 300.01, "{}: at the armchair that it is named for", option.key);
        assert!(gap(&cushion, &chair).clear.min(gap(&cushion, &sofa).clear) <= 300.01, "{}", option.key);
    }
}

/// Common practice: by the front of the seat, where feet go up on it or one more sits; further back a lamp stands.
#[test]
fn a_pouf_stands_by_the_front_of_its_seat_and_a_lamp_behind_it() {
    let answer = ranked(&format!("{LOUNGE}  - {{ kind: pouf, at: sofa }}\n  - {{ kind: floor-lamp, at: sofa }}\n"));
    let along = |option: &RankedOption, kind| {
        let sofa = of_kind(&answer, option, PieceKind::Sofa).expect("it is needed");
        let middle = of_kind(&answer, option, kind).expect("it is needed").main().middle();
        (middle - sofa.anchor).dot(sofa.facing) / sofa.size.depth
    };
    let poufs: Vec<f64> = answer.options.iter().map(|option| along(option, PieceKind::Pouf)).collect();
    let by_the_front = poufs.iter().filter(|share| **share > 0.6).count();
    assert!(by_the_front * 4 >= poufs.len() * 3 && poufs[0] > 0.6, "{poufs:?}");
    let lamps: Vec<f64> = answer.options.iter().map(|option| along(option, PieceKind::FloorLamp)).collect();
    assert!(lamps[0] < 0.5, "{lamps:?}");
}

/// An attic that stairs come up into: where one steps off them stays clear, and one gets there from the door.
#[test]
fn the_head_of_stairs_stays_clear_and_can_be_reached() {
    let stairs = "fixed: [{ kind: stairs, corners: [[0, -260], [90, -260], [90, -460], [0, -460]] }]\n";
    let answer = ranked(&format!("{LOUNGE}  - kind: media-unit\n    screen: 43 in\n{stairs}"));
    assert!(!answer.options.is_empty(), "{:#?}", answer.refused);
    let (id, floor) = answer.brief.room.used_floors().next().expect("stairs are used");
    assert_eq!((floor.middle(), floor.depth), (elbowroom_model::Point::new(450.0, -2600.0), 900.0));
    let head = Convex::counter_clockwise(floor.corners());
    for option in &answer.options {
        let way = option.routes.iter().find(|route| route.to == End::Fixed(id)).expect("a way leads to them");
        assert!(way.width >= way.needs - 0.05 && way.length.is_some(), "{}: {way:?}", option.key);
        if option.eased.is_empty() {
            let parts = option.layout.placed.iter().flat_map(elbowroom_solver::Placed::parts);
            let deep = parts.map(|part| overlap_depth(&part, &head)).fold(0.0, f64::max);
            assert!(deep < 0.05, "{}: {deep}", option.key);
        }
    }
}

#[test]
fn floor_that_stays_open_is_reached_and_no_piece_stands_on_it() {
    let answer = ranked(&room("family"));
    assert!(answer.options.len() >= 2, "{:#?}", answer.refused);
    let passage = answer.brief.rules.get(Clearance::Passage);
    for option in &answer.options {
        let mat = of_kind(&answer, option, PieceKind::OpenFloor).expect("it is needed");
        let way = option.routes.iter().find(|route| route.to == End::Piece(mat.piece)).expect("one walks to it");
        assert!(way.width >= passage - 0.05 && way.length.is_some(), "{}: {way:?}", option.key);
        for other in option.layout.placed.iter().filter(|other| other.piece != mat.piece) {
            let deep = other.parts().iter().map(|part| overlap_depth(part, &mat.main())).fold(0.0, f64::max);
            assert!(deep < 0.5, "{}: {deep} on it", option.key);
        }
    }
}

/// The cook works in the 90 cm before a counter 60 cm deep: whoever plays there is underfoot. At a wall open floor has no middle
/// to be at.
#[test]
fn floor_that_stays_open_pays_where_people_work_and_nothing_for_its_wall() {
    let told = |at: &str, of| {
        let room = format!(
            "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 560 }}\n  - {{ name: east, length: 460 }}\n  \
             - {{ name: south, length: 560 }}\n  - {{ name: west, length: 460, holds: [{{ kind: door, name: hall door, at: 370, \
             width: 83, swings: slides, leads_to: entrance }}] }}\nfixed:\n  - {{ kind: counter, name: kitchen run, corners: \
             [[500, 0], [560, 0], [560, -300], [500, -300]], use: 90 }}\npieces:\n  - {{ kind: sofa, width: 200, depth: 90, \
             hold: true, place: {{ wall: south, from: 150, off: 5 }} }}\n  - {{ kind: open-floor, name: play mat, width: 120, depth: 120, \
             hold: true, place: {{ {at} }} }}\n"
        );
        told_to_the_mm(&room, of)
    };
    assert_eq!(told("at: [430, -60], facing: 270", Term::OpenFloorInUse), [(800.0, 0.0)]);
    assert_eq!(told("at: [340, -60], facing: 270", Term::OpenFloorInUse), []);
    // The sofa's middle lies 30 cm off that of its wall, and so does the mat's.
    let off_middle = told("wall: north, from: 250, off: 0", Term::OffMiddle);
    assert_eq!(off_middle.iter().map(|(cost, _)| cost.round()).collect::<Vec<f64>>(), [120.0]);
}

/// Common practice: one works by daylight. The middle of a desk at the east wall lies 135 cm out from the window and 224 cm aside
/// of its middle, of which 90 each are by it: 1790 mm at a tenth. A piano in its place looks for no window.
#[test]
fn a_desk_pays_for_its_way_to_the_nearest_window() {
    let told = |kind: &str| {
        let room = format!(
            "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 560, holds: [{{ kind: window, name: bay, at: 250, \
             width: 100, sill: 90, head: 210, must_reach: false }}] }}\n  - {{ name: east, length: 460 }}\n  \
             - {{ name: south, length: 560 }}\n  - {{ name: west, length: 460, holds: [{{ kind: door, name: hall door, at: 20, \
             width: 83, swings: slides, leads_to: entrance }}] }}\npieces:\n  - {{ kind: sofa, width: 200, depth: 90, hold: true, \
             place: {{ wall: south, from: 250, off: 5 }} }}\n  - {{ kind: {kind}, width: 140, depth: 70, hold: true, \
             place: {{ wall: east, from: 65, off: 1 }} }}\n"
        );
        told_to_the_mm(&room, Term::FarFromWindow).into_iter().map(|(cost, _)| cost.round()).collect::<Vec<f64>>()
    };
    assert_eq!(told("desk"), [179.0]);
    assert_eq!(told("piano"), [0.0; 0]);
}

/// Common practice: two sofas that face each other share one axis.
#[test]
fn the_second_of_a_pair_that_faces_stands_on_the_axis_of_the_first() {
    let answer = ranked(&room("pair-of-sofas"));
    let best = answer.options.first().expect("the demo has options");
    let [first, second] = [0, 1].map(|place| best.layout.of(elbowroom_model::PieceId(place)).expect("both stand"));
    assert!(first.facing.dot(second.facing) < -0.99);
    let aside = (second.anchor - first.anchor).dot(first.left()).abs();
    assert!(aside < 1.0, "{aside} mm aside");
}
