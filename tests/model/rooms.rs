//! The room: outline, items, rules, and what is assumed.

use elbowroom_model::{Brief, Clearance, ItemKind, PieceKind, Point, Swings, WallId, scenario};
use proptest::prelude::*;

use crate::plain_room::{brief, changed, with};

fn notices(brief: &Brief) -> String {
    brief.notices.iter().map(|notice| notice.text.as_str()).collect::<Vec<_>>().join("\n")
}

#[test]
fn the_first_wall_runs_along_the_top_and_the_room_lies_below() {
    let room = brief(&with("")).room;
    let corners: Vec<(f64, f64)> = room.outline().iter().map(|corner| (corner.x, corner.y)).collect();
    assert_eq!(corners, [(0.0, 0.0), (4860.0, 0.0), (4860.0, -3720.0), (0.0, -3720.0)]);
    assert_eq!(room.area(), 4860.0 * 3720.0);
    assert_eq!(room.survey.misclosure, Some(Point::default()));
    assert!(!room.survey.spread);
}

#[test]
fn an_outside_corner_turns_the_other_way() {
    let text = "units: m\nwalls:\n  - { length: 4 }\n  - { length: 2 }\n  - { length: 1, corner: 270 }\n  - { length: 1 }\n  - { length: 3 }\n  - { length: 3 }\npieces: [{ kind: sofa }]\n";
    let room = brief(text).room;
    assert!((room.area() - 11e6).abs() < 1e-6, "{}", room.area());
    assert_eq!(room.outline()[3], Point::new(3000.0, -2000.0));
}

#[test]
fn both_forms_of_walls_give_one_room() {
    let text = "units: cm\nwalls:\n  - { start: [0, 0] }\n  - { start: [4.86 m, 0] }\n  - { start: [486, -372] }\n  - { start: [0, -372] }\npieces: [{ kind: sofa }]\n";
    let room = brief(text).room;
    assert_eq!(room.outline(), brief(&with("")).room.outline());
    assert_eq!(room.survey.misclosure, None);
}

#[test]
fn a_misclosure_is_spread_and_told_and_widens_what_is_off() {
    let brief = brief(&changed(&[("name: party wall\n    length: 486", "name: party wall\n    length: 480")]));
    let survey = &brief.room.survey;
    assert_eq!(survey.misclosure, Some(Point::new(60.0, 0.0)));
    assert!(survey.spread);
    // The compass rule: the longest wall takes 486 of 1710 parts of 60 mm.
    let most = 60.0 * 486.0 / 1710.0;
    assert!((brief.room.measured_within - most).abs() < 1e-9, "{}", brief.room.measured_within);
    assert!(notices(&brief).contains("miss closing by 6 cm"), "{}", notices(&brief));
    let ends = brief.room.walls.iter().zip(brief.room.walls.iter().cycle().skip(1));
    assert!(ends.into_iter().all(|(wall, next)| wall.end == next.start));
}

#[test]
fn a_misfit_of_the_corners_is_spread_and_told() {
    let brief = brief(&changed(&[("length: 372\n    holds", "length: 372\n    corner: 92\n    holds")]));
    assert_eq!(brief.room.survey.corner_misfit, 2.0);
    assert!(notices(&brief).contains("2.00 degrees more"), "{}", notices(&brief));
}

/// In a room told by coordinates nothing is off, and walls that are square to the eye are not to the last digit.
#[test]
fn a_leaf_that_a_wall_touches_by_a_hair_swings() {
    let room = |lean: f64| {
        format!(
            "units: m\nmeasured_within: 0\nwalls:\n  - {{ start: [0, 0], holds: [{{ kind: door, at: 4.2, width: 0.8, hinge: right, \
             swings: in, leads_to: entrance }}] }}\n  - {{ start: [5, 0] }}\n  - {{ start: [{}, -4] }}\n  - {{ start: [0, -4] }}\n\
             pieces: [{{ kind: sofa }}]\n",
            5.0 - lean
        )
    };
    for lean in [0.0, 0.0002, 0.004] {
        assert!(elbowroom_model::scenario::read(&room(lean), None).is_ok(), "{lean}");
    }
    // 30 mm over 4 m is 6 mm at the end of a leaf of 800 mm, less where the quarter disc curves away.
    let told = elbowroom_model::scenario::read(&room(0.03), None).unwrap_err();
    assert_eq!(told[0].code, "swing_hits_wall");
    assert!(!told[0].message.contains("reaches 0 m"), "{}", told[0].message);
}

#[test]
fn an_item_that_reaches_the_end_of_a_wall_that_closing_shortened_is_clipped() {
    let text = changed(&[
        ("at: 82, width: 220", "at: 266, width: 220"),
        ("name: party wall\n    length: 486", "name: party wall\n    length: 484"),
    ]);
    let brief = brief(&text);
    let (bay, wall) = (&brief.room.items[0], &brief.room.walls[0]);
    assert_eq!(bay.at, 2660.0);
    assert!((bay.at + bay.width - wall.length()).abs() < 1e-9);
    assert!(bay.width > 2190.0 && bay.width < 2200.0);
}

#[test]
fn radiators_and_sockets_may_lie_under_a_window() {
    let text = changed(&[(
        "width: 220 }",
        "width: 220 }\n      - { kind: radiator, at: 70, width: 120, depth: 11 }\n      - { kind: socket, at: 200, carries: data }",
    )]);
    let brief = brief(&text);
    assert_eq!(brief.room.items.len(), 4);
    assert!(notices(&brief).contains("radiator is taken as 60 cm high"), "{}", notices(&brief));
    assert_eq!(brief.room.items[2].width, 0.0);
}

#[test]
fn windows_and_heaters_have_their_defaults() {
    let text = changed(&[(
        "width: 220 }",
        "width: 220 }\n      - { kind: radiator, at: 310, width: 60, depth: 11, height: 60 }\n      - { kind: fireplace, at: 380, width: 90, depth: 30 }",
    )]);
    let low = brief(&(text.clone() + "ceiling: 205\nclearances: { profile: snug }\n"));
    let [ItemKind::Window(window), ItemKind::Radiator(radiator), ItemKind::Fireplace(fire)] =
        [0, 1, 2].map(|place: usize| low.room.items[place].kind.clone())
    else {
        panic!("{:?}", low.room.items)
    };
    // Clearances: snug 50 (C); CPSC and NFPA 3 ft = 914.4 mm (P).
    assert_eq!((window.sill, window.head, window.opens, window.must_reach), (900.0, 2050.0, true, false));
    assert_eq!((radiator.keep_clear, fire.keep_clear), (50.0, 914.4));
    let own = brief(&(text + "clearances: { radiator_clear: 3, fire_clear: 1 m }\n"));
    let [ItemKind::Radiator(radiator), ItemKind::Fireplace(fire)] =
        [1, 2].map(|place: usize| own.room.items[place].kind.clone())
    else {
        panic!("{:?}", own.room.items)
    };
    assert_eq!((radiator.keep_clear, fire.keep_clear), (30.0, 1000.0));
}

#[test]
fn the_profiles_are_those_of_the_table() {
    let rules = |profile: &str| brief(&with(&format!("clearances: {{ profile: {profile} }}\n"))).rules;
    // 2010 ADA Standards 403.5.1: 36 in; Lifetime Homes 2010, criterion 7: 750; turning circle 1500 (P).
    assert_eq!(rules("snug").get(Clearance::Walkway), 750.0);
    assert_eq!(rules("easy").get(Clearance::Walkway), 36.0 * 25.4);
    let wheelchair = rules("wheelchair");
    assert_eq!((wheelchair.get(Clearance::Passage), wheelchair.turning_circle()), (750.0, Some(1500.0)));
    assert!(wheelchair.reach_opening_windows);
    assert_eq!(rules("easy").turning_circle(), None);
    assert_eq!(brief(&with("")).rules, rules("easy"));
    assert_eq!(brief(&with("clearances: { walkway: 0 }\n")).rules.get(Clearance::Walkway), 0.0);
    for profile in ["snug", "easy", "wheelchair"] {
        let rules = rules(profile);
        let by_profile = |rule: Clearance| rule == Clearance::TurningCircle || rule.is_by_profile();
        let known = Clearance::ALL.iter().copied().filter(|rule| !by_profile(*rule));
        for rule in known {
            let figure = rules.figure(rule);
            assert!(figure.figure.is_some() && figure.source.len() > 4, "{profile} {rule:?}");
        }
    }
}

#[test]
fn no_entrance_is_fine_and_told() {
    let brief = brief(&changed(&[("leads_to: entrance", "leads_to: garden")]));
    assert!(notices(&brief).contains("entrance"), "{}", notices(&brief));
}

#[test]
fn diagonals_free_the_corners_that_are_not_stated() {
    // A 3-4-5 triangle on either side: 3600 x 4800 with a diagonal of 6000 is square (published check, D).
    let text = "units: mm\nmeasured_within: 3\nwalls:\n  - { length: 4800 }\n  - { length: 3600 }\n  - { length: 4800 }\n  - { length: 3600 }\ndiagonals: [{ from: wall 1, to: wall 3, length: 6000 }]\npieces: [{ kind: sofa }]\n";
    let room = brief(text).room;
    assert_eq!(room.survey.misclosure, None);
    assert!(room.survey.residuals.iter().all(|one| !one.likely_slip), "{:#?}", room.survey.residuals);
    let skew = room.walls[0].along().dot(room.walls[1].along());
    assert!(skew.abs() < 1e-9, "{skew}");
}

#[test]
fn a_diagonal_that_does_not_fit_is_named_as_a_likely_slip() {
    let text = "diagonals: [{ from: canal wall, to: party wall, length: 612 }, { from: stair wall, to: dining side, length: 640 }]\n";
    let brief = brief(&with(text));
    let slips: Vec<&str> =
        brief.room.survey.residuals.iter().filter(|one| one.likely_slip).map(|one| one.of.as_str()).collect();
    assert!(slips.contains(&"diagonal stair wall to dining side"), "{slips:?}");
    assert!(notices(&brief).contains("diagonal stair wall to dining side is"), "{}", notices(&brief));
}

#[test]
fn a_diagonal_checks_an_outline_by_coordinates() {
    let text = "units: m\nwalls:\n  - { start: [0, 0] }\n  - { start: [4, 0] }\n  - { start: [4, -3] }\n  - { start: [0, -3] }\ndiagonals: [{ from: wall 1, to: wall 3, length: 5.2 }]\npieces: [{ kind: sofa }]\n";
    let room = brief(text).room;
    let residual = &room.survey.residuals[0];
    assert_eq!((residual.measured, residual.fitted, residual.likely_slip), (5200.0, 5000.0, true));
}

#[test]
fn a_longer_wall_moves_its_neighbour_and_keeps_what_it_holds() {
    use elbowroom_model::{WallId, survey::with_wall_length};
    let brief = brief(&with(""));
    let longer = with_wall_length(&brief, WallId(0), 5000.0).unwrap();
    let lengths: Vec<f64> = longer.room.walls.iter().map(elbowroom_model::Wall::length).collect();
    assert_eq!(lengths, [5000.0, 3720.0, 5000.0, 3720.0]);
    assert_eq!(longer.room.items, brief.room.items);
    let deeper = with_wall_length(&brief, WallId(3), 4000.0).unwrap();
    // The door stays where it is on the plan: the left end of its wall moves out.
    assert_eq!(deeper.room.items[1].at, brief.room.items[1].at + 280.0);
    assert_eq!(with_wall_length(&brief, WallId(0), 100.0), None);
    // The door may come to stand at the very end of its wall, and not beyond.
    assert_eq!(with_wall_length(&brief, WallId(3), 3520.0).unwrap().room.items[1].at, 0.0);
    assert_eq!(with_wall_length(&brief, WallId(3), 3519.0), None);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    /// A room drawn from its own lengths, corners and diagonals is that room.
    #[test]
    fn a_true_survey_closes_on_itself(
        offsets in proptest::collection::vec((-300.0..300.0_f64, -300.0..300.0_f64), 4),
    ) {
        let square = [(0.0, 0.0), (5000.0, 0.0), (5000.0, -4000.0), (0.0, -4000.0)];
        let corners: Vec<Point> =
            square.iter().zip(&offsets).map(|((x, y), (dx, dy))| Point::new(x + dx, y + dy)).collect();
        let side = |i: usize| corners[(i + 1) % 4] - corners[i % 4];
        let mut text = "units: mm\nmeasured_within: 0\nwalls:\n".to_owned();
        for i in 0..4 {
            let turn = side(i).cross(side(i + 1)).atan2(side(i).dot(side(i + 1))).to_degrees();
            text += &format!("  - {{ length: {}, corner: {} }}\n", side(i).norm(), 180.0 + turn);
        }
        let stated = text.clone() + "pieces: [{ kind: sofa }]\n";
        let diagonal = (corners[2] - corners[0]).norm();
        let free: String = text
            .lines()
            .map(|line| line.split(", corner").next().unwrap_or(line))
            .map(|line| if line.contains("length") { format!("{line} }}\n") } else { format!("{line}\n") })
            .collect::<String>()
            + &format!("diagonals: [{{ from: wall 1, to: wall 3, length: {diagonal} }}]\npieces: [{{ kind: sofa }}]\n");
        for text in [stated, free] {
            let room = brief(&text).room;
            let found = room.outline();
            for (i, j) in [(0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 3)] {
                let (is, was) = ((found[i] - found[j]).norm(), (corners[i] - corners[j]).norm());
                prop_assert!((is - was).abs() < 1e-3, "{} {} {}", i, j, is - was);
            }
        }
    }
}

#[test]
fn a_wall_is_kept_free_of_kinds() {
    let text = changed(&[("name: party wall", "name: party wall\n    keep_free: [sofa, bookcase]")]);
    let room = brief(&text).room;
    let kept = |wall: usize, kind| room.keeps_free(WallId(wall), kind);
    assert!(kept(2, PieceKind::Sofa) && kept(2, PieceKind::Bookcase));
    assert!(!kept(2, PieceKind::Armchair) && !kept(0, PieceKind::Sofa));
    let text = changed(&[("name: party wall", "name: party wall\n    keep_free: [wardrobe]")]);
    assert!(scenario::read(&text, None).is_err());
}

#[test]
fn a_door_says_how_far_it_opens() {
    let opens_to = |text: &str| {
        let room = brief(text).room;
        let ItemKind::Door(door) = room.items[1].kind.clone() else { panic!("{:?}", room.items[1]) };
        (door.opens_to, door.opens_to())
    };
    assert_eq!(opens_to(&changed(&[])), (None, 90.0));
    let door = "at: 20, width: 83, hinge: left, swings: in";
    let said = |degrees: &str| {
        changed(&[(door, &format!("at: 100, width: 83, hinge: left, swings: in, opens_to: {degrees}"))])
    };
    assert_eq!(opens_to(&said("90")), (Some(90.0), 90.0));
    assert_eq!(opens_to(&said("172.5")), (Some(172.5), 172.5));
}

/// 2010 ADA Standards 404.2.4.1, Table 404.2.4.1 (P): 18 in and 60 in, of doors that are pulled from the room alone.
#[test]
fn the_floor_beside_latches_is_told_once_where_it_is_asked() {
    let told = |text: &str| {
        let notices = brief(text).notices.into_iter().map(|notice| notice.text);
        notices.filter(|notice| notice.contains("latch")).collect::<Vec<_>>()
    };
    let wheelchair = |swings: &str| {
        let text = changed(&[("hinge: left, swings: in", swings)]);
        format!("{text}clearances: {{ profile: wheelchair }}\n")
    };
    let pulled = told(&wheelchair("hinge: left, swings: in"));
    assert!(pulled.len() == 1 && ["hall door", "404.2.4.1"].iter().all(|part| pulled[0].contains(part)), "{pulled:?}");
    assert!(!pulled[0].contains("the wall ends"), "{pulled:?}");
    let near = told(&wheelchair("hinge: right, swings: in"));
    assert!(near.len() == 1 && near[0].contains("the wall ends after 20 cm"), "{near:?}");
    // 372 less 275 and 83 cm: what lies beyond the door, on the other hand.
    let beyond = told(&wheelchair("hinge: left, swings: in").replace("at: 20, width: 83", "at: 275, width: 83"));
    assert!(beyond.len() == 1 && beyond[0].contains("the wall ends after 14 cm"), "{beyond:?}");
    for other in ["hinge: left, swings: out", "swings: slides"] {
        assert_eq!(told(&wheelchair(other)), [""; 0]);
    }
    assert_eq!(told(&with("clearances: { profile: easy }\n")), [""; 0]);
    assert_eq!(told(&with("clearances: { profile: wheelchair, latch_side: 0 }\n")), [""; 0]);
}

#[test]
fn a_door_folds_or_goes_into_the_wall_without_a_hinge() {
    for (word, swings) in [("folds", Swings::Folds), ("pocket", Swings::Pocket), ("slides", Swings::Slides)] {
        let brief = brief(&changed(&[("hinge: left, swings: in", &format!("swings: {word}"))]));
        let door = &brief.room.items[1].kind;
        assert!(matches!(door, ItemKind::Door(door) if door.swings == swings && door.hinge.is_none()), "{door:?}");
    }
}
