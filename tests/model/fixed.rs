//! What stands off the walls for good: where it is used, and what it keeps from opening.

use elbowroom_model::{Point, UsedAt};

use crate::plain_room::{brief, changed, faults, with};

/// The plain room with fixed things, and its notices.
fn told(fixed: &str) -> (elbowroom_model::Brief, Vec<String>) {
    let read = brief(&with(&format!("fixed: [{fixed}]\n")));
    let notices = read.notices.iter().map(|notice| notice.text.clone()).collect();
    (read, notices)
}

/// The middle of the edge before which floor stays clear.
fn used_about(fixed: &str) -> Point {
    let (read, _) = told(fixed);
    let (_, floor) = read.room.used_floors().next().expect("it is used");
    floor.middle()
}

/// A flight along the west wall, both of its ends on open floor.
const WELL: &str = "corners: [[0, -60], [90, -60], [90, -310], [0, -310]]";

#[test]
fn one_steps_off_stairs_at_an_end() {
    for kind in ["stairs", "stair", "Staircase"] {
        // 60 cm lie before this end, 62 before the other one, and then there is a post.
        assert_eq!(used_about(&format!("{{ kind: {kind}, {WELL} }}")), Point::new(450.0, -3100.0), "{kind}");
        let post = "{ kind: post, corners: [[30, -340], [60, -340], [60, -370], [30, -370]] }";
        assert_eq!(used_about(&format!("{post}, {{ kind: {kind}, {WELL} }}")), Point::new(450.0, -600.0), "{kind}");
    }
    // A counter is used along its length.
    assert_eq!(used_about(&format!("{{ kind: counter, {WELL} }}")), Point::new(900.0, -1850.0));
    // An end at a wall is none to step off.
    let at_wall = "corners: [[0, -122], [90, -122], [90, -372], [0, -372]]";
    assert_eq!(used_about(&format!("{{ kind: stairs, {at_wall} }}")), Point::new(450.0, -1220.0));
    let flank = "corners: [[0, 0], [90, 0], [90, -372], [0, -372]]";
    assert_eq!(used_about(&format!("{{ kind: stairs, {flank} }}")), Point::new(900.0, -1860.0));
}

#[test]
fn a_file_may_say_where_one_steps_off_or_stands() {
    let at = |kind: &str, place: &str| used_about(&format!("{{ kind: {kind}, {WELL}, used_at: {place} }}"));
    assert_eq!(at("stairs", "[45, -310]").y, -3100.0);
    assert_eq!(at("stairs", "[40, -55]").y, -600.0);
    assert_eq!(at("counter", "[45, -60]").y, -600.0);
    assert_eq!(at("stairs", "[95, -200]").x, 900.0);
    let step = with("fixed: [{ kind: step, line: [[100, -100], [230, -100]], used_at: [100, -100] }]\n");
    assert_eq!(faults(&step)[0].code, "key_of_another_kind");
}

#[test]
fn where_stairs_are_stepped_off_is_told_and_how_they_are_the_way_in() {
    let (read, notices) = told(&format!("{{ kind: stairs, {WELL} }}"));
    assert_eq!(read.room.fixed[0].used_at, UsedAt::Shortest);
    let head = notices.iter().find(|notice| notice.starts_with("One steps off the stairs")).expect("it is told");
    assert!(
        head.contains("x 45 cm") && head.contains("90 cm of floor") && head.contains("`used_at: [x, y]`"),
        "{head}"
    );
    let ways = |notices: &[String]| notices.iter().filter(|notice| notice.contains("Ways start at doorways")).count();
    assert_eq!(ways(&notices), 0);
    let said = told(&format!("{{ kind: stairs, {WELL}, used_at: [45, -310] }}")).1;
    assert!(!said.iter().any(|notice| notice.starts_with("One steps off")), "{said:?}");
    let alone = changed(&[("leads_to: entrance", "leads_to: den")]);
    let alone = brief(&format!("{alone}fixed: [{{ kind: stairs, {WELL} }}]\n"));
    let notices: Vec<String> = alone.notices.into_iter().map(|notice| notice.text).collect();
    assert_eq!(ways(&notices), 1, "{notices:#?}");
}

/// The hall door hangs 20 cm from the north-east corner and opens over the floor to 103 cm from it.
#[test]
fn a_leaf_that_swings_into_what_stands_for_good_is_told_with_how_far_it_opens() {
    let hit = |fixed: &str| {
        let notices = told(fixed).1;
        notices.into_iter().find(|notice| notice.starts_with("hall door cannot"))
    };
    // Its corner lies 81 cm from the hinge.
    let counter = "{ kind: counter, name: worktop, corners: [[400, -90], [445, -90], [445, -103], [400, -103]] }";
    let notice = hit(counter).expect("it is told");
    assert!(notice.contains("swing in by a quarter turn: its leaf of 83 cm meets the worktop at"), "{notice}");
    assert!(notice.contains("81.12 cm from its hinge") && notice.contains("`swings: out`"), "{notice}");
    assert!(!notice.contains("`opens_to"), "{notice}");
    let clear = "{ kind: counter, name: worktop, corners: [[300, -90], [395, -90], [395, -103], [300, -103]] }";
    assert_eq!(hit(clear), None);
    let beside = "{ kind: pillar, corners: [[440, -20], [486, -20], [486, 0], [440, 0]] }";
    assert_eq!(hit(beside), None, "behind the hinge a leaf that opens by a quarter turn does not come");
}

#[test]
fn a_leaf_that_opens_against_a_wall_is_stopped_by_the_radiator_there() {
    let row = "at: 120, width: 83, hinge: left, swings: in, opens_to: 180";
    let wall =
        format!("{row}, leads_to: entrance }}\n      - {{ kind: radiator, at: 30, width: 50, depth: 11, height: 60");
    let text = changed(&[("at: 20, width: 83, hinge: left, swings: in, leads_to: entrance", &wall)]);
    let notices: Vec<String> = brief(&text).notices.into_iter().map(|notice| notice.text).collect();
    let told = notices.iter().find(|notice| notice.starts_with("hall door cannot open to 180 degrees")).expect("told");
    // It meets the near corner of the radiator, 40 cm along the wall and 11 out: 180 - atan(11 / 40) = 164.6.
    assert!(told.contains("its leaf of 83 cm meets the radiator at about 164 degrees, 40 cm from its hinge"), "{told}");
    assert!(told.contains("`opens_to: 164`"), "{told}");
    let said = text.replace("opens_to: 180", "opens_to: 164");
    assert!(!brief(&said).notices.iter().any(|notice| notice.text.contains("cannot open")), "what is advised is kept");
}

#[test]
fn a_pillar_as_large_as_a_counter_is_asked_about() {
    let asked = |row: &str| told(row).1.iter().filter(|notice| notice.contains("as large as a counter")).count();
    let island = "corners: [[100, -100], [280, -100], [280, -160], [100, -160]]";
    assert_eq!(asked(&format!("{{ kind: pillar, {island} }}")), 1);
    assert_eq!(asked(&format!("{{ kind: post, {island}, height: 90 }}")), 1);
    assert_eq!(asked(&format!("{{ kind: pillar, {island}, height: 255 }}")), 0, "it reaches the ceiling");
    assert_eq!(asked(&format!("{{ kind: pillar, {island}, use: 0 }}")), 0, "the file says that nobody stands there");
    assert_eq!(asked(&format!("{{ kind: counter, {island} }}")), 0);
    let post = "corners: [[100, -100], [140, -100], [140, -140], [100, -140]]";
    assert_eq!(asked(&format!("{{ kind: pillar, {post} }}")), 0);
    let stub = "corners: [[100, -100], [280, -100], [280, -112], [100, -112]]";
    assert_eq!(asked(&format!("{{ kind: pillar, {stub} }}")), 0, "a stub of wall is no counter");
}
