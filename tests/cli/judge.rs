//! `judge`: a room in which nothing is broken, one with a sofa in a door's swing, and what it does with bad input.
//!
//! Rooms are invented; figures are worked out by hand beside each check.

use serde_json::Value;

use crate::program::{Ended, run_with};

/// 5.0 by 4.5 m, the only door at the right-hand end of the east wall; its leaf, 83 cm wide, hangs at its right jamb.
pub(crate) const ROOM: &str = "\
name: Back parlour
units: cm
walls:
  - { name: north, length: 500 }
  - name: east
    length: 450
    holds: [{ kind: door, name: hall door, at: 330, width: 83, hinge: right, swings: in, leads_to: entrance }]
  - { name: south, length: 500 }
  - { name: west, length: 450 }
pieces:
";

/// The sofa in the middle of the north wall, its table 43 cm before it, the media unit opposite.
const SOUND: &str = "  - { kind: sofa, width: 200, depth: 90, place: { wall: north, from: 150, off: 5 } }
  - { kind: coffee-table, width: 100, depth: 60, place: { at: [250, -138], facing: 270 } }
  - { kind: media-unit, width: 160, depth: 45, place: { wall: south, from: 170, off: 5 } }
";

/// The sofa at the door's wall, its end 63 cm short of the hinge and its back 16 cm off the wall: its corner lies 65 cm from
/// the hinge (16, 63, 65), which is 18 cm within the leaf's 83.
const IN_THE_SWING: &str = "  - { kind: sofa, width: 200, depth: 90, place: { wall: east, from: 150, off: 16 } }
  - { kind: coffee-table, width: 100, depth: 60, place: { at: [351, -250], facing: 180 } }
  - { kind: media-unit, width: 160, depth: 45, place: { wall: west, from: 120, off: 5 } }
";

fn judge(pieces: &str, more: &[&str]) -> Ended {
    let args: Vec<&str> = ["judge", "-"].iter().chain(more).copied().collect();
    run_with(&args, format!("{ROOM}{pieces}").as_bytes())
}

fn json(pieces: &str) -> Value {
    let ended = judge(pieces, &["--json"]);
    serde_json::from_str(&ended.stdout).unwrap_or_else(|why| panic!("{why}: {ended:?}"))
}

#[test]
fn a_room_in_which_nothing_is_broken_ends_well() {
    let ended = judge(SOUND, &[]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{}", ended.stdout);
    assert!(ended.stdout.contains("no rule is broken") && !ended.stdout.contains("What is broken"), "{}", ended.stdout);
    for told in ["Back to the north", "Scores, of 100", "option 1", "in all", "hall door to sofa"] {
        assert!(ended.stdout.contains(told), "{told}: {}", ended.stdout);
    }
}

#[test]
fn a_sofa_in_a_doors_swing_is_told_with_the_figure() {
    let ended = judge(IN_THE_SWING, &[]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(3), ""), "{}", ended.stdout);
    let told = ended.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("The sofa stands in the swing of the hall door, by 18 cm (door swing)."), "{}", ended.stdout);
}

#[test]
fn as_json_it_has_what_is_broken_and_what_an_option_would_gain() {
    let found = json(IN_THE_SWING);
    assert_eq!((&found["format"], &found["main_seat"]), (&"elbowroom-judge/1".into(), &"sofa".into()));
    let broken = found["broken"].as_array().unwrap();
    let swing = broken.iter().find(|one| one["rule"] == "door_swing").unwrap();
    assert_eq!(swing["between"], serde_json::json!(["sofa", "hall door"]));
    assert!((swing["short_by"].as_f64().unwrap() - 180.0).abs() < 1.0, "{swing}");
    // A gain is the score of option 1 less that of the room, to a thousandth.
    let criteria = found["criteria"].as_array().unwrap();
    assert!(!criteria.is_empty());
    for one in criteria {
        let [now, then, gain] = ["score", "first", "gain"].map(|key| one[key].as_f64().unwrap());
        assert!((then - now - gain).abs() < 0.002, "{one}");
    }
    assert!(found["first"]["key"].is_string());
    assert_eq!(json(SOUND)["broken"], serde_json::json!([]));
}

#[test]
fn what_has_no_place_is_named_with_the_remedy() {
    let ended = judge("  - { kind: sofa, place: { wall: north, from: 150 } }\n  - { kind: coffee-table }\n", &[]);
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""));
    assert!(
        ended.stderr.contains("where the coffee table stands")
            && ended.stderr.contains("`place: { wall: north, from: 58"),
        "{}",
        ended.stderr
    );
    let pair = judge("  - { kind: sofa, place: { wall: north, from: 150 } }\n  - { kind: armchair, count: 2 }\n", &[]);
    assert!(pair.stderr.contains("where armchair 1 and armchair 2 stand"), "{}", pair.stderr);
    assert!(pair.stderr.contains("a row each"), "{}", pair.stderr);
    let none = judge("  - { kind: sofa, needed: false }\n", &[]);
    assert_eq!((none.code, none.stdout.as_str()), (Some(2), ""));
    assert!(none.stderr.contains("any seat"), "{}", none.stderr);
}

#[test]
fn what_is_broken_is_marked_on_the_drawing_by_the_number_that_the_list_gives_it() {
    let folder = tempfile::tempdir().unwrap();
    let file = |name: &str| folder.path().join(name).display().to_string();
    let svg = file("room.svg");
    let ended = judge(IN_THE_SWING, &["--draw", &svg]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(3), ""));
    let found = json(IN_THE_SWING);
    let broken = found["broken"].as_array().unwrap();
    let drawn = std::fs::read_to_string(&svg).unwrap();
    let told = ended.stdout.split_whitespace().collect::<Vec<_>>().join(" ");
    for (place, one) in broken.iter().enumerate() {
        let number = place + 1;
        assert_eq!(one["number"], number);
        assert!(told.contains(&format!("{number}. {}", one["says"].as_str().unwrap())), "{told}");
        assert!(drawn.contains(&format!("> {number} <")), "{number}");
    }
    assert!(drawn.contains("As it stands: ") && drawn.contains("What is broken"), "{svg}");
    for name in ["room.png", "room.pdf"] {
        assert_eq!(judge(SOUND, &["--draw", &file(name)]).code, Some(0), "{name}");
        assert!(std::fs::metadata(file(name)).unwrap().len() > 1000, "{name}");
    }
}

#[test]
fn a_drawing_is_written_over_nothing_unless_that_is_asked_for() {
    let folder = tempfile::tempdir().unwrap();
    let svg = folder.path().join("room.svg").display().to_string();
    std::fs::write(&svg, "mine").unwrap();
    let kept = judge(SOUND, &["--draw", &svg]);
    assert_eq!((kept.code, kept.stdout.as_str()), (Some(2), ""), "{kept:?}");
    assert_eq!(std::fs::read_to_string(&svg).unwrap(), "mine");
    assert_eq!(judge(SOUND, &["--draw", &svg, "--force"]).code, Some(0));
    assert!(std::fs::read_to_string(&svg).unwrap().contains("<svg"));
    for name in ["room.jpg", "room", "-"] {
        let at = if name == "-" { name.to_owned() } else { folder.path().join(name).display().to_string() };
        let ended = judge(SOUND, &["--draw", &at]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{ended:?}");
        assert!(ended.stderr.contains(".svg"), "{ended:?}");
    }
}

#[test]
fn a_place_outside_the_room_is_a_fault_of_the_file() {
    // 350 and 200 cm along a wall of 500 cm: 50 cm past its end.
    let ended = judge("  - { kind: sofa, width: 200, depth: 90, place: { wall: north, from: 350 } }\n", &[]);
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""));
    let told = ended.stderr.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("reaches 50 cm past east"), "{}", ended.stderr);
}
