//! Room depths, lanes and circles that handbooks and standards print, through the whole solver.
//!
//! Sources, with their kind: P read in a stored copy or a faithful reproduction; D derived here from such figures by exact
//! arithmetic; M from memory of the publication, not seen.
//! - HUD 1973: US Department of Housing and Urban Development, Manual of Acceptable Practices, 1973 (living and dining
//!   areas): facing seats and screen 60 in, main routes 36 in, minor ones 24 in, desk 30 in, dining 32, 38 and 42 in (P).
//! - ADA: 2010 ADA Standards for Accessible Design, 403.5.1, 304.3.1 and 404.2.4.1 (P). The relief of 403.5.1, 32 in over a length of
//!   24 in, is not modelled: a route is refused wherever it is under 36 in.
//! - LTH: Lifetime Homes Design Guide, 2010, criterion 7 (P).
//! - ADM: Approved Document M, volume 1, 2015 edition, turning circles (P) and Appendix D, furniture schedule (M).
//!
//! Every room is measured without error and has every gap taken away that its source does not name.

mod wheelchair;

use elbowroom_model::{Criterion, Dimension};
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::criteria::Finding;

use crate::support::plan::{Plan, PlanPiece, What};
use crate::support::ranked::{facing, largest, ranked, ranked_briefly, wall};

const INCH: f64 = 25.4;
/// A hair, mm: far more than rounding, far less than a tape can tell.
const HAIR: f64 = 0.1;
/// A figure that comes out of a program agrees with one that comes out of arithmetic within this, mm.
const SAME: f64 = 0.01;

/// Some option of the text is of this sort.
fn fits(plan: &Plan, sort: impl Fn(&Answer, &RankedOption) -> bool) -> bool {
    let answer = ranked_briefly(&plan.text());
    answer.options.iter().any(|option| sort(&answer, option))
}

fn any(_: &Answer, _: &RankedOption) -> bool {
    true
}

fn assert_same(found: Option<f64>, published: f64) {
    let found = found.expect("an option of this sort");
    assert!((found - published).abs() < SAME, "found {found}, published {published}");
}

/// Two equal sofas that face each other across a room 100 in long.
fn two_facing_sofas(across: f64, least: f64, most: f64) -> Plan {
    let sofa = PlanPiece::of("sofa").also("count", 2).range("width", 1828.8, 1828.8).range("depth", least, most);
    Plan::rectangle(100.0 * INCH, across).bare().clear("facing_seats", 60.0 * INCH).piece(sofa)
}

/// With a main route of 36 in along wall `c`; the ends of the sofas leave 28 in, so it cannot turn the corner.
fn with_lane(plan: Plan, across: f64) -> Plan {
    let lane = 36.0 * INCH;
    plan.clear("walkway", lane)
        .hold(1, "east opening", across - lane, lane, What::Opening { leads_to: "entrance", stance: "none" })
        .hold(3, "west opening", 0.0, lane, What::Opening { leads_to: "dining", stance: "none" })
}

/// Seats face each other between walls `a` and `c`.
fn facing_across(option: &RankedOption) -> bool {
    facing(option) && option.choices.facing.y.abs() > 0.9
}

/// S1 (HUD 1973, D): 144 in across, 60 in between two equal facing sofas: (144 - 60) / 2 = 42 in deep.
#[test]
fn s1_facing_sofas_share_what_the_gap_leaves() {
    let answer = ranked(&two_facing_sofas(144.0 * INCH, 762.0, 1100.0).text());
    let across = answer.options.iter().filter(|option| facing_across(option));
    assert_same(largest(&answer, across, "sofa 1", Dimension::Depth), 1066.8);
}

/// S2 (HUD 1973, D): as S1 with a 36 in main route behind one sofa: (144 - 60 - 36) / 2 = 24 in deep ...
#[test]
fn s2_a_main_route_behind_takes_its_width_off_the_depths() {
    let across = 144.0 * INCH;
    let answer = ranked(&with_lane(two_facing_sofas(across, 520.0, 1100.0), across).text());
    let opposite = answer.options.iter().filter(|option| facing_across(option));
    assert_same(largest(&answer, opposite, "sofa 1", Dimension::Depth), 24.0 * INCH);
}

/// ... so two sofas of 30 in are refused, and stand in a room that is the missing 12 in deeper.
#[test]
fn s2_sofas_that_leave_no_main_route_are_refused_with_what_is_missing() {
    let (across, depth) = (144.0 * INCH, 30.0 * INCH);
    let narrow = with_lane(two_facing_sofas(across, depth, depth), across);
    let answer = ranked(&narrow.text());
    assert!(!answer.options.iter().any(facing_across));
    let refused = |answer: &Answer| answer.refused.iter().any(|refused| refused.key.contains("opposite"));
    assert!(refused(&answer));
    let across = across + 12.0 * INCH;
    let wide = with_lane(two_facing_sofas(across, depth, depth), across);
    assert!(ranked(&wide.text()).options.iter().any(facing_across));
}

/// A square room with a sofa 36 in deep and a media bench 18 in deep, 60 in apart.
fn sofa_and_bench(side: f64) -> Plan {
    Plan::rectangle(side, side)
        .bare()
        .clear("screen_to_seat", 60.0 * INCH)
        .piece(PlanPiece::of("sofa").fixed(1900.0, 36.0 * INCH))
        .piece(PlanPiece::of("media-unit").fixed(1200.0, 18.0 * INCH))
}

/// S3 and L2 (HUD 1973, D and P): 36 + 60 + 18 = 114 in from wall to wall; a hair less is refused.
#[test]
fn s3_a_sofa_and_its_screen_need_114_inches() {
    assert!(fits(&sofa_and_bench(114.0 * INCH), any));
    assert!(!fits(&sofa_and_bench(114.0 * INCH - HAIR), any));
}

/// A room of this depth whose main route runs from side to side along wall `a`; the sofa is too long for the ends.
fn lane_behind_the_sofa(depth: f64) -> Plan {
    let lane = 36.0 * INCH;
    Plan::rectangle(2700.0, depth)
        .bare()
        .clear("screen_to_seat", 60.0 * INCH)
        .clear("walkway", lane)
        .doorway(1, "east door", 0.0, lane, "entrance")
        .doorway(3, "west door", depth - lane, lane, "kitchen")
        .piece(PlanPiece::of("sofa").fixed(2100.0, 36.0 * INCH))
        .piece(PlanPiece::of("media-unit").fixed(1200.0, 18.0 * INCH))
}

/// S4 (HUD 1973, D): with the main route behind the sofa 114 + 36 = 150 in.
#[test]
fn s4_a_main_route_behind_the_sofa_makes_it_150_inches() {
    let turned_from_the_lane =
        |answer: &Answer, option: &RankedOption| wall(answer, option.choices.media_wall) == Some("wall c");
    assert!(fits(&lane_behind_the_sofa(150.0 * INCH), turned_from_the_lane));
    assert!(!fits(&lane_behind_the_sofa(150.0 * INCH - HAIR), turned_from_the_lane));
}

/// A room too shallow for a sofa but along its long walls, with a way straight across one of its ends.
fn lane_at_one_end(length: f64, lane: f64, (least, most): (f64, f64)) -> Plan {
    Plan::rectangle(length, 1700.0)
        .bare()
        .clear("walkway", lane)
        .doorway(0, "north door", 0.0, 30.0 * INCH, "entrance")
        .doorway(2, "south door", length - 30.0 * INCH, 30.0 * INCH, "kitchen")
        .piece(PlanPiece::of("sofa").range("width", least, most).range("depth", 900.0, 900.0))
}

/// S5 (HUD 1973, D): a wall of 3600 mm with a 36 in lane at one end takes a sofa of 2685.6 mm.
#[test]
fn s5_the_longest_sofa_beside_a_lane() {
    let answer = ranked(&lane_at_one_end(3600.0, 36.0 * INCH, (1750.0, 2972.0)).text());
    assert_same(largest(&answer, &answer.options, "sofa", Dimension::Width), 2685.6);
}

/// L3 (HUD 1973, P): a main route of 36 in passes, a hair less is refused.
#[test]
fn l3_main_route() {
    let sofa = 2000.0;
    let room = |lane: f64| lane_at_one_end(sofa + lane, 36.0 * INCH, (sofa, sofa));
    assert!(fits(&room(36.0 * INCH), any));
    assert!(!fits(&room(36.0 * INCH - HAIR), any));
}

/// L1 (HUD 1973, P): facing seats 60 in apart.
#[test]
fn l1_facing_seats() {
    let depth = 36.0 * INCH;
    let room = |between: f64| {
        let sofa = PlanPiece::of("sofa").also("count", 2).fixed(1828.8, depth);
        let across = 2.0 * depth + between;
        Plan::rectangle(across, across).bare().clear("facing_seats", 60.0 * INCH).piece(sofa)
    };
    assert!(fits(&room(60.0 * INCH), |_, option| facing(option)));
    assert!(!fits(&room(60.0 * INCH - HAIR), |_, option| facing(option)));
}

/// L4 (HUD 1973, P): where people walk between furniture, here between table and screen, 24 in. The bench is so long that
/// it cannot stand beside the table.
#[test]
fn l4_minor_route_between_pieces() {
    let (sofa, before, table, bench) = (36.0 * INCH, 16.0 * INCH, 20.0 * INCH, 18.0 * INCH);
    let room = |between: f64| {
        let across = sofa + before + table + between + bench;
        Plan::rectangle(across, across)
            .bare()
            .clear("passage", 24.0 * INCH)
            .clear("seat_to_table", before)
            .piece(PlanPiece::of("sofa").fixed(1900.0, sofa))
            .piece(PlanPiece::of("coffee-table").fixed(1500.0, table))
            .piece(PlanPiece::of("media-unit").fixed(2400.0, bench))
    };
    assert!(fits(&room(24.0 * INCH), any));
    assert!(!fits(&room(24.0 * INCH - HAIR), any));
}

/// L4 (HUD 1973, P): the way to a seat, here round the end of a counter.
#[test]
fn l4_minor_route_to_a_seat() {
    let room = |gap: f64| {
        Plan::rectangle(3000.0, 3000.0)
            .bare()
            .clear("passage", 24.0 * INCH)
            .doorway(2, "south door", 1000.0, 800.0, "entrance")
            .block("counter", (0.0, -2300.0), (3000.0 - gap, -2200.0))
            .piece(PlanPiece::of("armchair").fixed(900.0, 900.0))
    };
    assert!(fits(&room(24.0 * INCH), any));
    assert!(!fits(&room(24.0 * INCH - HAIR), any));
}

/// L5 (HUD 1973, P): 30 in before a desk.
#[test]
fn l5_before_a_desk() {
    let room = |before: f64| {
        Plan::rectangle(3600.0, 700.0 + before)
            .bare()
            .clear("desk_front", 30.0 * INCH)
            .piece(PlanPiece::of("desk").fixed(1600.0, 700.0))
            .piece(PlanPiece::of("armchair").fixed(800.0, 800.0))
    };
    assert!(fits(&room(30.0 * INCH), any));
    assert!(!fits(&room(30.0 * INCH - HAIR), any));
}

/// Longer than the room is wide, so its long sides run along the room; what the long walls hold keeps it off them.
fn dining_room(across: f64) -> Plan {
    let radiator = What::Radiator { depth: 0.001, keep_clear: 320.0 };
    Plan::rectangle(6000.0, across)
        .bare()
        .hold(0, "north heater", 0.0, 6000.0, radiator.clone())
        .hold(2, "south heater", 0.0, 6000.0, radiator)
        .piece(PlanPiece::of("armchair").fixed(700.0, 700.0))
}

fn table(least: f64, most: f64) -> PlanPiece {
    PlanPiece::of("dining-table").also("seats", 8).range("width", 2900.0, 2900.0).range("depth", least, most)
}

/// S6 (HUD 1973, D): a table 36 in wide with chairs on both sides, 32 in each: 100 in from wall to wall.
#[test]
fn s6_a_table_with_chairs_on_both_sides() {
    let wide = 36.0 * INCH;
    let room = |across: f64| dining_room(across).clear("dining_chair", 32.0 * INCH).piece(table(wide, wide));
    assert!(fits(&room(100.0 * INCH + 0.002), any));
    assert!(!fits(&room(100.0 * INCH - HAIR), any));
}

/// S7 (HUD 1973, D): 38 in behind the chairs of one side for people to pass: 106 in; 42 in to serve: 110 in. Our rule is
/// alike on both sides, so it is set to the mean of the two sides here.
#[test]
fn s7_passing_and_serving_behind_the_chairs() {
    let wide = 36.0 * INCH;
    for (behind, across) in [(38.0, 106.0), (42.0, 110.0)] {
        let passing = table(wide, wide).also("passing", true);
        let mean = (32.0 + behind) / 2.0 * INCH;
        let room = |across: f64| dining_room(across).clear("dining_passing", mean).piece(passing.clone());
        assert!(fits(&room(across * INCH + 0.002), any), "{behind}");
        assert!(!fits(&room(across * INCH - HAIR), any), "{behind}");
    }
}

/// S9 (HUD 1973, D): a room of 2600 mm with chairs on both sides: 2600 - 2 x 812.8 = 974.4 mm.
#[test]
fn s9_the_widest_table_between_two_rows_of_chairs() {
    let plan = dining_room(2600.0).clear("dining_chair", 32.0 * INCH).piece(table(700.0, 1200.0));
    let answer = ranked(&plan.text());
    assert_same(largest(&answer, &answer.options, "dining table", Dimension::Depth), 974.4);
}

/// L6 (HUD 1973, P): the seats of a conversation group lie within a circle of 10 ft (3048 mm); a wider group is told so.
#[test]
fn l6_conversation_group() {
    let room = |between: f64| {
        let chairs = PlanPiece::of("armchair").also("count", 2).fixed(900.0, 900.0);
        let across = 1800.0 + between;
        ranked_briefly(&Plan::rectangle(across, across).bare().clear("facing_seats", between).piece(chairs).text())
    };
    for (between, group) in [(1200.0, true), (2900.0, false)] {
        let answer = room(between);
        let talk = answer
            .options
            .iter()
            .filter(|option| facing(option))
            .filter_map(|option| option.judgement(Criterion::Talk));
        let talk: Vec<_> = talk.collect();
        assert!(!talk.is_empty());
        for talk in talk {
            let Finding::Talk(found) = &talk.finding else { panic!("{between}: {talk:?}") };
            assert_eq!((talk.figure <= 3048.0, found.wide), (group, !group), "{between}: {talk:?}");
        }
    }
}
