//! How a few faults and notices read, word for word.

use crate::plain_room::{brief, changed, faults, with};

/// Faults as a reader meets them.
fn told(text: &str) -> String {
    let one = |fault: &elbowroom_model::Fault| {
        let place = fault.place.map_or_else(String::new, |place| format!("{}:{} ", place.line, place.column));
        format!("{place}[{}] {}\n  {}", fault.code, fault.message, fault.remedy)
    };
    faults(text).iter().map(one).collect::<Vec<_>>().join("\n")
}

#[test]
fn slips_of_the_tape() {
    insta::assert_snapshot!(told(&changed(&[
        ("name: party wall\n    length: 486", "name: party wall\n    length: 436"),
        ("at: 20, width: 83", "at: 320, width: 83"),
    ])), @r#"
    4:3 [does_not_close] The walls do not close: the last ends 50 cm from where the first began (50 cm to the right), 3.0 % of their total length; up to 1 % is spread.
      Measure again what runs that way: canal wall, party wall.
    11:44 [item_past_wall_end] hall door runs 31 cm past the right end of stair wall: it ends at 403 cm, the wall at 372 cm.
      Check `at` and `width` of hall door, and the length of stair wall.
    "#);
}

#[test]
fn slips_of_the_pen() {
    insta::assert_snapshot!(told(&changed(&[
        ("units: cm", "units: centimeters"),
        ("hinge: left, ", ""),
        ("kind: sofa", "kind: sopha, colour: red"),
    ])), @r#"
    2:8 [unknown_unit] `centimeters`, given for the file, is no known unit of length.
      Did you mean `cm`?
    11:9 [missing_key] hall door swings and has no `hinge`.
      Give `hinge`: left or right, as you face the door from inside the room.
    17:13 [unknown_kind] `sopha`, given for piece 1, is no known kind.
      Did you mean `sofa`?
    17:20 [unknown_key] `colour` is no key of piece 1.
      Known here: aim, at, centre, chaise, count, depth, group, hand, height, hold, instead, kind, name, needed, off_wall, pair, passing, place, return, return_depth, screen, seats, second_return, turned, width.
    "#);
}

#[test]
fn what_was_assumed() {
    let text = changed(&[
        ("name: party wall\n    length: 486", "name: party wall\n    length: 480"),
        ("leads_to: entrance", "leads_to: garden"),
    ]) + "fixed: [{ kind: pillar, corners: [[900, 0], [930, 0], [930, 30]] }]\n";
    let notices = brief(&text).notices.into_iter().map(|notice| notice.text).collect::<Vec<_>>().join("\n");
    insta::assert_snapshot!(notices, @r#"
    No door or opening leads to the entrance: the criterion `entrance` and the ways from it are left out. Say of the one that people come in by `leads_to: entrance`.
    pillar lies outside the room and takes nothing from it: it lies at x 900 cm to 930 cm and y 0 cm to 30 cm, the room at x 0 cm to 484.29 cm and y -372 cm to 0 cm. Plan coordinates run from the left end of the first wall, x along it and y falling below 0 into the room; where walls have a `start`, they are those.
    The walls as measured miss closing by 6 cm (6 cm to the right); this is spread over them in proportion to their lengths, 1.71 cm at most on one wall.
    "#);
}

/// What a wall keeps off it stands among the notices, so that every sheet has it.
#[test]
fn what_walls_keep_off_them_is_told() {
    let kept = brief(&changed(&[("name: party wall", "name: party wall\n    keep_free: [sofa, bookcase]")])).notices;
    let told: Vec<&str> =
        kept.iter().map(|notice| notice.text.as_str()).filter(|told| told.contains("party wall")).collect();
    assert_eq!(told, ["Kept free: no sofa, no bookcase stands at the party wall."]);
    let low = changed(&[(
        "name: party wall",
        "name: party wall\n    ceiling_from: 240\n    ceiling_to: 120\n    ceiling_over: 150",
    )]);
    let notices = brief(&low).notices;
    assert!(
        notices.iter().any(|notice| {
            let told = ["Toward the party wall the ceiling falls", "240 cm", "150 cm out", "120 cm at the wall"];
            told.iter().all(|part| notice.text.contains(part))
        }),
        "{notices:#?}"
    );
}

/// What lies outside takes no floor: whoever wrote it meant another place.
#[test]
fn a_thing_outside_the_room_is_told_with_where_the_room_lies() {
    let notices = |corners: &str| {
        let read = brief(&with(&format!("fixed: [{{ kind: pillar, corners: {corners} }}]\n"))).notices;
        read.into_iter().map(|notice| notice.text).collect::<Vec<_>>().join("\n")
    };
    insta::assert_snapshot!(notices("[[0, 100], [60, 100], [60, 300], [0, 300]]"), @"pillar lies outside the room and takes nothing from it: it lies at x 0 cm to 60 cm and y 100 cm to 300 cm, the room at x 0 cm to 486 cm and y -372 cm to 0 cm. Give its y with the other sign: y falls below 0 from the first wall into the room.");
    insta::assert_snapshot!(notices("[[900, 0], [930, 0], [930, 30]]"), @"pillar lies outside the room and takes nothing from it: it lies at x 900 cm to 930 cm and y 0 cm to 30 cm, the room at x 0 cm to 486 cm and y -372 cm to 0 cm. Plan coordinates run from the left end of the first wall, x along it and y falling below 0 into the room; where walls have a `start`, they are those.");
    // It lies astride of the line that the first wall is on, and past the end of that wall.
    assert!(notices("[[500, -40], [560, -40], [560, 40], [500, 40]]").contains("lies outside the room"));
    // Neither a corner nor its middle lies in the room, and some of it does.
    let across = notices("[[-50, -100], [1550, -100], [1550, -95], [-50, -95]]");
    assert!(!across.contains("lies outside") && across.starts_with("hall door cannot swing in"), "{across}");
}

#[test]
fn a_diagonal_that_does_not_fit() {
    let text = with(
        "diagonals: [{ from: canal wall, to: party wall, length: 6.4 m }, { from: stair wall, to: dining side, length: 612 }]\n",
    );
    let notices = brief(&text).notices.into_iter().map(|notice| notice.text).collect::<Vec<_>>().join("\n");
    insta::assert_snapshot!(notices, @r#"
    The outline is the one that fits best to the lengths, stated corners and diagonals.
    The length of canal wall is 5.61 cm less than the outline that fits best: a likely slip.
    The length of stair wall is 4.29 cm less than the outline that fits best: a likely slip.
    The length of party wall is 5.61 cm less than the outline that fits best: a likely slip.
    The length of dining side is 4.29 cm less than the outline that fits best: a likely slip.
    The diagonal canal wall to party wall is 7.22 cm more than the outline that fits best: a likely slip.
    The diagonal stair wall to dining side is 6.9 cm more than the outline that fits best: a likely slip.
    "#);
}
