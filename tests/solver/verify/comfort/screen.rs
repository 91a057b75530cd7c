//! The screen on its axis, within the turn of a head, in clear sight.

use elbowroom_model::{Brief, Clearance, Hand, PieceKind};
use elbowroom_solver::Placed;

use super::super::{NORTH, SOUTH, WEST, at_wall, corner, placed};
use super::{PAST, breaks, edge, holds};
use crate::support::rooms::{Furnish, piece, rectangle};

fn room(width: f64, seat: PieceKind) -> Brief {
    rectangle(width, 4000.0).piece(piece(seat)).piece(piece(PieceKind::MediaUnit))
}

fn opposite(x: f64) -> Placed {
    at_wall(placed(1, (x, -4000.0), NORTH, (1600.0, 450.0)), 2)
}

/// Beside a corner sofa in the north-west corner whose return looks east.
fn beside(width: f64, y: f64) -> Vec<Placed> {
    let sofa = corner(placed(0, (0.0, 0.0), SOUTH, (2500.0, 900.0)), Hand::Right, 2000.0);
    vec![sofa, at_wall(placed(1, (width, y), WEST, (1000.0, 450.0)), 1)]
}

#[test]
fn the_screen_stands_on_the_axis_of_the_seat_that_faces_it() {
    // Common practice, no source: 140 mm.
    let brief = room(5000.0, PieceKind::Sofa).rule(Clearance::ScreenAxis, 140.0);
    for side in [-1.0, 1.0] {
        edge("screen_axis", &brief, 140.0, 140.0 + PAST, |off| {
            vec![placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)), opposite(2500.0 + side * off)]
        });
    }
    // The axis of a corner sofa is that of its bay, 900 to 2500.
    let brief = room(5000.0, PieceKind::CornerSofa).rule(Clearance::ScreenAxis, 140.0);
    edge("screen_axis", &brief, 1840.0, 1840.0 + PAST, |x| vec![beside(5000.0, -2000.0).swap_remove(0), opposite(x)]);
    // Beside it there is none to keep.
    holds(&room(3000.0, PieceKind::CornerSofa).rule(Clearance::ScreenAxis, 140.0), beside(3000.0, -1450.0));
}

#[test]
fn a_sitter_turns_the_head_by_45_degrees_at_most() {
    // Between 35, and 60 where the head may turn (NUREG-0700 rev. 3, 11.3.1.2-2): 45, natural by the Architectural
    // Institute of Japan, handbook 3, 1980, page 42 (second-hand). A sofa of 1800 sits a sixth, 300, off its middle.
    for side in [-1.0, 1.0] {
        edge("screen_turn", &room(5000.0, PieceKind::Sofa), 1000.0, 1000.0 - PAST, |ahead| {
            let sofa = placed(0, (2500.0, -2650.0 + ahead), SOUTH, (1800.0, 900.0));
            vec![sofa, opposite(2500.0 + side * 700.0)]
        });
    }
}

#[test]
fn a_screen_beside_lies_within_60_degrees_of_the_main_run_and_half_a_metre_ahead() {
    // NUREG-0700 rev. 3, 11.3.1.2-2: to 60 where the head may turn. The bay's middle is at 1700, -900; the screen 1850 aside.
    let limit = -900.0 - 1850.0 / 60_f64.to_radians().tan();
    edge("screen_turn", &room(4000.0, PieceKind::CornerSofa), limit, limit + 0.7, |y| beside(4000.0, y));
    // Common practice, no source: 500 mm.
    edge("screen_turn", &room(3000.0, PieceKind::CornerSofa), -1400.0, -1400.0 + PAST, |y| beside(3000.0, y));
    // The return itself turns 45: its front is 1100 long, its middle at 900, -1450, and the screen 750 ahead.
    let brief = room(2500.0 + 50.0, PieceKind::CornerSofa);
    let last = -1450.0 - (1200.0 - 1100.0 / 6.0);
    edge("screen_turn", &brief, last, last - PAST, |y| beside(2550.0, y));
}

#[test]
fn nothing_tall_stands_between_seat_and_screen() {
    // Common practice, no source: 400 mm each side; what is over 600 mm high.
    let brief = room(5000.0, PieceKind::Sofa).rule(Clearance::ScreenSight, 400.0).piece(piece(PieceKind::FloorLamp));
    let at = |x: f64, y: f64| {
        let lamp = placed(2, (x, y), SOUTH, (300.0, 300.0));
        vec![placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)), opposite(2500.0), lamp]
    };
    edge("screen_sight", &brief, 3050.0, 3050.0 - PAST, |x| at(x, -2000.0));
    edge("screen_sight", &brief, 1950.0, 1950.0 + PAST, |x| at(x, -2000.0));
    let low = |height: f64| {
        let mut brief = brief.clone();
        brief.pieces[2].height = height;
        brief
    };
    holds(&low(600.0), at(2500.0, -2000.0));
    breaks("screen_sight", &low(601.0), at(2500.0, -2000.0));
}

#[test]
fn a_post_hides_the_screen_where_it_is_tall() {
    let post = [(2600.0, -2400.0), (2800.0, -2400.0), (2800.0, -2200.0), (2600.0, -2200.0)];
    let brief = |height: Option<f64>| {
        let mut brief = room(5000.0, PieceKind::Sofa).rule(Clearance::ScreenSight, 400.0).fixed("post", &post);
        brief.room.fixed[0].height = height;
        brief
    };
    let stands = || vec![placed(0, (2500.0, -100.0), SOUTH, (2000.0, 900.0)), opposite(2500.0)];
    holds(&brief(Some(600.0)), stands());
    breaks("screen_sight", &brief(Some(601.0)), stands());
    breaks("screen_sight", &brief(None), stands());
}

#[test]
fn nothing_tall_stands_between_a_bay_and_a_screen_beside() {
    let brief =
        room(4000.0, PieceKind::CornerSofa).rule(Clearance::ScreenSight, 400.0).piece(piece(PieceKind::FloorLamp));
    let at = |x: f64, y: f64| {
        let mut stands = beside(4000.0, -2200.0);
        stands.push(placed(2, (x, y), SOUTH, (300.0, 300.0)));
        stands
    };
    edge("screen_sight", &brief, 1550.0, 1550.0 + PAST, |x| at(x, -1500.0));
    // Its far edge is at -2700.
    edge("screen_sight", &brief, -2700.0, -2700.0 + PAST, |y| at(2500.0, y));
}
