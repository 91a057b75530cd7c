//! Whether an outline is simple: no two walls cross or touch but neighbours at their corner.

use crate::point::Point;
use crate::room::Wall;
use crate::survey::tolerance::TOUCHING;

/// Every two walls that cross or touch, by their places; the walls form a closed ring.
#[must_use]
pub fn crossings(walls: &[Wall]) -> Vec<(usize, usize)> {
    let count = walls.len();
    let mut found = Vec::new();
    for (first, one) in walls.iter().enumerate() {
        for (second, other) in walls.iter().enumerate().skip(first + 1) {
            let cross = if second == first + 1 {
                folds_back(one, other)
            } else if first == 0 && second == count - 1 {
                folds_back(other, one)
            } else {
                meet(one, other)
            };
            if cross {
                found.push((first, second));
            }
        }
    }
    found
}

/// Whether a wall lies on the one before it.
fn folds_back(before: &Wall, after: &Wall) -> bool {
    let turned = before.along().cross(after.along()).abs();
    before.along().dot(after.along()) < 0.0 && turned * before.length().min(after.length()) <= TOUCHING
}

/// Whether two stretches cross or touch.
fn meet(one: &Wall, other: &Wall) -> bool {
    let (a, b) = (side(one, other.start), side(one, other.end));
    let (c, d) = (side(other, one.start), side(other, one.end));
    let crosses = a * b < 0.0 && c * d < 0.0;
    let touches = |wall: &Wall, point: Point, side: f64| {
        let along = wall.along().dot(point - wall.start);
        side == 0.0 && (-TOUCHING..=wall.length() + TOUCHING).contains(&along)
    };
    crosses
        || touches(one, other.start, a)
        || touches(one, other.end, b)
        || touches(other, one.start, c)
        || touches(other, one.end, d)
}

/// The side of the wall that the point lies on: 1 to the left, -1 to the right, 0 on its line.
fn side(wall: &Wall, point: Point) -> f64 {
    let side = wall.along().cross(point - wall.start);
    if side.abs() <= TOUCHING { 0.0 } else { side.signum() }
}
