//! Corners by a length along a wall and a length square out from it.

use elbowroom_model::{ItemKind, Point, Room, WallId};

use super::measures::Measures;
use super::points::Points;
use super::sight::Sight;
use super::tolerance::{ALONG_AT, PAST_END, SQUARE_WITHIN};

/// The furthest out from a wall that a corner is set out square, mm: beyond it the angle alone costs centimetres.
const FURTHEST_OUT: f64 = 3000.0;
/// A wall to measure along, and the corner where the tape starts.
#[derive(Debug, Clone, Copy)]
pub(super) struct Baseline {
    wall: WallId,
    from: usize,
}

/// The wall and the end of it from which all of `ring` can be set out: the wall that the piece stands at before others,
/// then the one with the shortest lengths. None where that wall's corner is out of square, or something is in the way.
pub(super) fn baseline(
    room: &Room,
    sight: &Sight<'_>,
    points: &Points,
    at_wall: Option<WallId>,
    ring: &[Point],
) -> Option<Baseline> {
    let mut best: Option<((bool, f64), Baseline)> = None;
    for (wall, _) in room.walls() {
        for from in points.ends_of_run(wall) {
            let baseline = Baseline { wall, from };
            if !ring.iter().all(|place| can_reach(room, sight, points, baseline, *place)) || !is_square(room, from) {
                continue;
            }
            let each = ring.iter().filter_map(|place| lengths(room, points, baseline, *place));
            let cost = each.map(|(along, out)| out + 0.5 * along.abs()).fold(0.0, f64::max);
            let cost = (at_wall != Some(wall), cost);
            if best.is_none_or(|(least, _)| (cost.0, cost.1) < (least.0, least.1)) {
                best = Some((cost, baseline));
            }
        }
    }
    best.map(|(_, baseline)| baseline)
}

/// The measures of one place from a baseline.
pub(super) fn measures(room: &Room, points: &mut Points, baseline: Baseline, place: Point) -> Measures {
    let (along, out) = lengths(room, points, baseline, place).unwrap_or_default();
    Measures::Offsets { from: points.told(baseline.from), wall: baseline.wall, along, out }
}

/// Along the wall from where the tape starts, and out from it.
fn lengths(room: &Room, points: &Points, baseline: Baseline, place: Point) -> Option<(f64, f64)> {
    let (wall, start) = (room.wall(baseline.wall)?, points.at(baseline.from)?);
    let way = place - start;
    Some((way.dot(wall.along()).abs(), way.dot(wall.inward())))
}

fn can_reach(room: &Room, sight: &Sight<'_>, points: &Points, baseline: Baseline, place: Point) -> bool {
    let (Some(wall), Some(start)) = (room.wall(baseline.wall), points.at(baseline.from)) else { return false };
    let (at, out) = ((place - wall.start).dot(wall.along()), (place - wall.start).dot(wall.inward()));
    let on_wall = (-PAST_END..=wall.length() + PAST_END).contains(&at) && !is_doorway(room, baseline.wall, at);
    if !on_wall || !(-PAST_END..=FURTHEST_OUT).contains(&out) {
        return false;
    }
    let (foot, off) = (wall.point_at(at), wall.inward() * ALONG_AT);
    sight.is_clear(start + off, foot + off) && sight.is_clear(foot + off, place)
}

/// Whether a place along a wall is a doorway: there is no wall to measure out from.
fn is_doorway(room: &Room, wall: WallId, at: f64) -> bool {
    room.items.iter().any(|item| {
        let doorway = matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_));
        item.wall == wall && doorway && (item.at + ALONG_AT..item.at + item.width - ALONG_AT).contains(&at)
    })
}

/// Whether the walls at a corner stand square to each other, inside or outside.
fn is_square(room: &Room, corner: usize) -> bool {
    let count = room.walls.len();
    let (Some(before), Some(after)) = (room.walls.get((corner + count - 1) % count), room.walls.get(corner)) else {
        return false;
    };
    before.along().dot(after.along()).abs() <= SQUARE_WITHIN.to_radians().sin()
}
