//! Fixed things that nobody can come to: too little floor before the side where one is used, or one that stands before a
//! doorway. Told and not refused: a slip of the tape mostly, and people live with some of it.

use crate::article::{capital, the};
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::{Fixed, Room, WallItem};

/// What stands across a doorway is looked for so far inside it, mm: a hand's breadth.
const JUST_INSIDE: f64 = 100.0;

/// Tells what lacks floor where it is used, and what stands before a doorway.
pub(crate) fn tell(room: &Room, report: &mut Report<'_>) {
    let lacking: Vec<String> = room.used_floors().filter_map(|(id, floor)| {
        let thing = room.fixed.get(id.0)?;
        let clear = room.clear_before(&floor, id);
        (clear < floor.depth - room.measured_within.max(1.0)).then(|| {
            format!(
                "There is {} of floor before the side at which one uses {}, and {} is to stay clear there: check the corners; \
                 `used_at: [x, y]` is a place at the side where one stands.",
                report.words(clear),
                the(&thing.name),
                report.words(floor.depth)
            )
        })
    }).collect();
    let doorways = room.items.iter().filter(|item| item.kind.leads_to().is_some());
    let pairs = doorways.flat_map(|item| room.fixed.iter().map(move |thing| (item, thing)));
    let across: Vec<String> = pairs.filter_map(|(item, thing)| stands_before(room, item, thing, report)).collect();
    lacking.into_iter().chain(across).for_each(|told| report.notice(told));
}

/// What to tell of a thing that stands before more of a doorway than a tape may be off.
fn stands_before(room: &Room, item: &WallItem, thing: &Fixed, report: &Report<'_>) -> Option<String> {
    let wall = room.wall(item.wall)?;
    let (start, along, inward) = (wall.start, wall.along(), wall.inward());
    let on_wall = |at: Point| ((at - start).dot(along), (at - start).dot(inward));
    let corners: Vec<(f64, f64)> = thing.corners.iter().map(|corner| on_wall(*corner)).collect();
    let (low, high) = stretch_at(&corners, JUST_INSIDE)?;
    let covered = high.min(item.at + item.width) - low.max(item.at);
    (thing.step().is_none() && covered > room.measured_within.max(JUST_INSIDE / 2.0)).then(|| {
        format!(
            "{} stands before {} of the {} of {}: check its corners, and `at` of {}.",
            capital(&the(&thing.name)),
            report.words(covered),
            report.words(item.width),
            the(&item.name),
            the(&item.name)
        )
    })
}

/// From where to where a convex ring of places (along, out) reaches so far out.
fn stretch_at(corners: &[(f64, f64)], out: f64) -> Option<(f64, f64)> {
    let points: Vec<Point> = corners.iter().map(|(along, out)| Point::new(*along, *out)).collect();
    let crossings = ring::legs(&points).filter(|(from, to)| (from.y - out) * (to.y - out) <= 0.0 && from.y != to.y);
    let places = crossings.map(|(from, to)| from.x + (to.x - from.x) * (out - from.y) / (to.y - from.y));
    let (low, high) = places.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
    (low <= high).then_some((low, high))
}
