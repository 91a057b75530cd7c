//! Titles of arrangements of invented rooms.

use elbowroom_model::{Brief, scenario};
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::{Arrangement, enumerate};

use super::{Arranged, title};

fn brief(room: [u32; 2], pieces: &str) -> Brief {
    let [width, depth] = room;
    let walls = format!(
        "[{{ length: {width}, name: top }}, {{ length: {depth}, name: right side }}, {{ length: {width}, name: bottom }}, \
         {{ length: {depth}, name: left side }}]"
    );
    scenario::read(&format!("units: cm\nwalls: {walls}\npieces:\n{pieces}"), None).unwrap()
}

fn of(arrangement: &Arrangement) -> Arranged<'_> {
    let choices = &arrangement.choices;
    Arranged { main_seat: arrangement.main_seat, choices, has_screen: choices.media_wall.is_some(), layout: None }
}

fn titled(room: [u32; 2], pieces: &str, key: &str) -> String {
    let brief = brief(room, pieces);
    let found = enumerate(&brief, &Site::of(&brief));
    let arrangement = found.arrangements.iter().find(|arrangement| arrangement.key == key);
    title(&brief, of(arrangement.unwrap_or_else(|| panic!("{key}"))))
}

/// The title once some of the second seats are left out: those of these names.
fn without(pieces: &str, key: &str, names: &[&str]) -> String {
    let brief = brief([900, 900], pieces);
    let found = enumerate(&brief, &Site::of(&brief));
    let mut arrangement = found.arrangements.iter().find(|arrangement| arrangement.key == key).unwrap().clone();
    for row in &mut arrangement.choices.second_seats {
        row.retain(|seat| !names.contains(&brief.piece_name(seat.piece)));
    }
    arrangement.choices.second_seats.retain(|row| !row.is_empty());
    title(&brief, of(&arrangement))
}

#[test]
fn a_title_tells_the_decisions_in_words() {
    let corner = "  - { kind: corner-sofa }\n  - { kind: media-unit, needed: false }\n";
    let left = "Back to the top, return on your left as you sit, screen on the left side";
    assert_eq!(titled([700, 700], corner, "top/left/left-side"), left);
    assert_eq!(
        titled([700, 700], corner, "top/left/no-screen"),
        "Back to the top, return on your left as you sit, no screen"
    );
    let pair = "  - { kind: sofa }\n  - { kind: armchair, count: 2 }\n";
    let shared = "Back to the top, armchairs on either side";
    assert_eq!(titled([700, 700], pair, "top/armchairs-left-right"), shared);
}

#[test]
fn a_seat_that_stands_free_is_named_with_what_it_faces() {
    let corner = "  - { kind: corner-sofa }\n  - { kind: media-unit, needed: false }\n";
    let screen = "Corner sofa free in the room, facing the screen on the top, return on your left as you sit";
    assert_eq!(titled([700, 700], corner, "free-top/left/top"), screen);
    let beside =
        "Corner sofa free in the room, facing the top, return on your right as you sit, screen on the left side";
    assert_eq!(titled([700, 700], corner, "free-top/right/left-side"), beside);
    let named = "  - { kind: sofa, name: long sofa }\n  - { kind: armchair, count: 2 }\n";
    let free = "Long sofa free in the room, facing the bottom, armchairs opposite";
    assert_eq!(titled([700, 600], named, "free-bottom/armchairs-opposite"), free);
}

#[test]
fn one_of_several_alike_is_told_without_its_number() {
    let sofas = "  - { kind: sofa, count: 2 }\n";
    assert_eq!(titled([700, 700], sofas, "top/sofa-2-opposite"), "One sofa back to the top, the other opposite");
    let chairs = "  - { kind: armchair, count: 3 }\n";
    let free = "One armchair free in the room, facing the top, the others on either side";
    assert_eq!(titled([700, 700], chairs, "free-top/armchairs-left-right"), free);
}

#[test]
fn how_many_stand_on_each_side_is_told() {
    let three = "  - { kind: sofa }\n  - { kind: armchair, count: 3 }\n  - { kind: media-unit }\n";
    let told = |key: &str| titled([900, 900], three, key);
    let left = "Back to the top, screen on the bottom, two armchairs on the left and one on the right";
    assert_eq!(told("top/bottom/armchairs-left-left-right"), left);
    let right = "Back to the top, screen on the bottom, one armchair on the left and two on the right";
    assert_eq!(told("top/bottom/armchairs-left-right-right"), right);
}

#[test]
fn seats_that_do_not_stand_are_not_named() {
    let three = "  - { kind: sofa }\n  - { kind: armchair, count: 3 }\n";
    let told = |names: &[&str]| without(three, "top/armchairs-left-right-opposite", names);
    assert_eq!(told(&[]), "Back to the top, armchairs on either side and opposite");
    assert_eq!(told(&["armchair 1"]), "Back to the top, one armchair on the right and one opposite");
    assert_eq!(told(&["armchair 3"]), "Back to the top, one armchair on either side");
    assert_eq!(told(&["armchair 1", "armchair 2"]), "Back to the top, one armchair opposite");
    assert_eq!(told(&["armchair 1", "armchair 2", "armchair 3"]), "Back to the top");
}

#[test]
fn the_sides_of_a_u_are_told_where_they_differ() {
    let even = "  - { kind: corner-sofa, second_return: 150..180 }\n";
    assert_eq!(titled([700, 700], even, "top"), "Back to the top");
    let chaise = "  - { kind: corner-sofa, chaise: true, second_return: 150..180 }\n";
    assert_eq!(
        titled([700, 700], chaise, "top/left"),
        "Back to the top, chaise on your left as you sit, second return on the right"
    );
    let unlike = "  - { kind: corner-sofa, return: 190..220, second_return: 150..180 }\n";
    assert_eq!(
        titled([700, 700], unlike, "top/right"),
        "Back to the top, return on your right as you sit, second return on the left"
    );
}
