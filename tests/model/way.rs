//! Ways in as files write them.

use elbowroom_model::way_in::{PointKind, read};

fn faults(text: &str) -> Vec<(&'static str, usize)> {
    let faults = read(text, None).unwrap_err();
    faults.iter().map(|fault| (fault.code, fault.place.map_or(0, |place| place.line))).collect()
}

#[test]
fn a_way_of_its_own_needs_no_room_and_no_seat() {
    let text = "units: in\nway:\n  - { kind: door, width: 34 }\n  - { kind: door, width: 30, height: 80 }\n\
                pieces:\n  - { kind: bookcase, width: 30, depth: 12, height: 72 }\n";
    let file = read(text, None).unwrap();
    let names: Vec<_> = file.way.points.iter().map(|point| point.name.as_str()).collect();
    assert_eq!(names, ["door 1", "door 2"]);
    assert_eq!(file.way.points[0].kind, PointKind::Door { width: 863.6, height: 1981.0, from: None });
    assert!(file.notices[0].contains("door 1"), "{:?}", file.notices);
    assert_eq!((file.pieces.len(), file.pieces[0].height), (1, 72.0 * 25.4));
}

#[test]
fn every_fault_of_a_way_is_told_with_its_line() {
    let text = "units: cm\n\
                way:\n\
                \x20 - { kind: door }\n\
                \x20 - { kind: hal, width: 100 }\n\
                \x20 - { kind: turn, from: 100 }\n\
                \x20 - { kind: hall, width: -3 }\n\
                \x20 - { kind: stairs, width: 90, headroom: 200, pitch: 0 }\n\
                \x20 - { kind: lift, door: 80, width: 100, depht: 140 }\n\
                \x20 - { kind: door, name: a, width: 80 }\n\
                \x20 - { kind: door, name: a, width: 80 }\n\
                \x20 - { kind: door, room_door: hall door }\n";
    let expected = [
        ("missing_key", 3),
        ("unknown_kind", 4),
        ("missing_key", 5),
        ("not_positive", 6),
        ("pitch_out_of_range", 7),
        ("missing_key", 8),
        ("unknown_key", 8),
        ("name_twice", 10),
        ("unknown_name", 11),
    ];
    assert_eq!(faults(text), expected);
    assert_eq!(faults("units: cm\nway: []\npieces:\n  - { kind: sofa, width: x }\n"), [("not_a_length", 4)]);
    let room = "units: cm\nwalls: [{ length: 400 }, { length: 300 }, { length: 400 }, { length: 300 }]\npieces: [{ kind: sofa }]\n";
    assert_eq!(faults(room), [("missing_key", 0)]);
    let door = room.replace("pieces", "way: [{ kind: door, room_door: halldoor }]\npieces");
    assert_eq!(faults(&door), [("unknown_name", 3)]);
}
