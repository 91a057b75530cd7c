//! When two directions count as the same, and which walls run which way.

use elbowroom_model::{Point, WallId};

use super::tolerance::{AT_LIMIT, COSINE_ALIKE, COSINE_FACING, ROUNDING};
use crate::site::{Site, SiteWall};

/// Whether what looks along `first` and what looks along `second` face each other.
pub(crate) fn face(first: Point, second: Point) -> bool {
    -first.dot(second) >= COSINE_FACING - AT_LIMIT
}

/// Whether two directions are one to the eye.
pub(crate) fn alike(first: Point, second: Point) -> bool {
    first.dot(second) >= COSINE_ALIKE - AT_LIMIT
}

/// Walls at which a piece stands that is to look along `facing`, clockwise in the room's order.
pub(super) fn walls_looking(site: &Site, facing: Point) -> impl Iterator<Item = &SiteWall> {
    site.walls.iter().filter(move |wall| face(wall.inward, -facing))
}

/// All walls, clockwise from the one behind the main seat: its own, or the furthest back of those it turns its back on.
pub(super) fn clockwise_from(site: &Site, back: Option<WallId>, facing: Point) -> Vec<&SiteWall> {
    let behind = |wall: &SiteWall| (wall.inward.dot(facing), -(wall.start + wall.end).dot(facing));
    let start = back.map(|wall| wall.0).or_else(|| {
        let furthest = |best: usize, next: usize| match (site.walls.get(best), site.walls.get(next)) {
            (Some(one), Some(other)) if further(behind(other), behind(one)) => next,
            _ => best,
        };
        (0..site.walls.len()).reduce(furthest)
    });
    let (before, from) = site.walls.split_at(start.unwrap_or(0).min(site.walls.len()));
    from.iter().chain(before).collect()
}

/// The one turns its face more along the seat's, or as much and stands further back.
fn further(one: (f64, f64), other: (f64, f64)) -> bool {
    one.0 > other.0 + AT_LIMIT || (one.0 > other.0 - AT_LIMIT && one.1 > other.1 + ROUNDING)
}
