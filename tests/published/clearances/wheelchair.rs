//! Ways, circles and pieces for who comes in a wheelchair: ADA, LTH and ADM as the parent names them.

use super::{HAIR, INCH, any, fits};
use crate::support::plan::{Plan, PlanPiece, What};
use crate::support::ranked::ranked;

/// A wheelchair's rooms: the profile, with what the source does not name taken away.
fn wheelchair(mut plan: Plan) -> Plan {
    plan.profile = "wheelchair";
    plan
}

/// A1 (ADA 403.5.1, P): 36 in between two pieces, at the edge. The room is so short that they stand side by side.
#[test]
fn a1_wheelchair_route_between_pieces() {
    let (sofa, books) = (900.0, 300.0);
    let room = |lane: f64| {
        let across = sofa + lane + books;
        wheelchair(Plan::rectangle(2400.0, across))
            .bare()
            .clear("turning_circle", 0.0)
            .clear("walkway", 36.0 * INCH)
            .doorway(1, "east door", sofa, lane, "entrance")
            .doorway(3, "west door", books, lane, "bedroom")
            .piece(PlanPiece::of("sofa").fixed(2000.0, sofa))
            .piece(PlanPiece::of("bookcase").fixed(1500.0, books))
    };
    assert!(fits(&room(36.0 * INCH), any));
    // In the empty room the way is wide, so what the doorways themselves lack is no relief.
    assert!(!fits(&room(36.0 * INCH - HAIR), any));
}

/// A room that a sofa of 900 mm leaves this much of, in both directions.
fn room_to_turn(circle: f64, left: f64) -> Plan {
    wheelchair(Plan::rectangle(2100.0, 900.0 + left))
        .bare()
        .clear("turning_circle", circle)
        .clear("walkway", 36.0 * INCH)
        .clear("passage", 750.0)
        .doorway(2, "south door", 600.0, 36.0 * INCH, "entrance")
        .piece(PlanPiece::of("sofa").fixed(2000.0, 900.0))
}

/// A4 (ADM volume 1, P: 1500 mm; ADA 304.3.1, P: 60 in): a circle to turn in that the way in leads to.
#[test]
fn a4_turning_circle() {
    for circle in [1500.0, 60.0 * INCH] {
        assert!(fits(&room_to_turn(circle, circle), any), "{circle}");
        assert!(!fits(&room_to_turn(circle, circle - HAIR), any), "{circle}");
    }
}

/// A5 (ADA 404.2.4.1, P): beside the latch of a door that is pulled open 18 in stay free, 60 in deep: a room so deep holds a
/// door of 36 in, that, and a sofa beside it.
#[test]
fn a5_floor_beside_the_latch() {
    let sofa = 2000.0;
    let room = |width: f64| {
        let door = What::Door { hinge: Some(crate::support::plan::Side::Left), leads_to: "entrance" };
        wheelchair(Plan::rectangle(width, 60.0 * INCH))
            .bare()
            .clear("turning_circle", 0.0)
            .clear("latch_side", 18.0 * INCH)
            .clear("pull_side", 60.0 * INCH)
            .hold(2, "south door", 0.0, 36.0 * INCH, door)
            .piece(PlanPiece::of("sofa").fixed(sofa, 900.0))
    };
    let holds = 36.0 * INCH + 18.0 * INCH + sofa;
    assert!(fits(&room(holds), any));
    assert!(!fits(&room(holds - HAIR), any));
}

/// A6 (LTH criterion 7, P): a coffee table does not count against the circle, it can be moved; a sofa does.
#[test]
fn a6_a_coffee_table_may_stand_in_the_circle_and_a_sofa_may_not() {
    let room = room_to_turn(1500.0, 1500.0).clear("seat_to_table", 450.0);
    let table = PlanPiece::of("coffee-table").fixed(800.0, 450.0);
    assert!(fits(&room.clone().piece(table), any));
    let second = PlanPiece::of("sofa").fixed(1500.0, 750.0);
    assert!(!fits(&room.piece(second), any));
}

/// A9 (LTH criterion 7, P): 750 mm to a window that must be reached, past the end of a sofa.
#[test]
fn a9_way_to_a_window() {
    let window = What::Window { sill: 900.0, head: 2100.0, view: "plain", must_reach: true };
    let room = |lane: f64| {
        let length = 2250.0 + lane;
        Plan::rectangle(length, 1700.0)
            .bare()
            .clear("passage", 750.0)
            .doorway(2, "south door", length - 800.0, 800.0, "entrance")
            .hold(0, "escape window", 0.0, 700.0, window.clone())
            .piece(PlanPiece::of("sofa").fixed(2250.0, 900.0))
    };
    assert!(fits(&room(750.0), any));
    assert!(!fits(&room(749.0), any));
}

/// K4 (ADM volume 1, Appendix D, M): settee 1850 x 850, armchair 850 x 850, television 220 x 650 and storage 500 x 1500
/// for four bedspaces stand in 13 m2, at the clearances of the easy profile.
#[test]
fn k4_furniture_for_four_stands_in_13_square_metres() {
    let plan = Plan::rectangle(4200.0, 3100.0)
        .hold(
            2,
            "hall door",
            60.0,
            775.0,
            What::Door { hinge: Some(crate::support::plan::Side::Left), leads_to: "entrance" },
        )
        .hold(0, "window", 1200.0, 1800.0, What::Window { sill: 900.0, head: 2100.0, view: "plain", must_reach: false })
        .piece(PlanPiece::of("sofa").fixed(1850.0, 850.0))
        .piece(PlanPiece::of("armchair").fixed(850.0, 850.0))
        .piece(PlanPiece::of("media-unit").fixed(650.0, 220.0))
        .piece(PlanPiece::of("sideboard").fixed(1500.0, 500.0));
    let answer = ranked(&plan.text());
    assert!(!answer.options.is_empty(), "{:#?}", answer.refused);
    for option in &answer.options {
        assert_eq!(option.layout.placed.len(), 4, "{}", option.key);
        assert!(option.routes.iter().all(|route| route.width >= route.needs - 1e-3), "{}", option.key);
    }
}
