//! The least width of a convex polygon: how narrow a slot it passes when turned as it passes best.

use elbowroom_model::Point;

use super::Convex;

/// Corners nearer than this are one, mm.
const SAME_CORNER: f64 = 1e-9;

/// A polygon between two parallel lines that lie as near to each other as they can.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastWidth {
    /// From line to line.
    pub across: f64,
    /// How far the polygon reaches along them.
    pub along: f64,
}

/// The least distance between two parallel lines that hold `shape` between them, by rotating callipers: one of the lines lies
/// along a side, and as it goes round the sides, the corner farthest from it goes round once (M: M. I. Shamos, Computational
/// Geometry, 1978; G. Toussaint, 1983). `None` where the shape has no area.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Convex, least_width};
/// // The heights of a triangle with sides of 3, 4 and 5 are 4, 3 and 2.4.
/// let corners = [(0.0, 0.0), (4.0, 0.0), (0.0, 3.0)].map(|(x, y)| Point { x, y });
/// let least = least_width(&Convex::counter_clockwise(corners)).ok_or("no area")?;
/// assert!((least.across - 2.4).abs() < 1e-12 && (least.along - 5.0).abs() < 1e-12);
/// # Ok::<(), &str>(())
/// ```
#[must_use]
pub fn least_width(shape: &Convex) -> Option<LeastWidth> {
    // A corner told twice is no nearer than itself, which would look like the furthest.
    let mut corners: Vec<Point> = shape.corners().to_vec();
    corners.dedup_by(|next, corner| (*next - *corner).norm() < SAME_CORNER);
    let count = corners.len();
    let mut least: Option<LeastWidth> = None;
    let mut far = 1;
    for side in shape.edges().filter(|_| count > 2) {
        let Some(along) = side.vector().unit() else { continue };
        let off = |place: usize| (corners[place % count] - side.start).dot(along.left());
        // No more than once round: corners on one line with a side are as far off as it.
        for _ in 0..count {
            if off(far + 1) <= off(far) {
                break;
            }
            far += 1;
        }
        let across = off(far);
        if across > 0.0 && least.is_none_or(|least| across < least.across) {
            least = Some(LeastWidth { across, along: shape.support(along) + shape.support(-along) });
        }
    }
    least
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::least_width;
    use crate::geometry::Convex;

    /// What lies between two lines at each half degree, the least of all.
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
        for seat in 0..200_u32 {
            let draw =
                |times: u32, least: f64, most: f64| least + (most - least) * f64::from(seat * times % 101) / 101.0;
            let (deep, high) = (draw(37, 700.0, 1150.0), draw(53, 650.0, 1050.0));
            let (front, back) = (draw(71, 300.0, 640.0), draw(29, 40.0, 300.0));
            let corners =
                [(0.0, 0.0), (deep, 0.0), (deep, front), (back, high), (0.0, high)].map(|(x, y)| Point { x, y });
            let exact = least_width(&Convex::counter_clockwise(corners)).map_or(0.0, |least| least.across);
            let tried = by_angles(&corners);
            // Between two angles of the scan the width grows by no more than the diameter times a quarter of a degree.
            let slack = deep.hypot(high) * 0.25_f64.to_radians();
            assert!(exact <= tried + 1e-9 && tried <= exact + slack, "{seat}: {exact} against {tried}");
        }
    }

    #[test]
    fn what_has_no_area_has_none() {
        let line = [(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)].map(|(x, y)| Point { x, y });
        assert_eq!(least_width(&Convex::counter_clockwise(line)), None);
        assert_eq!(least_width(&Convex::counter_clockwise([])), None);
    }
}
