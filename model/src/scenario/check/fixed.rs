//! Fixed things: convex, with an area, inside the room.

use super::limits::MOST_CORNERS;
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::{Fixed, Wall};
use crate::scenario::tolerance::{ONE_TURN, STRAIGHT};
use crate::yaml::Trail;

/// The corners counter-clockwise, where they bound a convex shape; `None` after a fault.
pub(crate) fn convex(name: &str, corners: Vec<Point>, at: &Trail, report: &mut Report<'_>) -> Option<Vec<Point>> {
    let at = at.key("corners");
    let count = corners.len();
    if !(3..=MOST_CORNERS).contains(&count) {
        let message = format!("{name} has {count} corners; it needs 3 to {MOST_CORNERS}.");
        report.add(
            &at,
            "wrong_count",
            name,
            message,
            "Give its corners in turn, without the first again at the end.".to_owned(),
        );
        return None;
    }
    let area = ring::signed_area(&corners);
    if area.abs() <= 1.0 {
        let message = format!("{name} encloses no area.");
        report.add(
            &at,
            "fixed_without_area",
            name,
            message,
            "Give its corners in turn, going round it once.".to_owned(),
        );
        return None;
    }
    let mut corners = corners;
    if area < 0.0 {
        corners.reverse();
    }
    if goes_round_once(&corners) {
        return Some(corners);
    }
    let message = format!("{name} is not convex: going round it, the way turns both left and right.");
    let remedy = format!("Give {name} as several convex parts, each a fixed thing of its own.");
    report.add(&at, "fixed_not_convex", name, message, remedy);
    None
}

/// Every turn to the left, and all of them together one full turn.
fn goes_round_once(corners: &[Point]) -> bool {
    let count = corners.len();
    let edge = |i: usize| corners[(i + 1) % count] - corners[i % count];
    let turns = (0..count).map(|i| (edge(i).cross(edge(i + 1)), edge(i).dot(edge(i + 1))));
    let mut sum = 0.0;
    for (cross, dot) in turns {
        if cross < -STRAIGHT || (cross.abs() <= STRAIGHT && dot <= 0.0) {
            return false;
        }
        sum += cross.atan2(dot);
    }
    (sum - std::f64::consts::TAU).abs() < ONE_TURN
}

/// Whether any of the thing lies in the room: a corner of it, its middle, or where its edge crosses a wall.
pub(crate) fn in_the_room(corners: &[Point], walls: &[Wall]) -> bool {
    let outline: Vec<Point> = walls.iter().map(|wall| wall.start).collect();
    let is_in = |place: &Point| ring::holds(&outline, *place);
    let crosses = |from: Point, to: Point| walls.iter().any(|wall| cross([from, to], [wall.start, wall.end]));
    corners.iter().chain([&ring::middle(corners)]).any(is_in) || ring::legs(corners).any(|(from, to)| crosses(from, to))
}

/// Whether two stretches cross, and do not only touch.
fn cross([from, to]: [Point; 2], [start, end]: [Point; 2]) -> bool {
    let side = |from: Point, to: Point, place: Point| (to - from).cross(place - from);
    side(from, to, start) * side(from, to, end) < 0.0 && side(start, end, from) * side(start, end, to) < 0.0
}

/// Of a thing that lies wholly outside: where it lies, where the room does, and where plan coordinates are taken from. Told and not
/// refused: files of the format have such things, which take nothing from the room.
pub(crate) fn outside(thing: &Fixed, walls: &[Wall], report: &Report<'_>) -> String {
    let outline: Vec<Point> = walls.iter().map(|wall| wall.start).collect();
    let (lies, room) = (spread(&thing.corners, report), spread(&outline, report));
    let flipped: Vec<Point> = thing.corners.iter().map(|corner| Point::new(corner.x, -corner.y)).collect();
    let remedy = if in_the_room(&flipped, walls) {
        "Give its y with the other sign: y falls below 0 from the first wall into the room."
    } else {
        "Plan coordinates run from the left end of the first wall, x along it and y falling below 0 into the room; where walls have \
         a `start`, they are those."
    };
    format!(
        "{} lies outside the room and takes nothing from it: it lies at {lies}, the room at {room}. {remedy}",
        thing.name
    )
}

/// From where to where a ring spreads: `x 0 to 60 and y -600 to -340 cm`.
fn spread(ring: &[Point], report: &Report<'_>) -> String {
    let range = |of: fn(&Point) -> f64| {
        let (least, most) = ring
            .iter()
            .map(of)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), at| (least.min(at), most.max(at)));
        format!("{} to {}", report.words(least), report.words(most))
    };
    format!("x {} and y {}", range(|at| at.x), range(|at| at.y))
}
