//! What people write without thinking of a format: words for the way in, figures in another unit, a fridge in its corner.
//!
//! Rooms are invented; the sizes that figures are held to are common practice (`model/data`).

use elbowroom_model::{Brief, scenario};

/// A room 5 m by 4 m in these units, with what hangs on its first two walls and what stands in it.
fn read(units: &str, scale: f64, [north, east]: [&str; 2], rest: &str) -> Brief {
    let [long, short] = [500.0, 400.0].map(|length| length * scale);
    let text = format!(
        "units: {units}\nwalls:\n  - {{ name: north, length: {long}, holds: [{north}] }}\n  - {{ name: east, length: {short}, holds: [{east}] }}\n  \
         - {{ name: south, length: {long} }}\n  - {{ name: west, length: {short} }}\n{rest}"
    );
    scenario::read(&text, None).unwrap_or_else(|faults| panic!("{faults:#?}"))
}

fn told(brief: &Brief, word: &str) -> usize {
    brief.notices.iter().filter(|notice| notice.text.contains(word)).count()
}

const SOFA: &str = "pieces: [{ kind: sofa }]\n";

fn door(leads_to: &str) -> String {
    format!("{{ kind: door, name: {leads_to} door, at: 20, width: 83, swings: slides, leads_to: {leads_to} }}")
}

#[test]
fn the_way_in_goes_by_many_names_or_is_the_one_doorway() {
    let entrances = |north: &str, east: &str, rest: &str| {
        let brief = read("cm", 1.0, [north, east], &format!("{rest}{SOFA}"));
        brief.room.items.iter().filter(|item| item.kind.leads_to().is_some_and(|to| to.is_entrance())).count()
    };
    for word in ["main entrance", "entrance hall", "foyer", "porch", "Vestibule", "staircase"] {
        assert_eq!(entrances(&door(word), &door("kitchen"), ""), 1, "{word}");
    }
    assert_eq!(entrances(&door("kitchen"), &door("den"), ""), 0);
    assert_eq!(entrances(&door("kitchen"), "", ""), 1);
    assert_eq!(entrances(&door("balcony"), "", ""), 0);
    // One may come in by stairs.
    let stairs = "fixed: [{ kind: stairs, corners: [[0, -300], [90, -300], [90, -60], [0, -60]] }]\n";
    assert_eq!(entrances(&door("kitchen"), "", stairs), 0);
}

/// 80 and 220 are no door and no sofa in millimetres, and both are in centimetres.
#[test]
fn figures_that_speak_for_another_unit_are_told_once() {
    let in_mm = |width: u32, door: u32| {
        let door = format!("{{ kind: door, at: 200, width: {door}, swings: slides, leads_to: entrance }}");
        read(
            "mm",
            10.0,
            [&door, ""],
            &format!("pieces: [{{ kind: sofa, width: {width}, depth: {} }}]\n", width * 2 / 5),
        )
    };
    let slip = in_mm(220, 80);
    assert_eq!((told(&slip, "usual ones in cm"), told(&slip, "is the file in")), (1, 0), "{:?}", slip.notices);
    assert_eq!(told(&in_mm(2200, 830), "usual ones in"), 0);
    // Narrow shelves alone speak for nothing.
    let shelves = read("cm", 1.0, ["", ""], "pieces: [{ kind: sofa, width: 210 }, { kind: bookcase, width: 35 }]\n");
    assert_eq!(told(&shelves, "usual ones in"), 0);
}

/// A sill may be nothing, but nobody measures one of 9 mm: it is in metres, and that is told as a slip.
#[test]
fn a_sill_of_a_finger_is_told_as_a_slip() {
    let sill = |sill: &str| {
        let window = format!("{{ kind: window, at: 100, width: 180, sill: {sill} }}");
        read("cm", 1.0, [&window, ""], SOFA).notices
    };
    let of_slips = |sill_height| -> Vec<String> {
        sill(sill_height).into_iter().filter(|notice| notice.is_of_a_slip).map(|notice| notice.text).collect()
    };
    let told = of_slips("0.9");
    assert!(told.len() == 1 && told[0].contains("is the file in m? It would be 0.9 m then"), "{told:?}");
    assert_eq!(of_slips("0"), [""; 0]);
    assert_eq!(of_slips("90"), [""; 0]);
}

/// A fridge 65 cm deep at the east wall: one opens it from the room, and not from its longer side.
#[test]
fn a_fridge_is_used_from_across_its_wall() {
    let fridge = "fixed: [{ kind: fridge, corners: [[435, -30], [500, -30], [500, -90], [435, -90]] }]\n";
    let brief = read("cm", 1.0, ["", ""], &format!("{fridge}{SOFA}"));
    let (_, floor) = brief.room.used_floors().next().expect("a fridge is used");
    assert_eq!((floor.middle().x, floor.middle().y), (4350.0, -600.0));
    assert_eq!(told(&brief, "of floor before the side"), 0);
}

/// 30 cm between two counters are less than the 90 that one works in.
#[test]
fn too_little_floor_before_a_counter_is_told() {
    let counters = "fixed:\n  - { kind: counter, corners: [[0, 0], [300, 0], [300, -60], [0, -60]] }\n  \
         - { kind: counter, name: island, use: 0, corners: [[0, -90], [300, -90], [300, -150], [0, -150]] }\n";
    let brief = read("cm", 1.0, ["", ""], &format!("{counters}{SOFA}"));
    assert_eq!(
        told(&brief, "There is 30 cm of floor before the side at which one uses the counter"),
        1,
        "{:?}",
        brief.notices
    );
}

/// The door is 83 cm from 20 cm on: the wardrobe stands before 40 of them, or beside it.
#[test]
fn a_wardrobe_before_a_doorway_is_told() {
    let with = |from: u32| {
        let wardrobe =
            format!("fixed: [{{ kind: wardrobe, corners: [[{from}, 0], [300, 0], [300, -60], [{from}, -60]] }}]\n");
        let brief = read("cm", 1.0, [&door("entrance"), ""], &format!("{wardrobe}{SOFA}"));
        told(&brief, "The wardrobe stands before 40 cm of the 83 cm of the entrance door")
    };
    assert_eq!((with(63), with(110)), (1, 0));
}

#[test]
fn other_words_for_what_a_wall_keeps_off_are_read() {
    let walls = "units: cm\nwalls: [{ length: 500, keep_free: [couch, Bookshelf] }, { length: 400 }, { length: 500 }, { length: 400 }]\n";
    let brief = scenario::read(&format!("{walls}{SOFA}"), None).expect("a sound room");
    assert_eq!(brief.room.kept_free.len(), 2);
}
