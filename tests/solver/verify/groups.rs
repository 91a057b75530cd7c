//! Groups of their own: room between their seats and others, near one another, what serves them at hand.
//!
//! The reach of a group is the social distance, close phase, to 7 ft (Hall 1966, published); room between two groups and a
//! surface at hand are common practice, no source.

use elbowroom_model::{Clearance, Piece, PieceKind};

use super::{HAIR, SOUTH, edge, placed};
use crate::support::rooms::{Furnish, piece, rectangle};

fn of(group: Option<&str>, kind: PieceKind, name: &str) -> Piece {
    let mut piece = piece(kind);
    (piece.group, piece.name) = (group.map(str::to_owned), name.to_owned());
    piece
}

#[test]
fn one_walks_between_the_seats_of_two_groups() {
    let room = rectangle(6000.0, 5000.0).rule(Clearance::BetweenGroups, 600.0);
    let room = room.piece(of(None, PieceKind::Sofa, "sofa"));
    let room = room.piece(of(Some("reading"), PieceKind::Armchair, "reading chair"));
    edge("between_groups", &room, 3550.0, 3550.0 - HAIR, |x| {
        vec![placed(0, (1500.0, -1000.0), SOUTH, (2000.0, 900.0)), placed(1, (x, -1000.0), SOUTH, (900.0, 900.0))]
    });
}

#[test]
fn no_seat_is_further_from_the_middle_of_its_group_than_one_speaks() {
    let chair = |name| of(Some("reading"), PieceKind::Armchair, name);
    let room = rectangle(6000.0, 5000.0).piece(chair("one")).piece(chair("two")).piece(chair("three"));
    // Middles of fronts at 1000, 2000 and x: the last is (2 x - 3000) / 3 from the mean of them (D).
    let reach = f64::midpoint(3.0 * 2134.0, 3000.0);
    edge("group", &room, reach, reach + 2.0 * HAIR, |x| {
        let at = |id, x: f64| placed(id, (x, -1000.0), SOUTH, (900.0, 900.0));
        vec![at(0, 1000.0), at(1, 2000.0), at(2, x)]
    });
}

#[test]
fn what_serves_a_group_is_at_hand_there() {
    for kind in [PieceKind::FloorLamp, PieceKind::SideTable] {
        let room = rectangle(6000.0, 5000.0).piece(of(Some("reading"), PieceKind::Armchair, "reading chair"));
        let room = room.piece(of(None, PieceKind::Sofa, "sofa")).piece(of(Some("reading"), kind, "reading light"));
        // A seat of another group, however near, is none of its own.
        edge("group", &room, 2050.0, 2050.0 + HAIR, |x| {
            let chair = placed(0, (1000.0, -1000.0), SOUTH, (900.0, 900.0));
            let sofa = placed(1, (3500.0, -1000.0), SOUTH, (2000.0, 900.0));
            vec![chair, sofa, placed(2, (x, -1000.0), SOUTH, (300.0, 300.0))]
        });
    }
}
