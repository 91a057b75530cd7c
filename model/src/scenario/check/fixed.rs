//! Fixed things: convex, with an area, inside the room.

use super::limits::MOST_CORNERS;
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::Wall;
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

/// Whether any corner or the middle of the thing lies in the room.
pub(crate) fn in_the_room(corners: &[Point], walls: &[Wall]) -> bool {
    let outline: Vec<Point> = walls.iter().map(|wall| wall.start).collect();
    corners.iter().chain([&ring::middle(corners)]).any(|corner| ring::holds(&outline, *corner))
}
