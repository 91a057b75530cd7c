//! Rooms and pieces built straight from the vocabulary.

use elbowroom_model::rules::RuleFigure;
use elbowroom_model::{
    Brief, Door, Hand, Hinge, ItemKind, LeadsTo, Piece, PieceKind, Point, Radiator, Room, Rule, Rules, SizeRange,
    Survey, Swings, Unit, View, Wall, WallId, WallItem, Window, Wishes,
};

/// A room from its corners (clockwise) and the names of the walls that start there.
pub(crate) fn room(corners: &[(f64, f64)], names: &[&str]) -> Room {
    let at = |i: usize| {
        let (x, y) = corners[i % corners.len()];
        Point::new(x, y)
    };
    let wall = |(i, name): (usize, &&str)| Wall { name: (*name).to_owned(), start: at(i), end: at(i + 1) };
    Room {
        name: "room".to_owned(),
        walls: names.iter().enumerate().map(wall).collect(),
        items: Vec::new(),
        fixed: Vec::new(),
        ceiling: None,
        latitude: None,
        bearing: None,
        measured_within: 0.0,
        survey: Survey::default(),
    }
}

/// A rectangle with its first wall, `top`, along +x.
pub(crate) fn rectangle(width: f64, depth: f64) -> Room {
    room(&[(0.0, 0.0), (width, 0.0), (width, -depth), (0.0, -depth)], &["top", "right side", "bottom", "left side"])
}

/// A door that swings in.
pub(crate) fn door(name: &str, wall: usize, at: f64, width: f64, hinge: Hinge) -> WallItem {
    let door = Door { hinge: Some(hinge), swings: Swings::In, leads_to: LeadsTo::Entrance };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Door(door) }
}

/// A radiator that stands out 110 mm with 100 mm clear before it.
pub(crate) fn radiator(name: &str, wall: usize, at: f64, width: f64) -> WallItem {
    let radiator = Radiator { depth: 110.0, height: 600.0, keep_clear: 100.0 };
    WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind: ItemKind::Radiator(radiator) }
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
        kind,
        width: range(width),
        depth: range(depth),
        return_length: corner.then(|| range((1500.0, 2500.0))),
        steps: Vec::new(),
        square: false,
        height: 500.0,
        screen: None,
        hands: if corner { vec![Hand::Left, Hand::Right] } else { Vec::new() },
        chaise: false,
        off_wall: if kind.is_seat() { 50.0 } else { 0.0 },
        needed: true,
        passing: false,
        seats: None,
        alike: None,
        weight: 1.0,
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
        chair.alike = Some(place);
        chair
    };
    vec![chair(1), chair(2)]
}

/// A brief with the clearances of an easy room.
pub(crate) fn brief(room: Room, pieces: Vec<Piece>) -> Brief {
    let figures: [RuleFigure; 17] = std::array::from_fn(|_| RuleFigure { figure: Some(0.0), source: String::new() });
    let rules = Rules::new("easy", figures)
        .with(Rule::Walkway, 914.4, "")
        .with(Rule::Passage, 609.6, "")
        .with(Rule::SeatToTable, 430.0, "")
        .with(Rule::FacingSeats, 1524.0, "")
        .with(Rule::ScreenToSeat, 1524.0, "")
        .with(Rule::DoorLanding, 900.0, "")
        .with(Rule::WindowFront, 300.0, "");
    Brief {
        room,
        pieces,
        rules,
        wishes: Wishes::default(),
        notices: Vec::new(),
        only: Vec::new(),
        units: Unit::Centimetre,
        way: None,
    }
}

/// The room seen in a glass, x to -x: walls run the other way round, items sit the other way on them, hinges change.
pub(crate) fn mirrored(room: &Room) -> Room {
    let flip = |p: Point| Point::new(-p.x, p.y);
    let count = room.walls.len();
    let wall = |wall: &Wall| Wall { name: wall.name.clone(), start: flip(wall.end), end: flip(wall.start) };
    let item = |item: &WallItem| {
        let length = room.walls[item.wall.0].length();
        let mut item = item.clone();
        item.at = length - item.at - item.width;
        item.wall = WallId(count - 1 - item.wall.0);
        if let ItemKind::Door(door) = &mut item.kind {
            door.hinge = door.hinge.map(|hinge| if hinge == Hinge::Left { Hinge::Right } else { Hinge::Left });
        }
        item
    };
    let mut mirrored = room.clone();
    mirrored.walls = room.walls.iter().rev().map(wall).collect();
    mirrored.items = room.items.iter().map(item).collect();
    mirrored
}

/// The whole plan turned by an angle in radians.
pub(crate) fn turned(room: &Room, angle: f64) -> Room {
    let (sin, cos) = angle.sin_cos();
    let turn = |p: Point| Point::new(p.x * cos - p.y * sin, p.x * sin + p.y * cos);
    let mut turned = room.clone();
    for wall in &mut turned.walls {
        (wall.start, wall.end) = (turn(wall.start), turn(wall.end));
    }
    turned
}
