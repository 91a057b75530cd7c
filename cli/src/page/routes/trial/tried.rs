//! Where a script says that pieces stand, as the solver has it.

use elbowroom_model::{Brief, Hand, PieceId, Point, SizeRange, StandsAt, WallId};
use elbowroom_solver::judge::Placement;
use elbowroom_solver::{Placed, Size};
use serde_json::Value;

/// Most places from the room's corner that figures may name, mm.
pub(super) const FARTHEST: f64 = 100_000.0;

/// A piece as somebody tries it.
#[derive(Debug, Clone)]
pub(super) struct Tried {
    /// Where it stands.
    pub(super) placed: Placed,
    /// Somebody moved, turned or sized it.
    pub(super) moved: bool,
    /// Somebody sized it.
    pub(super) sized: bool,
}

impl Tried {
    /// A piece as it was put.
    pub(super) const fn left_alone(placed: Placed) -> Self {
        Self { placed, moved: false, sized: false }
    }
}

/// The pieces that a script names; nothing where one cannot be read.
pub(super) fn tried(brief: &Brief, pieces: &[Value]) -> Option<Vec<Tried>> {
    pieces.iter().map(|piece| one(brief, piece)).collect()
}

fn one(brief: &Brief, asked: &Value) -> Option<Tried> {
    let figure = |key: &str| asked[key].as_f64().filter(|figure| figure.is_finite() && figure.abs() < FARTHEST);
    let size = |key: &str| figure(key).filter(|size| *size > 0.0);
    let flag = |key: &str| asked[key].as_bool().unwrap_or(false);
    let piece = PieceId(usize::try_from(asked["piece"].as_u64()?).ok()?);
    brief.piece(piece)?;
    let turn = figure("facing")?.to_radians();
    let hand = match asked["hand"].as_str() {
        Some("left") => Some(Hand::Left),
        Some("right") => Some(Hand::Right),
        _ => None,
    };
    let wall = asked["wall"].as_u64().and_then(|wall| usize::try_from(wall).ok()).map(WallId);
    let wall = wall.filter(|wall| brief.room.wall(*wall).is_some());
    let placed = Placed {
        piece,
        at_wall: wall,
        anchor: Point::new(figure("x")?, -figure("y")?),
        // What stands square stays so to the last digit.
        facing: wall
            .and_then(|wall| brief.room.wall(wall))
            .map_or_else(|| square(Point::new(turn.cos(), turn.sin())), elbowroom_model::Wall::inward),
        hand,
        size: Size {
            width: size("width")?,
            return_length: size("return"),
            second_return: size("second_return"),
            depth: size("depth")?,
            return_depth: size("return_depth"),
        },
    };
    Some(Tried { placed, moved: flag("moved"), sized: flag("sized") })
}

/// A way that is square to within what figures carry, made so.
fn square(way: Point) -> Point {
    let near = |figure: f64| if figure.abs() < 1e-9 { 0.0 } else { figure };
    Point::new(near(way.x), near(way.y))
}

/// The brief as the pieces are tried: what was moved is bound to no place of the file.
pub(super) fn loosened(brief: &Brief, tried: &[Tried]) -> Brief {
    let mut loosened = brief.clone();
    for it in tried.iter().filter(|it| it.moved) {
        if let Some(piece) = loosened.piece_mut(it.placed.piece) {
            piece.held = false;
        }
    }
    loosened
}

/// The placement of what is tried: what was moved finds the wall behind it anew.
pub(super) fn placement(brief: &Brief, tried: &[Tried]) -> Placement {
    let mut stood = brief.clone();
    for piece in brief.piece_ids() {
        match tried.iter().find(|it| it.placed.piece == piece) {
            Some(it) => hold(&mut stood, &it.placed),
            None => {
                if let Some(piece) = stood.piece_mut(piece) {
                    (piece.needed, piece.stands) = (false, None);
                }
            }
        }
    }
    let found = Placement::of(&stood).map(|placement| placement.placed).unwrap_or_default();
    let each = |it: &Tried| {
        let anew = found.iter().find(|found| found.piece == it.placed.piece).filter(|_| it.moved);
        anew.unwrap_or(&it.placed).clone()
    };
    Placement { placed: tried.iter().map(each).collect() }
}

/// The middle of a piece's back; of a corner sofa it lies half its width from the outer corner.
pub(super) fn back(placed: &Placed) -> Point {
    let left = placed.facing.left();
    match placed.hand {
        Some(Hand::Left) if placed.size.return_length.is_some() => placed.anchor - left * (placed.size.width / 2.0),
        Some(Hand::Right) if placed.size.return_length.is_some() => placed.anchor + left * (placed.size.width / 2.0),
        _ => placed.anchor,
    }
}

/// Has a piece stand there in the size that it has.
pub(super) fn hold(brief: &mut Brief, placed: &Placed) {
    let back = back(placed);
    let Some(piece) = brief.piece_mut(placed.piece) else { return };
    let fixed = |size: f64| SizeRange { least: size, usual: size, most: size };
    piece.width = fixed(placed.size.width);
    piece.depth = fixed(placed.size.depth);
    piece.return_length = placed.size.return_length.map(fixed);
    piece.second_return = placed.size.second_return.map(fixed);
    piece.return_depth = placed.size.return_depth.map(fixed);
    piece.aim = None;
    if let Some(hand) = placed.hand {
        piece.hands = vec![hand];
    }
    piece.stands = Some(StandsAt::Place { back, facing: placed.facing });
    piece.held = true;
}
