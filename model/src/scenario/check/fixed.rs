//! Fixed things: convex, with an area, inside the room.

use super::limits::MOST_CORNERS;
use crate::point::Point;
use crate::report::Report;
use crate::room::Wall;
use crate::yaml::Trail;

/// Corners that turn by less than this over their edges are straight, mm2.
const STRAIGHT: f64 = 1e-6;

/// The corners counter-clockwise, where they bound a convex shape; `None` after a fault.
pub(crate) fn convex(name: &str, corners: Vec<Point>, (at, report): (&Trail, &mut Report<'_>)) -> Option<Vec<Point>> {
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
    let area = area(&corners);
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

fn area(corners: &[Point]) -> f64 {
    let Some(origin) = corners.first() else { return 0.0 };
    let next = corners.iter().cycle().skip(1);
    0.5 * corners.iter().zip(next).map(|(one, other)| (*one - *origin).cross(*other - *origin)).sum::<f64>()
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
    (sum - std::f64::consts::TAU).abs() < 1e-3
}

/// Whether any corner or the middle of the thing lies in the room.
pub(crate) fn in_the_room(corners: &[Point], walls: &[Wall]) -> bool {
    let middle =
        corners.iter().fold(Point::default(), |sum, corner| sum + *corner) * (1.0 / corners.len().max(1) as f64);
    corners.iter().chain([&middle]).any(|corner| inside(*corner, walls))
}

/// Crossings of the way to the right, counted half-open.
fn inside(point: Point, walls: &[Wall]) -> bool {
    let crosses = |wall: &&Wall| {
        let (a, b) = (wall.start - point, wall.end - point);
        (a.y > 0.0) != (b.y > 0.0) && a.x + (b.x - a.x) * (-a.y / (b.y - a.y)) > 0.0
    };
    walls.iter().filter(crosses).count() % 2 == 1
}
