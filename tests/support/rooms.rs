//! Rooms and pieces made by hand, without the reader of scenario files.

use elbowroom_model::ClearanceFigure;
use elbowroom_model::{
    Brief, Clearance, Fixed, Hinge, ItemKind, Piece, PieceKind, Point, Room, Rules, SizeRange, Survey, Turned, Unit,
    Wall, WallId, WallItem, Wishes,
};

/// An empty rectangular room: `north` runs from (0, 0) to (`width`, 0), then `east`, `south`, `west`; no tolerance, and
/// every clearance 0 until it is set.
pub(crate) fn rectangle(width: f64, depth: f64) -> Brief {
    let corners = [(0.0, 0.0), (width, 0.0), (width, -depth), (0.0, -depth)];
    outline(&corners, &["north", "east", "south", "west"])
}

/// An empty room with these corners, clockwise; wall `i` runs from corner `i` to the next.
pub(crate) fn outline(corners: &[(f64, f64)], names: &[&str]) -> Brief {
    let point = |i: usize| Point::new(corners[i % corners.len()].0, corners[i % corners.len()].1);
    let wall = |i: usize| Wall { name: names[i].to_owned(), start: point(i), end: point(i + 1) };
    let room = Room {
        name: "room".to_owned(),
        walls: (0..corners.len()).map(wall).collect(),
        items: Vec::new(),
        fixed: Vec::new(),
        ceiling: None,
        latitude: None,
        bearing: None,
        measured_within: 0.0,
        survey: Survey::default(),
        kept_free: Vec::new(),
        slopes: Vec::new(),
    };
    Brief {
        room,
        pieces: Vec::new(),
        sizes: elbowroom_model::SizesAim::Usual,
        rules: Rules::new("easy", |_| ClearanceFigure::default()),
        wishes: Wishes::default(),
        notices: Vec::new(),
        only: Vec::new(),
        wanted: elbowroom_model::Wanted::default(),
        household: elbowroom_model::Household::default(),
        order: elbowroom_model::Order::default(),
        units: Unit::Millimetre,
        way: None,
    }
}

/// Chained changes to a brief.
pub(crate) trait Furnish: Sized {
    /// With this clearance.
    fn rule(self, rule: Clearance, figure: f64) -> Self;
    /// With walls and fixed things known within so much.
    fn within(self, measured_within: f64) -> Self;
    /// With an item on the wall at this place of the order.
    fn item(self, name: &str, wall: usize, at: f64, width: f64, kind: ItemKind) -> Self;
    /// With a fixed thing.
    fn fixed(self, name: &str, corners: &[(f64, f64)]) -> Self;
    /// With one more piece.
    fn piece(self, piece: Piece) -> Self;
}

impl Furnish for Brief {
    fn rule(mut self, rule: Clearance, figure: f64) -> Self {
        self.rules = self.rules.with(rule, figure, "the test");
        self
    }

    fn within(mut self, measured_within: f64) -> Self {
        self.room.measured_within = measured_within;
        self
    }

    fn item(mut self, name: &str, wall: usize, at: f64, width: f64, kind: ItemKind) -> Self {
        self.room.items.push(WallItem { name: name.to_owned(), wall: WallId(wall), at, width, kind });
        self
    }

    fn fixed(mut self, name: &str, corners: &[(f64, f64)]) -> Self {
        let corners = corners.iter().map(|&(x, y)| Point::new(x, y)).collect();
        self.room.fixed.push(Fixed {
            name: name.to_owned(),
            kind: "pillar".to_owned(),
            corners,
            height: None,
            use_depth: None,
            used_at: elbowroom_model::UsedAt::Longest,
        });
        self
    }

    fn piece(mut self, piece: Piece) -> Self {
        self.pieces.push(piece);
        self
    }
}

/// A piece of a kind, named by it, of any size from 200 to 4000 mm and with no off-wall gap.
pub(crate) fn piece(kind: PieceKind) -> Piece {
    let range = SizeRange { least: 200.0, usual: 1000.0, most: 4000.0 };
    Piece {
        name: kind.words(),
        kind,
        width: range,
        depth: range,
        return_length: (kind == PieceKind::CornerSofa).then_some(range),
        second_return: None,
        return_depth: None,
        steps: Vec::new(),
        square: false,
        height: if kind.is_flat() { 0.0 } else { 850.0 },
        screen: None,
        hands: Vec::new(),
        chaise: false,
        off_wall: 0.0,
        needed: true,
        passing: false,
        seats: None,
        pair: elbowroom_model::Pair::Either,
        at: Vec::new(),
        group: None,
        alike: None,
        weight: 1.0,
        aim: None,
        stands: None,
        held: false,
        turned: Turned::No,
        sold_sizes: false,
        sits: elbowroom_model::Sits::default(),
        instead: Vec::new(),
    }
}

/// The room with every place of it moved.
pub(crate) fn moved(room: &Room, to: impl Fn(Point) -> Point) -> Room {
    let mut moved = room.clone();
    for wall in &mut moved.walls {
        (wall.start, wall.end) = (to(wall.start), to(wall.end));
    }
    moved.fixed.iter_mut().flat_map(|fixed| &mut fixed.corners).for_each(|corner| *corner = to(*corner));
    moved
}

/// The room seen in a glass, x to -x: walls run the other way round, items sit the other way on them, hinges change.
pub(crate) fn mirrored(room: &Room) -> Room {
    let mut mirrored = moved(room, |at| Point::new(-at.x, at.y));
    let last = room.walls.len() - 1;
    mirrored.walls.reverse();
    mirrored.walls.iter_mut().for_each(|wall| std::mem::swap(&mut wall.start, &mut wall.end));
    mirrored.fixed.iter_mut().for_each(|fixed| fixed.corners.reverse());
    for item in &mut mirrored.items {
        item.at = room.walls[item.wall.0].length() - item.at - item.width;
        item.wall = WallId(last - item.wall.0);
        if let ItemKind::Door(door) = &mut item.kind {
            door.hinge = door.hinge.map(|hinge| if hinge == Hinge::Left { Hinge::Right } else { Hinge::Left });
        }
    }
    mirrored
}

/// The room turned about the origin by an angle in radians.
pub(crate) fn turned(room: &Room, angle: f64) -> Room {
    let (sine, cosine) = angle.sin_cos();
    moved(room, |at| at * cosine + at.left() * sine)
}
