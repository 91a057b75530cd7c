//! What stands in the room stands within its walls.

use crate::dimension::Dimension;
use crate::piece::{Hand, Piece, SizeRange};
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::{Room, Wall};
use crate::scenario::tolerance::TOUCHING;
use crate::stands_at::{BackOf, StandsAt};
use crate::yaml::Trail;

/// How far something reaches past a wall, mm, and past which.
#[derive(Clone, Copy)]
struct Past<'a> {
    wall: &'a str,
    by: f64,
}

/// Whether a piece at its least sizes stands within the walls, but for what a measurement may be off.
pub(crate) fn in_the_room(piece: &Piece, stands: &StandsAt, room: &Room, at: &Trail, report: &mut Report<'_>) -> bool {
    let least = |dimension| match piece.range(dimension) {
        Some(SizeRange { least, .. }) if !piece.size_is_known(dimension) => least,
        _ => piece.size_as_it_stands(dimension).unwrap_or(0.0),
    };
    let Some(back) = stands.back(room, least(Dimension::Width)) else { return true };
    let past = parts(piece, back, least).iter().filter_map(|part| farthest(part, room)).reduce(farther);
    let Some(past) = past.filter(|past| past.by > room.measured_within + TOUCHING) else { return true };
    let name = &piece.name;
    let message = format!("{name}, where its `place` puts it, reaches {} past {}.", report.words(past.by), past.wall);
    let remedy = match stands {
        StandsAt::Wall { .. } => {
            "Measure again from the left end of its wall, as you face it from inside, to the nearer end of the piece; and its \
             width and depth."
        }
        StandsAt::Place { .. } => {
            "`at` is the middle of its back, in plan coordinates from the left end of the first wall; `facing` runs \
             counter-clockwise from +x."
        }
    };
    report.add(at, "place_outside_room", name, message, remedy.to_owned());
    false
}

/// Convex outlines on the floor: the whole piece, or the main run of a corner sofa and its returns whole.
fn parts(piece: &Piece, BackOf { middle, facing }: BackOf, size: impl Fn(Dimension) -> f64) -> Vec<[Point; 4]> {
    let (width, depth) = (size(Dimension::Width), size(Dimension::Depth));
    let left = facing.left();
    let block = |from: f64, to: f64, out: f64| {
        let at = |along: f64, out: f64| middle + left * along + facing * out;
        [at(from, 0.0), at(to, 0.0), at(to, out), at(from, out)]
    };
    let half = width / 2.0;
    let mut parts = vec![block(-half, half, depth)];
    if piece.return_length.is_some() {
        let deep = if piece.return_depth.is_some() { size(Dimension::ReturnDepth) } else { depth };
        let is_left = piece.hands.first() == Some(&Hand::Left);
        let run = |is_left: bool, deep: f64, length: f64| {
            if is_left { block(half - deep, half, length) } else { block(-half, deep - half, length) }
        };
        parts.push(run(is_left, deep, size(Dimension::Return)));
        parts.extend(piece.second_return.map(|_| run(!is_left, depth, size(Dimension::SecondReturn))));
    }
    parts
}

fn farther<'a>(one: Past<'a>, other: Past<'a>) -> Past<'a> {
    if other.by > one.by { other } else { one }
}

/// How far a part reaches past the walls at most; `None` where it lies within them.
fn farthest<'a>(part: &[Point; 4], room: &'a Room) -> Option<Past<'a>> {
    let outline = room.outline();
    let outside = part.iter().filter(|corner| !ring::holds(&outline, **corner));
    let past = outside.filter_map(|corner| nearest(*corner, &room.walls));
    // A corner of the room that juts into the part.
    let juts = room.walls.iter().filter(|wall| ring::holds(part, wall.start));
    let depth = |wall: &'a Wall| {
        let distances = ring::legs(part).map(|(from, to)| ring::distance(wall.start, from, to));
        let by = distances.fold(f64::INFINITY, f64::min);
        Past { wall: &wall.name, by }
    };
    past.chain(juts.map(depth)).reduce(farther)
}

fn nearest<'a>(corner: Point, walls: &'a [Wall]) -> Option<Past<'a>> {
    let past = |wall: &'a Wall| Past { wall: &wall.name, by: ring::distance(corner, wall.start, wall.end) };
    walls.iter().map(past).reduce(|one, other| if other.by < one.by { other } else { one })
}
