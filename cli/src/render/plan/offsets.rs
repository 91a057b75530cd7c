//! What finds a corner of a piece on the floor: how far it is, square out, from each of two walls that are not in line.

use elbowroom_model::{ItemKind, Point, Room, WallId, ring};

use super::shown::PieceShown;

/// Two walls that meet at less find a place badly: the sine of 30 degrees. Common practice, no source.
const SLANT: f64 = 0.5;
/// A length may run along an edge or past an end by so much, mm.
const ALONG_EDGE: f64 = 20.0;
/// A piece is parallel to a wall where it is turned from it by less: the sine of a degree.
const PARALLEL: f64 = 0.0175;

/// How far a corner is from a wall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Length {
    /// The wall.
    pub(super) wall: WallId,
    /// Where a tape touches it.
    pub(super) foot: Point,
    /// Square out from it to the corner, mm; a hair below 0 for what stands against it.
    pub(super) out: f64,
}

/// A corner of a piece with the two lengths that find it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Offsets {
    /// Where the corner is.
    pub(super) corner: Point,
    /// The shorter first.
    pub(super) from: [Length; 2],
}

impl Offsets {
    /// Both lengths together, mm.
    pub(super) fn sum(&self) -> f64 {
        self.from.iter().map(|length| length.out).sum()
    }

    /// Whether a piece that faces this way is parallel or square to either wall: one corner then finds all of it.
    pub(super) fn tells_turn(&self, room: &Room, facing: Point) -> bool {
        let is_parallel = |length: &Length| {
            room.wall(length.wall).is_some_and(|wall| {
                let along = wall.along().dot(facing).abs();
                !(PARALLEL..=1.0 - PARALLEL * PARALLEL / 2.0).contains(&along)
            })
        };
        self.from.iter().any(is_parallel)
    }
}

/// What a tape keeps off.
#[derive(Clone, Copy)]
struct KeptOff<'a> {
    /// What stands at walls for good.
    held: &'a [Vec<Point>],
    /// It touches no wall where that is a doorway.
    doorways: bool,
}

/// Every way to find a corner of the piece, the shortest lengths first. No tape runs through `held`, nor to where a wall is a
/// doorway, unless no corner is found otherwise: then it runs to the line of the wall across the doorway, or over what is held.
pub(super) fn offsets(room: &Room, held: &[Vec<Point>], piece: PieceShown<'_>) -> Vec<Offsets> {
    let rules = [(held, true), (held, false), (&[], false)];
    let found = rules.into_iter().map(|(held, doorways)| found(room, KeptOff { held, doorways }, piece));
    found.into_iter().find(|found| !found.is_empty()).unwrap_or_default()
}

fn found(room: &Room, off: KeptOff<'_>, piece: PieceShown<'_>) -> Vec<Offsets> {
    let outline = room.outline();
    let mut found = Vec::new();
    for corner in corners(piece) {
        let all: Vec<Length> = room.walls().filter_map(|(id, _)| length(room, &outline, off, id, corner)).collect();
        for (place, one) in all.iter().enumerate() {
            let others = all[place + 1..].iter().filter(|other| is_across(room, one.wall, other.wall));
            found.extend(others.map(|other| {
                let from = if one.out <= other.out { [*one, *other] } else { [*other, *one] };
                Offsets { corner, from }
            }));
        }
    }
    found.sort_by(|one, other| one.sum().total_cmp(&other.sum()));
    found
}

/// The corners of a piece: of a part those that lie in no other.
fn corners(piece: PieceShown<'_>) -> Vec<Point> {
    let parts = piece.parts();
    let is_own = |place: usize, corner: &Point| {
        parts.iter().enumerate().all(|(other, part)| other == place || !lies_in(part, *corner))
    };
    let own =
        parts.iter().enumerate().flat_map(|(place, part)| part.iter().filter(move |corner| is_own(place, corner)));
    own.copied().collect()
}

/// Whether a place lies in a convex part, its edge included.
fn lies_in(part: &[Point], place: Point) -> bool {
    let edges = part.iter().zip(part.iter().cycle().skip(1));
    edges.map(|(start, end)| (*end - *start).unit().unwrap_or_default().cross(place - *start)).all(|off| off > -1.0)
}

fn is_across(room: &Room, one: WallId, other: WallId) -> bool {
    let way = |wall: WallId| room.wall(wall).map_or_else(Point::default, elbowroom_model::Wall::along);
    way(one).cross(way(other)).abs() >= SLANT
}

/// From a wall to a corner, where a tape runs free over the floor and touches the wall.
fn length(room: &Room, outline: &[Point], off: KeptOff<'_>, wall: WallId, corner: Point) -> Option<Length> {
    let id = wall;
    let wall = room.wall(id)?;
    let (along, out) = ((corner - wall.start).dot(wall.along()), (corner - wall.start).dot(wall.inward()));
    if !(0.0..=wall.length()).contains(&along) || out < -1.0 {
        return None;
    }
    let is_open = off.doorways
        && room.items.iter().any(|item| {
            item.wall == id
                && matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_))
                && (item.at..item.at + item.width).contains(&along)
        });
    let foot = corner - wall.inward() * out;
    let steps = || (1..20).map(|step| foot + wall.inward() * (out * f64::from(step) / 20.0));
    let inside = out < ALONG_EDGE || steps().all(|at| ring::holds(outline, at));
    let free = out < ALONG_EDGE || off.held.iter().all(|held| !steps().any(|at| ring::holds(held, at)));
    (!is_open && inside && free).then_some(Length { wall: id, foot, out })
}
