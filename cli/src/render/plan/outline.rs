//! Walls with their thickness, left open where they hold a doorway or a window.

use elbowroom_model::{Brief, ItemKind, Point, WallId, WallItem};

/// How thick walls are drawn, mm. Nobody measured it; only their inner faces are to scale.
pub(super) const THICKNESS: f64 = 120.0;

/// The solid parts of every wall, each a ring in plan coordinates.
pub(super) fn solid(brief: &Brief) -> Vec<Vec<Point>> {
    brief.room.walls().flat_map(|(id, _)| solid_of(brief, id)).collect()
}

fn solid_of(brief: &Brief, id: WallId) -> Vec<Vec<Point>> {
    let Some(wall) = brief.room.wall(id) else { return Vec::new() };
    let length = wall.length();
    let mut gaps: Vec<(f64, f64)> = brief
        .room
        .items
        .iter()
        .filter(|item| item.wall == id && is_gap(&item.kind))
        .map(|item| (item.at.max(0.0), (item.at + item.width).min(length)))
        .collect();
    gaps.sort_by(|one, other| one.0.total_cmp(&other.0));
    let ends = [outer_corner(brief, id.0), outer_corner(brief, id.0 + 1)];
    let out = -wall.inward() * THICKNESS;
    let outer = |at: f64| match at {
        at if at <= 0.0 => ends[0],
        at if at >= length => ends[1],
        at => wall.point_at(at) + out,
    };
    let mut rings = Vec::new();
    let mut from = 0.0;
    for (start, end) in gaps.into_iter().chain([(length, length)]) {
        if start > from {
            rings.push(vec![wall.point_at(from), wall.point_at(start), outer(start), outer(from)]);
        }
        from = from.max(end);
    }
    rings
}

/// Where a wall stands open for an item, through its thickness, from its left end round; `None` of what stands at the wall.
pub(super) fn gap(brief: &Brief, item: &WallItem) -> Option<[Point; 4]> {
    let ((left, right), wall) = (brief.room.ends(item).filter(|_| is_gap(&item.kind))?, brief.room.wall(item.wall)?);
    let out = -wall.inward() * THICKNESS;
    Some([left, right, right + out, left + out])
}

/// Whether the wall stands open there.
fn is_gap(kind: &ItemKind) -> bool {
    matches!(kind, ItemKind::Window(_) | ItemKind::Door(_) | ItemKind::Opening(_))
}

/// The corner of the outer faces where the wall before corner `corner` meets the one after it.
fn outer_corner(brief: &Brief, corner: usize) -> Point {
    let walls = &brief.room.walls;
    let count = walls.len();
    let (Some(before), Some(after)) = (walls.get((corner + count - 1) % count), walls.get(corner % count)) else {
        return Point::default();
    };
    let (first, second) = (-before.inward(), -after.inward());
    let sum = first + second;
    let reach = sum.dot(first);
    // A fold back on itself has no such corner.
    if reach < 0.1 { after.start + first * THICKNESS } else { after.start + sum * (THICKNESS / reach) }
}
