//! Rooms and pieces built straight from the vocabulary.

use elbowroom_model::{
    Brief, Clearance, Door, FireOpening, Fireplace, Hand, Hinge, ItemKind, LeadsTo, Piece, PieceId, PieceKind,
    Radiator, Room, SizeRange, Swings, Unit, View, WallId, WallItem, Window,
};

use crate::support::rooms::{self, Furnish};

/// A room from its corners (clockwise) and the names of the walls that start there.
pub(crate) fn room(corners: &[(f64, f64)], names: &[&str]) -> Room {
    rooms::outline(corners, names).room
}

/// A rectangle with its first wall, `top`, along +x.
pub(crate) fn rectangle(width: f64, depth: f64) -> Room {
    room(&[(0.0, 0.0), (width, 0.0), (width, -depth), (0.0, -depth)], &["top", "right side", "bottom", "left side"])
}

/// A door that swings in.
pub(crate) fn door(name: &str, wall: usize, at: f64, width: f64, hinge: Hinge) -> WallItem {
    let door = Door { hinge: Some(hinge), swings: Swings::In, opens_to: None, leads_to: LeadsTo::Entrance };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Door(door) }
}

/// A radiator that stands out 110 mm with 100 mm clear before it.
pub(crate) fn radiator(name: &str, wall: usize, at: f64, width: f64) -> WallItem {
    let radiator = Radiator { depth: 110.0, height: 600.0, keep_clear: 100.0 };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Radiator(radiator) }
}

/// A fire in the middle of a breast that stands out 350 mm, with 460 clear before its mouth of 450.
pub(crate) fn fire(name: &str, wall: usize, at: f64, width: f64) -> WallItem {
    let mouth = FireOpening { at: (width - 450.0) / 2.0, width: 450.0 };
    let fire = Fireplace { depth: 350.0, opening: Some(mouth), height: None, keep_clear: 460.0 };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Fireplace(fire) }
}

/// A window with its sill at this height.
pub(crate) fn window(name: &str, wall: usize, at: f64, width: f64, sill: f64) -> WallItem {
    let window = Window { sill, head: 2100.0, view: View::Plain, opens: true, must_reach: false };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Window(window) }
}

/// A piece with a width and a depth that each run from least to most.
pub(crate) fn piece(name: &str, kind: PieceKind, width: (f64, f64), depth: (f64, f64)) -> Piece {
    let range = |(least, most): (f64, f64)| SizeRange { least, usual: (least + most) / 2.0, most };
    let corner = kind == PieceKind::CornerSofa;
    Piece {
        name: name.to_owned(),
        width: range(width),
        depth: range(depth),
        return_length: corner.then(|| range((1500.0, 2500.0))),
        height: 500.0,
        hands: if corner { vec![Hand::Left, Hand::Right] } else { Vec::new() },
        off_wall: if kind.is_seat() { 50.0 } else { 0.0 },
        ..rooms::piece(kind)
    }
}

pub(crate) fn sofa() -> Piece {
    piece("sofa", PieceKind::Sofa, (1500.0, 2900.0), (800.0, 1100.0))
}

pub(crate) fn corner_sofa() -> Piece {
    piece("corner sofa", PieceKind::CornerSofa, (1900.0, 2900.0), (850.0, 1100.0))
}

pub(crate) fn media_unit() -> Piece {
    piece("media unit", PieceKind::MediaUnit, (1200.0, 2400.0), (350.0, 610.0))
}

/// Two armchairs of one row, the first of which will stand at `place` in the brief.
pub(crate) fn armchairs(place: usize) -> Vec<Piece> {
    let chair = |number: usize| {
        let mut chair = piece(&format!("armchair {number}"), PieceKind::Armchair, (700.0, 1000.0), (700.0, 1000.0));
        chair.alike = Some(PieceId(place));
        chair
    };
    vec![chair(1), chair(2)]
}

/// A brief with the clearances of an easy room.
pub(crate) fn brief(room: Room, pieces: Vec<Piece>) -> Brief {
    let easy = [
        (Clearance::Walkway, 914.4),
        (Clearance::Passage, 609.6),
        (Clearance::SeatToTable, 430.0),
        (Clearance::FacingSeats, 1524.0),
        (Clearance::ScreenToSeat, 1524.0),
        (Clearance::DoorLanding, 900.0),
        (Clearance::WindowFront, 300.0),
    ];
    let brief = Brief { room, pieces, units: Unit::Centimetre, ..rooms::outline(&[], &[]) };
    easy.into_iter().fold(brief, |brief, (rule, figure)| brief.rule(rule, figure))
}
