//! The discrete options of a room.

mod at_seats;
mod laws;
mod pairs;
mod plan;
mod taped;
mod turned;

use std::collections::BTreeSet;

use elbowroom_model::{Brief, Clearance, Hand, Hinge, ItemId, Piece, PieceId, PieceKind, Rule, SecondPlace, WallId};
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::{
    Arrangement, Enumeration, MOST_ARRANGEMENTS, NoRoom, NoRoomAt, Obstacle, Relation, Role, enumerate,
};
use plan::{armchairs, brief, corner_sofa, door, media_unit, piece, rectangle, room, sofa, window};

fn of(brief: &Brief) -> Enumeration {
    enumerate(brief, &Site::of(brief))
}

fn keys(found: &Enumeration) -> BTreeSet<String> {
    found.arrangements.iter().map(|arrangement| arrangement.key.clone()).collect()
}

fn strings(keys: &[&str]) -> BTreeSet<String> {
    keys.iter().map(|key| (*key).to_owned()).collect()
}

/// Arrangement by its key.
fn by_key<'a>(found: &'a Enumeration, key: &str) -> &'a Arrangement {
    found.arrangements.iter().find(|arrangement| arrangement.key == key).unwrap()
}

#[test]
fn a_sofa_and_a_screen_face_each_other_from_wall_to_wall_or_with_the_sofa_free() {
    let found = of(&brief(rectangle(5000.0, 4500.0), vec![sofa(), media_unit()]));
    let expected = [
        "top/bottom",
        "bottom/top",
        "left-side/right-side",
        "right-side/left-side",
        "free-top/top",
        "free-bottom/bottom",
        "free-left-side/left-side",
        "free-right-side/right-side",
    ];
    assert_eq!(keys(&found), strings(&expected));
    assert_eq!(found.dropped, Vec::new());
}

#[test]
fn a_corner_sofa_has_two_hands_and_may_have_the_screen_before_its_return() {
    let found = of(&brief(rectangle(6000.0, 6000.0), vec![corner_sofa(), media_unit()]));
    assert_eq!(found.dropped, Vec::new());
    assert_eq!(found.arrangements.len(), 32, "eight seatings, two hands, screen opposite or beside");
    // As one sits with the back to the top wall, looking down the plan, the left is +x: a return on the left looks to -x.
    let left = by_key(&found, "top/left/left-side");
    assert_eq!(left.standings[1].role, Role::ScreenBeside);
    assert!(found.arrangements.iter().any(|arrangement| arrangement.key == "top/right/right-side"));
    assert!(!found.arrangements.iter().any(|arrangement| arrangement.key == "top/left/right-side"));
}

#[test]
fn no_second_seat_stands_before_the_screen_or_with_its_back_to_it_or_behind_the_return() {
    let pieces = [vec![corner_sofa(), media_unit()], armchairs(2)].concat();
    for arrangement in of(&brief(rectangle(7000.0, 7000.0), pieces)).arrangements {
        let screen = arrangement.standings[1].role;
        for seat in arrangement.choices.seats() {
            assert!(!(screen == Role::Screen && seat.place == SecondPlace::Opposite), "{}", arrangement.key);
            assert!(!(screen == Role::ScreenBeside && seat.place != SecondPlace::Opposite), "{}", arrangement.key);
            let is_left = arrangement.choices.hand == Some(Hand::Left);
            let behind = if is_left { SecondPlace::Left } else { SecondPlace::Right };
            assert_ne!(seat.place, behind, "{}", arrangement.key);
        }
    }
}

#[test]
fn the_largest_seat_is_the_main_one_wherever_the_file_puts_it() {
    let small = piece("settee", PieceKind::Sofa, (1500.0, 1700.0), (800.0, 900.0));
    for pieces in [vec![small.clone(), sofa(), corner_sofa()], vec![corner_sofa(), sofa(), small.clone()]] {
        let main = of(&brief(rectangle(7000.0, 7000.0), pieces.clone())).arrangements[0].main_seat;
        assert_eq!(pieces[main.0].name, "corner sofa");
    }
    for pieces in [vec![small.clone(), sofa()], vec![sofa(), small.clone()]] {
        let main = of(&brief(rectangle(7000.0, 7000.0), pieces.clone())).arrangements[0].main_seat;
        assert_eq!(pieces[main.0].name, "sofa");
    }
}

#[test]
fn a_media_unit_that_need_not_stand_may_be_left_out() {
    let mut unit = media_unit();
    unit.needed = false;
    let found = of(&brief(rectangle(5000.0, 4500.0), vec![sofa(), unit]));
    let without = by_key(&found, "top/no-screen");
    assert_eq!((without.choices.media_wall, without.standings[1].stands.len()), (None, 0));
    assert!(keys(&found).contains("top/bottom"));
}

#[test]
fn a_wall_shorter_than_the_seat_is_dropped_with_what_is_missing() {
    let found = of(&brief(rectangle(6000.0, 1400.0), vec![sofa()]));
    let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "right-side").unwrap();
    let place = NoRoomAt::Along { piece: PieceId(0), wall: WallId(1), free: 1400.0, beside: None };
    assert_eq!(dropped.reason, NoRoom { rule: Rule::Room, place, has: 1400.0, needs: 1500.0 });
}

#[test]
fn a_doorway_shortens_its_wall_by_its_landing() {
    let mut plan = rectangle(3000.0, 5000.0);
    plan.items.push(door("hall door", 0, 700.0, 900.0, Hinge::Left));
    let found = of(&brief(plan, vec![sofa()]));
    let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "top").unwrap();
    assert_eq!((dropped.reason.rule, dropped.reason.short_by()), (Rule::Clearance(Clearance::DoorLanding), 100.0));
    let beside = Some(Obstacle::Landing(ItemId(0)));
    assert_eq!(dropped.reason.place, NoRoomAt::Along { piece: PieceId(0), wall: WallId(0), free: 1400.0, beside });
}

/// Past an outside corner a seat's end has 50 mm (common practice, no source): so much wall less behind it costs it nothing.
#[test]
fn a_seat_may_reach_past_an_outside_corner_by_50_mm() {
    let corners = [(0.0, 0.0), (3000.0, 0.0), (3000.0, 2000.0), (6000.0, 2000.0), (6000.0, -5000.0), (0.0, -5000.0)];
    let beside_door_at = |at: f64| {
        let mut plan = room(&corners, &["top", "step", "bay", "east", "south", "west"]);
        plan.items.push(door("hall door", 0, at, 900.0, Hinge::Left));
        of(&brief(plan, vec![sofa()]))
    };
    assert!(keys(&beside_door_at(649.0)).contains("top"), "1451 of 1500 mm lie before the wall");
    let further = beside_door_at(700.0);
    let dropped = further.dropped.iter().find(|dropped| dropped.arrangement.key == "top").unwrap();
    assert_eq!(dropped.reason.short_by(), 50.0);
    let NoRoomAt::Along { free, .. } = dropped.reason.place else { panic!("{dropped:?}") };
    assert_eq!(free, 1400.0, "3000 less the landing, which ends at 1600: no tape finds the 50 mm");
}

/// A radiator that stands out 110 with 100 clear before it can be behind a sofa that stands up to a foot off its gap.
#[test]
fn what_a_seat_can_stand_before_drops_nothing() {
    let mut plan = rectangle(3000.0, 5000.0);
    plan.items.push(plan::radiator("radiator", 0, 1000.0, 1200.0));
    assert!(keys(&of(&brief(plan, vec![sofa()]))).contains("top"));
}

#[test]
fn only_what_is_taller_than_the_sill_must_keep_from_a_window() {
    let mut plan = rectangle(3000.0, 5000.0);
    plan.items.push(window("bay", 0, 500.0, 2000.0, 450.0));
    let mut shelves = piece("books", PieceKind::Bookcase, (800.0, 1500.0), (300.0, 400.0));
    shelves.height = 1800.0;
    let mut asked = brief(plan, vec![sofa(), shelves]);
    asked.rules = asked.rules.with(Clearance::WindowFront, 750.0, "");
    let walls_of = |found: &Enumeration| -> Vec<Option<WallId>> {
        found.arrangements[0].standings[1].stands.iter().map(|stand| stand.at_wall).collect()
    };
    assert!(!walls_of(&of(&asked)).contains(&Some(WallId(0))));
    asked.pieces[1].height = 400.0;
    assert!(walls_of(&of(&asked)).contains(&Some(WallId(0))));
}

/// Screen, seat and the 60 inches between them: HUD Manual of Acceptable Practices 1973, living areas (D, id S3): sofa
/// 36 in deep, bench 18 in, so 114 in = 2895.6 mm.
#[test]
fn facing_walls_closer_than_seat_distance_and_screen_are_dropped() {
    let exact = |name, kind, width, depth: f64| {
        let mut piece = piece(name, kind, width, (depth, depth));
        piece.off_wall = 0.0;
        piece
    };
    let across = |depth: f64| {
        let sofa = exact("sofa", PieceKind::Sofa, (1500.0, 2000.0), 914.4);
        let bench = exact("bench", PieceKind::MediaUnit, (1200.0, 2000.0), 457.2);
        of(&brief(rectangle(4000.0, depth), vec![sofa, bench]))
    };
    assert!(keys(&across(2895.6)).contains("top/bottom"));
    let short = across(2895.5);
    let dropped = short.dropped.iter().find(|dropped| dropped.arrangement.key == "top/bottom").unwrap();
    assert_eq!(dropped.reason.rule, Rule::Clearance(Clearance::ScreenToSeat));
    assert!((dropped.reason.short_by() - 0.1).abs() < 1e-6);
}

#[test]
fn walls_that_stand_askew_face_each_other_only_within_ten_degrees() {
    // The bottom wall leans by `rise` over 4000.
    let leaning = |rise: f64| {
        let corners = [(0.0, 0.0), (4000.0, 0.0), (4000.0, -5000.0 + rise), (0.0, -5000.0)];
        let plan = room(&corners, &["top", "right side", "bottom", "left side"]);
        keys(&of(&brief(plan, vec![sofa(), media_unit()])))
    };
    let at = |degrees: f64| 4000.0 * degrees.to_radians().tan();
    assert!(leaning(at(9.9)).contains("top/bottom"));
    assert!(!leaning(at(10.1)).contains("top/bottom"));
    assert!(leaning(at(10.1)).contains("free-bottom/bottom"), "a free-standing seat turns to the screen");
}

#[test]
fn a_wall_that_lies_behind_the_seat_is_no_place_for_its_screen() {
    // A U: two arms up, a bay between them. The bay's floor looks up; so does the bottom of nothing else.
    let corners = [
        (0.0, 0.0),
        (3000.0, 0.0),
        (3000.0, -3000.0),
        (6000.0, -3000.0),
        (6000.0, 0.0),
        (9000.0, 0.0),
        (9000.0, -7000.0),
        (0.0, -7000.0),
    ];
    let names = ["north-west", "in-west", "sill", "in-east", "north-east", "east", "south", "west"];
    let found = keys(&of(&brief(room(&corners, &names), vec![sofa(), media_unit()])));
    assert!(found.contains("west/east") && found.contains("west/in-west") && found.contains("in-west/west"));
    assert!(!found.contains("in-west/east") && !found.contains("in-east/west"), "{found:?}");
    assert!(found.contains("in-east/east"));
}

#[test]
fn a_dining_table_lies_along_each_way_that_walls_run_or_at_a_wall() {
    let table = piece("table", PieceKind::DiningTable, (1200.0, 1800.0), (750.0, 900.0));
    let found = of(&brief(rectangle(6000.0, 6000.0), vec![sofa(), table]));
    let stands = &by_key(&found, "top").standings[1].stands;
    let free = stands.iter().filter(|stand| stand.at_wall.is_none()).count();
    assert_eq!((free, stands.len()), (2, 6));
}

#[test]
fn tables_and_rugs_go_with_their_seat() {
    let pieces = vec![
        sofa(),
        piece("low table", PieceKind::CoffeeTable, (600.0, 1500.0), (400.0, 900.0)),
        piece("rug", PieceKind::Rug, (1500.0, 3000.0), (1500.0, 3000.0)),
        piece("side table", PieceKind::SideTable, (300.0, 700.0), (300.0, 700.0)),
    ];
    let found = of(&brief(rectangle(6000.0, 6000.0), pieces));
    let at_top = by_key(&found, "top");
    let relations =
        |piece: usize| -> Vec<Relation> { at_top.standings[piece].stands.iter().map(|stand| stand.relation).collect() };
    assert_eq!(relations(1), [Relation::Before { seat: PieceId(0) }]);
    assert_eq!(at_top.standings[1].role, Role::Table);
    assert_eq!(relations(2), [Relation::Under { seat: PieceId(0) }]);
    assert_eq!(
        relations(3),
        [Relation::Beside { seat: PieceId(0), left: true }, Relation::Beside { seat: PieceId(0), left: false }]
    );
    assert!((1..=3).all(|piece| at_top.standings[piece].stands[0].facing == at_top.choices.facing));
}

#[test]
fn keys_stay_apart_where_names_differ_only_in_signs() {
    let mut plan = rectangle(6000.0, 6000.0);
    for (wall, name) in plan.walls.iter_mut().zip(["long wall", "Long-Wall!", "...", "wall 4"]) {
        wall.name = name.to_owned();
    }
    let found = of(&brief(plan, vec![sofa()]));
    assert_eq!(keys(&found).len(), found.arrangements.len());
    assert!(strings(&["long-wall", "long-wall-2", "wall-3", "wall-4"]).is_subset(&keys(&found)));
}

/// A regular room of 64 walls and 24 pieces, most of them seats.
#[test]
fn a_hostile_room_stays_within_the_cap_and_says_what_lies_beyond() {
    let corner = |number: u32| {
        let angle = -f64::from(number) * std::f64::consts::TAU / 64.0;
        (10_000.0 * angle.cos(), 10_000.0 * angle.sin())
    };
    let corners: Vec<(f64, f64)> = (0..64).map(corner).collect();
    let names: Vec<String> = (1..=64).map(|number| format!("wall {number}")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let chair = |number: usize| piece(&format!("chair {number}"), PieceKind::Armchair, (500.0, 900.0), (500.0, 900.0));
    let mut pieces: Vec<Piece> = (0..22).map(chair).collect();
    pieces.push(piece("settee", PieceKind::Sofa, (700.0, 900.0), (700.0, 900.0)));
    pieces.push(piece("bench", PieceKind::MediaUnit, (600.0, 900.0), (350.0, 500.0)));
    let hostile = room(&corners, &names);
    let found = of(&brief(hostile.clone(), pieces.clone()));
    assert!(found.arrangements.len() <= MOST_ARRANGEMENTS && found.dropped.len() <= MOST_ARRANGEMENTS);
    assert!(!found.arrangements.is_empty() && found.beyond > 0);
    let seat_walls: BTreeSet<_> = found.arrangements.iter().map(|arrangement| arrangement.choices.seat_back).collect();
    assert_eq!(seat_walls.len(), 65, "every wall, and free-standing");
    // With an entrance in every other wall each layout has routes by the thousand: fewer are looked at, and it is said.
    let mut entered = hostile;
    entered.items.extend((0..32).map(|wall| door(&format!("door {wall}"), 2 * wall, 50.0, 850.0, Hinge::Left)));
    let found = of(&brief(entered, pieces));
    assert!((1..=16).contains(&found.arrangements.len()), "{}", found.arrangements.len());
    assert!(found.beyond > MOST_ARRANGEMENTS);
}
