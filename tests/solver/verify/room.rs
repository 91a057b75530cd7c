//! What the room asks of a piece: its walls, doors, heat, windows and what stands fixed.

use elbowroom_model::{
    Clearance, Door, FireOpening, Fireplace, Hinge, ItemKind, KeptFree, LeadsTo, PieceKind, Radiator, Rule, Slope,
    Swings, View, WallId, Window,
};
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;

use super::{HAIR, NORTH, SOUTH, at_wall, broken, door, edge, placed, second_check};
use crate::support::checker::Part;
use crate::support::rooms::{Furnish, outline, piece, rectangle};

#[test]
fn a_part_stays_inside_the_walls_as_moved_in() {
    let brief = rectangle(5000.0, 4000.0).within(10.0).piece(piece(PieceKind::Sofa));
    edge("room", &brief, 4000.0, 4000.0 + HAIR, |x| vec![placed(0, (x - 10.0, -2000.0), SOUTH, (2000.0, 900.0))]);
}

#[test]
fn a_corner_of_the_room_that_juts_out_stops_a_part() {
    let corners = [(0.0, 0.0), (5000.0, 0.0), (5000.0, -2000.0), (3000.0, -2000.0), (3000.0, -4000.0), (0.0, -4000.0)];
    let brief = outline(&corners, &["a", "b", "c", "d", "e", "f"]).within(10.0).piece(piece(PieceKind::Sofa));
    edge("room", &brief, 2990.0, 2990.0 + HAIR, |x| vec![placed(0, (x - 1000.0, -1500.0), SOUTH, (2000.0, 900.0))]);
}

#[test]
fn a_wall_between_two_rooms_is_not_stepped_over() {
    // A U about a wall 100 thick: the sofa lies across it, all its corners inside.
    let corners = [
        (0.0, 0.0),
        (2000.0, 0.0),
        (2000.0, -2500.0),
        (2100.0, -2500.0),
        (2100.0, 0.0),
        (5000.0, 0.0),
        (5000.0, -4000.0),
        (0.0, -4000.0),
    ];
    let brief = outline(&corners, &["a", "b", "c", "d", "e", "f", "g", "h"]).piece(piece(PieceKind::Sofa));
    assert_eq!(broken(&brief, vec![placed(0, (2050.0, -500.0), SOUTH, (2000.0, 900.0))]), ["room"]);
}

#[test]
fn a_leaf_sweeps_a_quarter_disc_about_its_hinge() {
    // The hinge is moved in with its wall by 10. The side table's near corner lies on the diagonal.
    let brief = rectangle(5000.0, 4000.0).within(10.0).piece(piece(PieceKind::SideTable));
    let right = brief.clone().item("hall door", 0, 1200.0, 800.0, door(Hinge::Right));
    let reach = 800.0 / 2_f64.sqrt();
    edge("door_swing", &right, reach, reach - HAIR, |out| {
        vec![placed(0, (2000.0 - out - 250.0, -10.0 - out), SOUTH, (500.0, 500.0))]
    });
    let left = brief.item("hall door", 0, 1200.0, 800.0, door(Hinge::Left));
    edge("door_swing", &left, reach, reach - HAIR, |out| {
        vec![placed(0, (1200.0 + out + 250.0, -10.0 - out), SOUTH, (500.0, 500.0))]
    });
}

#[test]
fn a_landing_is_as_wide_as_its_doorway() {
    let kind =
        ItemKind::Door(Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: LeadsTo::Entrance });
    let brief = rectangle(5000.0, 4000.0)
        .within(10.0)
        .rule(Clearance::DoorLanding, 900.0)
        .item("hall door", 0, 200.0, 800.0, kind)
        .piece(piece(PieceKind::SideTable));
    edge("door_landing", &brief, 1250.0, 1250.0 - HAIR, |x| vec![placed(0, (x, -300.0), SOUTH, (500.0, 500.0))]);
    edge("door_landing", &brief, -910.0, -910.0 + HAIR, |y| vec![placed(0, (600.0, y), SOUTH, (500.0, 500.0))]);
}

/// A leaf of 800 about (2000, 0), hinged on the right: it sweeps on past the quarter turn, and no further than it opens.
#[test]
fn a_leaf_sweeps_as_far_as_it_opens() {
    let opens_to = |degrees: f64| {
        let to = LeadsTo::Space("den".to_owned());
        let door = Door { hinge: Some(Hinge::Right), swings: Swings::In, opens_to: Some(degrees), leads_to: to };
        let room = rectangle(5000.0, 4000.0).within(10.0).rule(Clearance::DoorLanding, 0.0);
        room.item("den door", 0, 1200.0, 800.0, ItemKind::Door(door)).piece(piece(PieceKind::SideTable))
    };
    let cupboard = |(x, y)| vec![placed(0, (x, y), SOUTH, (500.0, 500.0))];
    // Flat against its wall, the leaf ends 800 beyond the hinge: what stands at the wall there keeps off.
    edge("door_swing", &opens_to(180.0), 3050.0, 3050.0 - HAIR, |x| cupboard((x, -10.0)));
    // At 135 degrees it comes to rest where a corner as far out as aside lies on its line (D: 45 degrees).
    edge("door_swing", &opens_to(135.0), 2750.0, 2750.0 - 2.0 * HAIR, |x| cupboard((x, -10.0)));
    let reach = 800.0 / 2_f64.sqrt();
    for hinged in [2250.0, 1750.0] {
        let aside: f64 = hinged - 2000.0;
        edge("door_swing", &opens_to(135.0), reach, reach - HAIR, |out| {
            cupboard((hinged + aside.signum() * out, -10.0 - out))
        });
    }
    // Square to the wall it leaves the floor beside it.
    assert_eq!(broken(&opens_to(90.0), cupboard((2250.0, -10.0))), [""; 0]);
}

/// A step across the room at 2000 from the north wall: what takes floor stands above or below it, a rug too.
#[test]
fn nothing_stands_across_a_step() {
    for within in [0.0, 10.0] {
        let room = |kind| {
            let room = rectangle(5000.0, 4000.0).within(within).fixed("step", &[(1000.0, -2000.0), (4000.0, -2000.0)]);
            room.piece(piece(kind))
        };
        for kind in [PieceKind::SideTable, PieceKind::Rug, PieceKind::OpenFloor] {
            let at = |x: f64, y: f64| vec![placed(0, (x, y), SOUTH, (500.0, 500.0))];
            edge("fixed", &room(kind), -1500.0 + within, -1500.0 + within - HAIR, |y| at(2500.0, y));
            edge("fixed", &room(kind), 750.0 - within, 750.0 - within + HAIR, |x| at(x, -1800.0));
        }
        // The floor before a desk, where its sitter sits, is on one level too.
        let room = room(PieceKind::Desk).rule(Clearance::DeskFront, 700.0);
        edge("desk_front", &room, -800.0 + within, -800.0 + within - HAIR, |y| {
            vec![placed(0, (2500.0, y), SOUTH, (1200.0, 500.0))]
        });
    }
}

/// 2010 ADA Standards 404.2.4.1, Table 404.2.4.1 (P): pulled open from the front, a door asks for 60 in square to it and
/// 18 in beside its latch.
#[test]
fn who_pulls_a_door_open_stands_beside_its_latch() {
    let inch = 25.4;
    let door = |swings, hinge| Door { hinge, swings, opens_to: None, leads_to: LeadsTo::Entrance };
    let room = |door| {
        let room = rectangle(5000.0, 4000.0).within(10.0).rule(Clearance::DoorLanding, 48.0 * inch);
        let room = room.rule(Clearance::LatchSide, 18.0 * inch).rule(Clearance::PullSide, 60.0 * inch);
        room.item("hall door", 0, 1200.0, 800.0, ItemKind::Door(door)).piece(piece(PieceKind::SideTable))
    };
    let (x, y) = (2000.0 + 18.0 * inch + 250.0, -10.0 - 60.0 * inch);
    let pulled = room(door(Swings::In, Some(Hinge::Left)));
    edge("latch_side", &pulled, x, x - HAIR, |x| vec![placed(0, (x, -100.0), SOUTH, (500.0, 500.0))]);
    edge("latch_side", &pulled, y, y + HAIR, |y| vec![placed(0, (1500.0, y), SOUTH, (500.0, 500.0))]);
    // At the hinge nobody stands; and a door that is pushed, or slides, asks for its landing alone.
    assert_eq!(broken(&pulled, vec![placed(0, (950.0, -100.0), SOUTH, (500.0, 500.0))]), [""; 0]);
    for other in [door(Swings::Out, Some(Hinge::Left)), door(Swings::Slides, None), door(Swings::Folds, None)] {
        let beside = vec![placed(0, (2250.0, -100.0), SOUTH, (500.0, 500.0))];
        assert_eq!(broken(&room(other), beside), [""; 0]);
    }
}

/// Common practice: a play mat lies out of a door's swing, and off a heater.
#[test]
fn floor_that_stays_open_keeps_out_of_swings_landings_and_heat() {
    let to = || LeadsTo::Space("den".to_owned());
    let mat = || rectangle(5000.0, 4000.0).within(10.0).piece(piece(PieceKind::OpenFloor));
    let swings = Door { hinge: Some(Hinge::Right), swings: Swings::In, opens_to: None, leads_to: to() };
    let brief = mat().item("den door", 0, 1200.0, 800.0, ItemKind::Door(swings));
    let reach = 800.0 / 2_f64.sqrt();
    edge("door_swing", &brief, reach, reach - HAIR, |out| {
        vec![placed(0, (2000.0 - out - 250.0, -10.0 - out), SOUTH, (500.0, 500.0))]
    });
    let slides = Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: to() };
    let brief = mat().rule(Clearance::DoorLanding, 900.0).item("den door", 0, 200.0, 800.0, ItemKind::Door(slides));
    edge("door_landing", &brief, -910.0, -910.0 + HAIR, |y| vec![placed(0, (600.0, y), SOUTH, (500.0, 500.0))]);
    let radiator = ItemKind::Radiator(Radiator { depth: 110.0, height: 600.0, keep_clear: 100.0 });
    let brief = mat().item("radiator", 0, 1000.0, 1200.0, radiator);
    edge("keep_clear", &brief, -220.0, -220.0 + HAIR, |y| vec![placed(0, (1600.0, y), SOUTH, (2000.0, 900.0))]);
}

#[test]
fn heat_keeps_its_front_clear() {
    let radiator = ItemKind::Radiator(Radiator { depth: 110.0, height: 600.0, keep_clear: 100.0 });
    let brief = rectangle(5000.0, 4000.0)
        .within(10.0)
        .item("radiator", 0, 1000.0, 1200.0, radiator)
        .piece(piece(PieceKind::Sofa));
    edge("keep_clear", &brief, -220.0, -220.0 + HAIR, |y| vec![placed(0, (1600.0, y), SOUTH, (2000.0, 900.0))]);
    let fire = ItemKind::Fireplace(Fireplace { depth: 350.0, opening: None, height: None, keep_clear: 900.0 });
    for kind in [PieceKind::Sofa, PieceKind::Rug] {
        let brief = rectangle(5000.0, 4000.0).item("fire", 0, 1000.0, 1000.0, fire.clone()).piece(piece(kind));
        edge("keep_clear", &brief, -1250.0, -1250.0 + HAIR, |y| vec![placed(0, (1600.0, y), SOUTH, (2000.0, 900.0))]);
        // The round end: a corner 45 degrees off the front's right end.
        let out = 900.0 / 2_f64.sqrt();
        edge("keep_clear", &brief, out, out - HAIR, |out| {
            vec![placed(0, (2000.0 + out + 1000.0, -350.0 - out), SOUTH, (2000.0, 900.0))]
        });
        // Beside the breast, behind the plane of its front, all is free.
        assert_eq!(broken(&brief, vec![placed(0, (2500.0, 0.0), SOUTH, (1000.0, 350.0))]), [""; 0]);
    }
}

#[test]
fn what_stays_clear_of_a_fire_is_measured_from_its_opening() {
    let opening = Some(FireOpening { at: 450.0, width: 700.0 });
    let fire = ItemKind::Fireplace(Fireplace { depth: 400.0, opening, height: None, keep_clear: 900.0 });
    for (kind, within) in [(PieceKind::Sofa, 0.0), (PieceKind::Rug, 0.0), (PieceKind::Sofa, 10.0)] {
        // The breast from 1000 to 2600 along the north wall, its mouth from 1450 to 2150.
        let brief = rectangle(6000.0, 4000.0).within(within).item("fire", 0, 1000.0, 1600.0, fire.clone());
        let brief = brief.piece(piece(kind));
        let front = -1300.0 - within;
        edge("keep_clear", &brief, front, front + HAIR, |y| vec![placed(0, (1800.0, y), SOUTH, (500.0, 900.0))]);
        // In the plane of its front, before the breast and past it: 900 from the end of the mouth.
        edge("keep_clear", &brief, 3050.0, 3050.0 - HAIR, |x| {
            vec![placed(0, (x + 500.0, -410.0 - within), SOUTH, (1000.0, 900.0))]
        });
        edge("keep_clear", &brief, 550.0, 550.0 + HAIR, |x| {
            vec![placed(0, (x - 250.0, -410.0 - within), SOUTH, (500.0, 900.0))]
        });
        // In the alcove beside the breast, to its front, all is free.
        assert_eq!(broken(&brief, vec![placed(0, (3100.0, -within), SOUTH, (1000.0, 400.0))]), [""; 0]);
    }
}

#[test]
fn a_fixed_thing_is_grown_by_what_it_may_be_off() {
    for kind in [PieceKind::Sofa, PieceKind::Rug] {
        let brief = rectangle(5000.0, 4000.0)
            .within(10.0)
            .fixed("post", &[(100.0, -2000.0), (400.0, -2000.0), (400.0, -1700.0), (100.0, -1700.0)])
            .piece(piece(kind));
        edge("fixed", &brief, 1410.0, 1410.0 - HAIR, |x| vec![placed(0, (x, -1500.0), SOUTH, (2000.0, 900.0))]);
    }
}

#[test]
fn a_piece_taller_than_the_sill_keeps_off_the_window() {
    let window =
        |sill| ItemKind::Window(Window { sill, head: 2100.0, view: View::Plain, opens: true, must_reach: false });
    let brief = |sill| {
        rectangle(5000.0, 4000.0)
            .within(10.0)
            .rule(Clearance::WindowFront, 300.0)
            .item("bay", 0, 1000.0, 1200.0, window(sill))
            .piece(piece(PieceKind::Sofa))
    };
    edge("window_front", &brief(849.0), -310.0, -310.0 + HAIR, |y| {
        vec![placed(0, (1600.0, y), SOUTH, (2000.0, 900.0))]
    });
    assert_eq!(broken(&brief(850.0), vec![placed(0, (1600.0, -20.0), SOUTH, (2000.0, 900.0))]), [""; 0]);
}

#[test]
fn a_screen_counts_to_its_top_before_a_window() {
    let kind =
        ItemKind::Window(Window { sill: 1100.0, head: 2100.0, view: View::Plain, opens: true, must_reach: false });
    let brief = rectangle(5000.0, 4000.0).rule(Clearance::WindowFront, 300.0).item("bay", 0, 1000.0, 1200.0, kind);
    let unit = |screen| {
        let mut unit = piece(PieceKind::MediaUnit);
        (unit.height, unit.screen) = (500.0, screen);
        unit
    };
    let stands = || vec![at_wall(placed(0, (1600.0, -50.0), SOUTH, (1500.0, 450.0)), 0)];
    // 55 in: 684.9 mm high (derived from 16:9).
    assert_eq!(broken(&brief.clone().piece(unit(Some(1397.0))), stands()), ["window_front"]);
    assert_eq!(broken(&brief.piece(unit(None)), stands()), [""; 0]);
}

#[test]
fn a_door_that_folds_takes_half_its_width() {
    let kind = ItemKind::Door(Door { hinge: None, swings: Swings::Folds, opens_to: None, leads_to: LeadsTo::Entrance });
    let brief = rectangle(5000.0, 4000.0)
        .within(10.0)
        .item("hall door", 0, 200.0, 800.0, kind)
        .piece(piece(PieceKind::SideTable));
    edge("door_swing", &brief, -410.0, -410.0 + HAIR, |y| vec![placed(0, (600.0, y), SOUTH, (500.0, 500.0))]);
    edge("door_swing", &brief, 1250.0, 1250.0 - HAIR, |x| vec![placed(0, (x, -100.0), SOUTH, (500.0, 500.0))]);
}

#[test]
fn what_a_wall_is_kept_free_of_stands_elsewhere() {
    let mut brief = rectangle(5000.0, 4000.0).piece(piece(PieceKind::Sofa));
    brief.room.kept_free = vec![KeptFree { wall: WallId(0), kind: PieceKind::Sofa }];
    let at = |wall: usize, (x, y): (f64, f64), facing| vec![at_wall(placed(0, (x, y), facing, (2000.0, 900.0)), wall)];
    assert_eq!(broken(&brief, at(0, (2000.0, 0.0), SOUTH)), ["keep_free"]);
    assert_eq!(broken(&brief, at(2, (2000.0, -4000.0), NORTH)), [""; 0]);
    let second = second_check(&brief, &at(0, (2000.0, 0.0), SOUTH), &[], Part::Places);
    assert!(second.len() == 1 && second[0].contains("keep_free"), "{second:?}");
    let found = enumerate(&brief, &Site::of(&brief));
    let backs: Vec<_> = found.arrangements.iter().filter_map(|it| it.choices.seat_back).collect();
    assert!(!backs.contains(&WallId(0)) && backs.contains(&WallId(2)), "{backs:?}");
    assert!(found.dropped.iter().any(|it| it.reason.rule == Rule::KeepFree), "{:?}", found.dropped);
}

#[test]
fn what_is_higher_than_a_falling_ceiling_stands_further_out() {
    let mut cupboard = piece(PieceKind::SideTable);
    cupboard.height = 1750.0;
    let mut brief = rectangle(5000.0, 4000.0).within(10.0).piece(cupboard);
    brief.room.slopes = vec![Slope { wall: WallId(0), from: 2400.0, to: 1100.0, over: 1500.0 }];
    // Half way up the slope, half way out: (1750 - 1100) / (2400 - 1100) x 1500 (D).
    edge("ceiling", &brief, -760.0, -760.0 + HAIR, |y| vec![placed(0, (2500.0, y), SOUTH, (500.0, 500.0))]);
    brief.pieces[0].height = 1100.0;
    assert_eq!(broken(&brief, vec![placed(0, (2500.0, -10.0), SOUTH, (500.0, 500.0))]), [""; 0]);
}
