//! The smallest circle about places.

use elbowroom_model::Point;

use super::tolerance::{ON_CIRCLE, ON_ONE_LINE};

/// A circle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circle {
    /// Its middle.
    pub centre: Point,
    /// mm.
    pub radius: f64,
}

impl Circle {
    /// The smallest about all `places`: of those over two of them or through three, since one of these is it. `None` where there
    /// are no places. Made for a handful.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Circle;
    /// let seats = [(0.0, 0.0), (2000.0, 0.0), (1000.0, 600.0)].map(|(x, y)| Point::new(x, y));
    /// let circle = Circle::about(&seats);
    /// assert!(circle.is_some_and(|circle| circle.centre == Point::new(1000.0, 0.0) && circle.radius == 1000.0));
    /// ```
    #[must_use]
    pub fn about(places: &[Point]) -> Option<Self> {
        let holds = |circle: &Self| places.iter().all(|at| (*at - circle.centre).norm() <= circle.radius + ON_CIRCLE);
        let mut circles = Vec::new();
        for (i, &a) in places.iter().enumerate() {
            for (j, &b) in places.iter().enumerate().skip(i + 1) {
                circles.push(Self { centre: (a + b) * 0.5, radius: (a - b).norm() / 2.0 });
                circles.extend(places.iter().skip(j + 1).filter_map(|&c| Self::through(a, b, c)));
            }
        }
        let single = places.first().map(|&only| Self { centre: only, radius: 0.0 });
        circles.into_iter().chain(single).filter(holds).min_by(|a, b| a.radius.total_cmp(&b.radius))
    }

    /// The one through three places; `None` where these lie on one line.
    fn through(a: Point, b: Point, c: Point) -> Option<Self> {
        let (u, v) = (b - a, c - a);
        let turn = 2.0 * u.cross(v);
        if turn.abs() < ON_ONE_LINE {
            return None;
        }
        let (uu, vv) = (u.dot(u), v.dot(v));
        let to_centre = Point::new(v.y * uu - u.y * vv, u.x * vv - v.x * uu) * (1.0 / turn);
        Some(Self { centre: a + to_centre, radius: to_centre.norm() })
    }
}
