//! What a plan pays for a liked view behind who sits, for what stands in the view of the screen, and for storage that is far from
//! the group or from the screen: pieces held where they cost it, and where they do not.
//!
//! Rooms are invented; the figures are those of `model/data/composition.yaml`, worked out by hand beside each check.

use elbowroom_model::Term;

use crate::support::ranked::{told_of_first, told_to_the_mm};

const DOOR: &str = "{ kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: out, leads_to: entrance }";

/// A room 5.6 m by 4.6 m with what hangs on its north and east walls, and what stands in it; cm.
fn room([north, east]: [&str; 2], pieces: &str) -> String {
    format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 560, holds: [{north}] }}\n  \
         - {{ name: east, length: 460, holds: [{east}] }}\n  - {{ name: south, length: 560 }}\n  \
         - {{ name: west, length: 460, holds: [{DOOR}] }}\npieces:\n{pieces}"
    )
}

fn window(name: &str, view: &str) -> String {
    format!(
        "{{ kind: window, name: {name}, at: 150, width: 200, sill: 90, head: 210, view: {view}, must_reach: false }}"
    )
}

#[test]
fn a_sofa_pays_for_a_liked_view_at_its_back_alone() {
    let at = |wall: &str, north: &str, east: &str| {
        let sofa = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: {wall}, from: 130, off: 5 }} }}\n"
        );
        told_to_the_mm(&room([north, east], &sofa), Term::BackToView)
    };
    let liked = window("bay", "liked");
    assert_eq!(at("north", &liked, ""), [(500.0, 0.0)]);
    // It faces it, or has it beside it, or nobody likes it, or likes another as well.
    assert_eq!(at("south", &liked, ""), []);
    assert_eq!(at("west", &liked, ""), []);
    assert_eq!(at("north", &window("bay", "plain"), ""), []);
    assert_eq!(at("north", &liked, &window("yard window", "liked")), []);
}

/// Who wishes much for the view pays for the widest at the back, whatever else there is to see.
#[test]
fn a_sofa_pays_more_for_a_view_that_is_wished_for() {
    let at = |wall: &str, view: u32| {
        let sofa = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: {wall}, from: 130, off: 5 }} }}\nwishes: {{ view: {view} }}\n"
        );
        let room = room([&window("bay", "liked"), &window("yard window", "liked")], &sofa);
        told_to_the_mm(&room, Term::BackToWishedView)
    };
    assert_eq!(at("north", 4), [(1000.0, 0.0)]);
    assert_eq!(at("north", 3), []);
    assert_eq!(at("south", 5), []);
}

/// In the corner of the south and east walls the return has the window in the east one at its back, or before it.
#[test]
fn a_return_pays_for_it_too_and_a_chaise_has_no_back() {
    let with_hand = |hand: &str, more: &str| {
        let sofa = format!(
            "  - {{ kind: corner-sofa, hand: {hand}, width: 240, return: 200, depth: 95{more}, hold: true, \
             place: {{ wall: south, from: 5, off: 5 }} }}\n"
        );
        told_to_the_mm(&room(["", &window("bay", "liked")], &sofa), Term::ReturnBackToView)
    };
    assert_eq!(with_hand("right", ""), [(250.0, 0.0)]);
    assert_eq!(with_hand("left", ""), []);
    assert_eq!(with_hand("right", ", chaise: true"), []);
}

/// The sofa's middle lies 440 cm from the west, the bookcase's too, or 60 cm from it: 80 cm more than the 3 m that are free.
#[test]
fn a_bookcase_pays_for_each_millimetre_that_it_is_far_from_the_group() {
    let at = |from: u32| {
        let pieces = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: south, from: 20, off: 5 }} }}\n  \
             - {{ kind: bookcase, width: 80, depth: 30, hold: true, place: {{ wall: north, from: {from}, off: 1 }} }}\n"
        );
        told_to_the_mm(&room(["", ""], &pieces), Term::StorageFar)
    };
    assert_eq!(at(400), []);
    assert_eq!(at(20), [(120.0, 800.0)]);
}

/// Beside the screen, or across from it; where one dines it may serve the table.
#[test]
fn a_bookcase_pays_for_another_wall_than_the_screens_where_nobody_dines() {
    let at = |wall: &str, more: &str| {
        let pieces = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ wall: south, from: 180, off: 5 }} }}\n  \
             - {{ kind: media-unit, screen: 50 in, width: 160, depth: 40, hold: true, place: {{ wall: north, from: 200, off: 5 }} }}\n  \
             - {{ kind: bookcase, width: 80, depth: 30, hold: true, place: {{ wall: {wall}, from: 20, off: 1 }} }}\n{more}"
        );
        told_of_first(&room(["", ""], &pieces), Term::StorageApart)
    };
    assert_eq!(at("north", ""), []);
    assert_eq!(at("east", ""), [(250.0, 0.0)]);
    let table = "  - { kind: dining-table, width: 100, depth: 70, needed: false }\n";
    assert_eq!(at("east", table), []);
}

/// The sofa stands free, 110 cm before the south wall, or at it. Amid the north wall, 280 cm from its end, the unit costs nothing;
/// a metre from there a tenth of a millimetre for each, but for half a millimetre by which the search lets what is held stand.
#[test]
fn a_screen_pays_for_standing_off_the_middle_of_its_wall_where_the_sofa_stands_free() {
    let at = |middle: u32, place: &str| {
        let pieces = format!(
            "  - {{ kind: sofa, width: 200, depth: 90, hold: true, place: {{ {place} }} }}\n  \
             - {{ kind: media-unit, screen: 50 in, width: 160, depth: 40, hold: true, place: {{ wall: north, from: {}, off: 5 }} }}\n",
            middle - 80
        );
        told_to_the_mm(&room(["", ""], &pieces), Term::ScreenOffMiddle)
    };
    assert_eq!(at(280, "at: [280, -350], facing: 90"), []);
    assert_eq!(at(380, "at: [380, -350], facing: 90"), [(99.95, 1000.0)]);
    assert_eq!(at(380, "wall: south, from: 80, off: 5"), []);
}

/// Of a corner sofa one sits along the bay, 240 - 95 cm, and not along the corner. Half of that is 72 cm: a chair whose front is 80
/// cm from its middle stands clear of the view of the screen, one at 60 cm does not.
#[test]
fn the_view_from_a_corner_sofa_is_as_wide_as_its_bay() {
    let at = |x: u32| {
        let pieces = format!(
            "  - {{ kind: corner-sofa, hand: right, width: 240, return: 200, depth: 95, hold: true, place: {{ wall: south, from: 5, off: 5 }} }}\n  \
             - {{ kind: media-unit, screen: 50 in, width: 160, depth: 40, hold: true, place: {{ wall: north, from: 303, off: 5 }} }}\n  \
             - {{ kind: armchair, width: 80, depth: 80, hold: true, place: {{ at: [{x}, -270], facing: 0 }} }}\n"
        );
        told_of_first(&room(["", ""], &pieces), Term::Beam).len()
    };
    assert_eq!((at(227), at(247)), (0, 1));
}
