//! The least width of a convex polygon: how narrow a slot it passes when turned as it passes best.

use elbowroom_model::Point;

use super::Convex;

/// The least distance between two parallel lines that hold `shape` between them, by rotating callipers: one of the lines lies
/// along a side, and as it goes round the sides, the corner farthest from it goes round once (P: M. I. Shamos, Computational
/// Geometry, 1978; M: G. Toussaint 1983). 0 where the shape has no extent.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, least_width};
/// // The heights of a triangle with sides of 3, 4 and 5 are 4, 3 and 2.4.
/// let corners = [(0.0, 0.0), (4.0, 0.0), (0.0, 3.0)].map(|(x, y)| Point { x, y });
/// assert!((least_width(&Convex::counter_clockwise(corners)) - 2.4).abs() < 1e-12);
/// ```
#[must_use]
pub fn least_width(shape: &Convex) -> f64 {
    let corners: &[Point] = shape.corners();
    let count = corners.len();
    if count < 3 {
        return 0.0;
    }
    let mut least = f64::INFINITY;
    let mut far = 1;
    for place in 0..count {
        let (from, to) = (corners[place], corners[(place + 1) % count]);
        let (x, y) = (to.x - from.x, to.y - from.y);
        let long = x.hypot(y);
        if long <= 0.0 {
            continue;
        }
        let off = |corner: Point| (x * (corner.y - from.y) - y * (corner.x - from.x)).abs() / long;
        for _ in 0..count {
            if off(corners[(far + 1) % count]) <= off(corners[far]) {
                break;
            }
            far = (far + 1) % count;
        }
        least = least.min(off(corners[far]));
    }
    if least.is_finite() { least } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::least_width;
    use crate::geometry::Convex;

    /// By all angles in steps of half a degree: what lies between the two lines at each.
    fn by_angles(corners: &[Point]) -> f64 {
        let at = |angle: f64| {
            let along: Vec<f64> =
                corners.iter().map(|corner| corner.x * angle.cos() + corner.y * angle.sin()).collect();
            along.iter().copied().fold(f64::MIN, f64::max) - along.iter().copied().fold(f64::MAX, f64::min)
        };
        (0..360).map(|half| at(f64::from(half).to_radians() / 2.0)).fold(f64::INFINITY, f64::min)
    }

    #[test]
    fn it_is_the_least_over_all_angles() {
        for seats in 0..200_u32 {
            let draw =
                |times: u32, least: f64, most: f64| least + (most - least) * f64::from(seats * times % 101) / 101.0;
            let (deep, high) = (draw(37, 700.0, 1150.0), draw(53, 650.0, 1050.0));
            let (front, back) = (draw(71, 300.0, 640.0), draw(29, 40.0, 300.0));
            let corners =
                [(0.0, 0.0), (deep, 0.0), (deep, front), (back, high), (0.0, high)].map(|(x, y)| Point { x, y });
            let (exact, tried) = (least_width(&Convex::counter_clockwise(corners)), by_angles(&corners));
            // Between two angles of the scan the width grows by no more than the diameter times a quarter of a degree.
            let slack = deep.hypot(high) * 0.25_f64.to_radians();
            assert!(exact <= tried + 1e-9 && tried <= exact + slack, "{seats}: {exact} against {tried}");
        }
    }
}
