//! What a plan pays about doorways, at a seat's end and behind a free seat: pieces held where they cost it, and a hand's
//! breadth away where they do not.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::{PieceId, Term};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::support::ranked::{ranked, told_of_first};

/// What hangs on the walls of a room, as rows of a wall's `holds`.
#[derive(Default)]
struct Holds {
    north: String,
    east: String,
    south: String,
    west: String,
}

/// A room 5.2 m wide and so deep, cm, with these pieces.
fn room(deep: u32, holds: &Holds, pieces: &str) -> String {
    let Holds { north, east, south, west } = holds;
    format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 520, holds: [{north}] }}\n  - {{ name: east, length: {deep}, holds: [{east}] }}\n  \
         - {{ name: south, length: 520, holds: [{south}] }}\n  - {{ name: west, length: {deep}, holds: [{west}] }}\npieces:\n{pieces}"
    )
}

fn door(at: u32, leads_to: &str) -> String {
    format!(
        "{{ kind: door, name: {leads_to} door, at: {at}, width: 83, hinge: left, swings: out, leads_to: {leads_to} }}"
    )
}

/// A sofa in the middle of the north wall, its table, and a chair opposite whose back is 330 cm from that wall.
const GROUP: &str = "  - { kind: sofa, width: 200, depth: 90, hold: true, place: { wall: north, from: 160, off: 5 } }
  - { kind: coffee-table, width: 100, depth: 60, hold: true, place: { at: [260, -138], facing: 270 } }
  - { kind: armchair, width: 80, depth: 80, hold: true, place: { at: [260, -330], facing: 90 } }
";

fn first(text: &str) -> (Answer, RankedOption) {
    let answer = ranked(text);
    let option = answer.options.first().cloned();
    let option = option.unwrap_or_else(|| panic!("{text}\n{:?}", answer.refused));
    (answer, option)
}

/// Its back is 95 cm from a wide opening where the room is 425 cm deep, 130 cm where it is 460. (A doorway has a landing.)
#[test]
fn a_chair_pays_for_its_back_close_to_a_wide_opening() {
    let opening = "{ kind: opening, name: dining opening, at: 180, width: 160, leads_to: dining, stance: none }";
    let across = |deep| {
        let holds = Holds { south: opening.to_owned(), west: door(20, "entrance"), ..Holds::default() };
        told_of_first(&room(deep, &holds, GROUP), Term::AcrossOpening)
    };
    assert_eq!(across(425), [(800.0, 0.0)]);
    assert_eq!(across(460), []);
}

/// One walks down the east side of the room, from a door at its head to one at its foot, or down the west side: a lamp stands
/// at the other end of the sofa, which is as good for who sits there.
#[test]
fn a_lamp_stands_at_the_end_of_a_sofa_where_nobody_walks_by() {
    let lamp_is_east = |from: u32, holds: &Holds| {
        let sofa = format!(
            "  - {{ kind: sofa, width: 260, depth: 90, hold: true, place: {{ wall: north, from: {from}, off: 5 }} }}\n"
        );
        let (_, option) =
            first(&room(460, holds, &format!("{sofa}  - {{ kind: floor-lamp, width: 35, depth: 35 }}\n")));
        option.layout.of(PieceId(1)).map(|lamp| lamp.main().middle().x > 2600.0)
    };
    // The south wall runs from east to west, the west wall from south to north.
    let east = Holds { east: door(20, "entrance"), south: door(61, "garden"), ..Holds::default() };
    let west = Holds { west: door(357, "entrance"), south: door(376, "garden"), ..Holds::default() };
    assert_eq!((lamp_is_east(160, &east), lamp_is_east(100, &west)), (Some(false), Some(true)));
}

/// A step from wall to wall west of the sofa, 160 cm from the west wall: between it and a chair (its front 140 cm from there,
/// the step at 150), or behind that chair (its back at 60 cm, the step at 50).
#[test]
fn a_chair_pays_for_a_step_between_it_and_its_group() {
    let beyond = |off: u32| {
        let step = format!("fixed: [{{ kind: step, line: [[{off}, 0], [{off}, -460]] }}]\n");
        let beside = GROUP.replace("at: [260, -330], facing: 90", "at: [60, -168], facing: 0");
        let holds = Holds { east: door(320, "entrance"), ..Holds::default() };
        told_of_first(&format!("{}{step}", room(460, &holds, &beside)), Term::BeyondStep)
    };
    assert_eq!(beyond(150), [(3000.0, 0.0)]);
    assert_eq!(beyond(50), []);
}

/// Doorways opposite each other, their middles 290 cm and 410 cm from the north wall: the lane of 60 cm or more runs
/// through the chair (250 to 330 cm), or behind it.
#[test]
fn a_chair_pays_for_standing_in_the_straight_way_from_door_to_door() {
    let in_way = |middle: u32| {
        // The west wall runs up from the south: 460 cm less the place, less the door's own 83 cm.
        let holds =
            Holds { east: door(middle - 41, "entrance"), west: door(460 - middle - 42, "kitchen"), ..Holds::default() };
        told_of_first(&room(460, &holds, GROUP), Term::InWay)
    };
    assert_eq!(in_way(290), [(1200.0, 0.0)]);
    assert_eq!(in_way(410), []);
}

/// A door in the middle of the south wall; a bookcase 15 cm to its left or its right, as one looks at it from inside.
#[test]
fn a_bookcase_pays_for_standing_where_the_open_leaf_hides_it() {
    let sofa = "  - { kind: sofa, width: 200, depth: 90, hold: true, place: { wall: north, from: 160, off: 5 } }\n";
    for (hinge, side) in [("left", "left"), ("left", "right"), ("right", "left"), ("right", "right")] {
        let from = if side == "left" { 125 } else { 318 };
        let door = format!(
            "{{ kind: door, name: hall door, at: 220, width: 83, hinge: {hinge}, swings: in, leads_to: entrance }}"
        );
        let books = format!(
            "  - {{ kind: bookcase, width: 80, depth: 30, hold: true, place: {{ wall: south, from: {from}, off: 1 }} }}\n"
        );
        let holds = Holds { south: door, ..Holds::default() };
        let told = told_of_first(&room(460, &holds, &format!("{sofa}{books}")), Term::BehindLeaf);
        let expected: &[(f64, f64)] = if hinge == side { &[(400.0, 0.0)] } else { &[] };
        assert_eq!(told, expected, "hinge {hinge}, bookcase {side}");
    }
}

#[test]
fn a_side_table_serves_the_main_seat_first() {
    let holds = Holds { south: door(20, "entrance"), ..Holds::default() };
    let by = |seat: &str| {
        let table = format!("  - {{ kind: side-table, at: {seat}, width: 40, depth: 40 }}\n");
        told_of_first(&room(460, &holds, &format!("{GROUP}{table}")), Term::BySecondSeat)
    };
    assert_eq!(by("armchair"), [(200.0, 0.0)]);
    assert_eq!(by("sofa"), []);
    // Where it may choose it stands by the sofa.
    let free = format!("{GROUP}  - {{ kind: side-table, width: 40, depth: 40 }}\n");
    assert_eq!(told_of_first(&room(460, &holds, &free), Term::BySecondSeat), []);
}

/// A fifth of the sofa's 90 cm from its back, which is 5 cm off its wall: 23 cm.
#[test]
fn a_lamp_stands_behind_the_shoulder() {
    let holds = Holds { south: door(20, "entrance"), ..Holds::default() };
    let lamp = format!("{GROUP}  - {{ kind: floor-lamp, width: 35 }}\n");
    let (answer, option) = first(&room(460, &holds, &lamp));
    let id = answer.brief.piece_ids().find(|id| answer.brief.piece_name(*id) == "floor lamp").unwrap();
    let middle = option.layout.of(id).unwrap().main().middle().y;
    assert!((middle + 230.0).abs() < 1.0, "{middle}");
}

/// Hinged 20 cm from the corner an 83 cm leaf sweeps to 103 cm of the north wall and 83 cm from it: a sofa along the east wall
/// that begins 113 cm from the north wall leaves 30 cm to the square that it sweeps in, one at 133 cm 50, of 45 that leave room to come in.
#[test]
fn a_sofa_pays_for_its_end_close_to_where_a_leaf_sweeps() {
    let at = |from: u32| {
        let hall = "{ kind: door, name: hall door, at: 417, width: 83, hinge: right, swings: in, leads_to: entrance }";
        let holds = Holds { north: hall.to_owned(), ..Holds::default() };
        let sofa = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: east, from: {from}, off: 5 }} }}\n"
        );
        let told = told_of_first(&room(460, &holds, &sofa), Term::ByDoor);
        // Places are within half a millimetre of where they are held.
        told.into_iter().map(|(cost, off)| (cost.round(), off.round())).collect::<Vec<_>>()
    };
    assert_eq!(at(113), [(75.0, 150.0)]);
    assert_eq!(at(133), []);
}
