//! Straight lines that touch two round corners of one radius, as a taut cord does.

use elbowroom_model::Point;

use super::tolerance::{NO_TURN, SINE, TOUCH};

/// Which way a cord goes round a corner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// Counter-clockwise: the corner lies to the left.
    Left,
    /// Clockwise: the corner lies to the right.
    Right,
}

impl Turn {
    /// Both ways.
    pub const BOTH: [Self; 2] = [Self::Left, Self::Right];

    /// Unit vector from the corner to the cord where the cord runs in the direction `along`.
    #[must_use]
    pub const fn contact(self, along: Point) -> Point {
        match self {
            Self::Left => along.right(),
            Self::Right => along.left(),
        }
    }

    /// Angle from one contact to a later one, going round this way, in 0..2 pi.
    #[must_use]
    pub fn angle(self, from: Point, to: Point) -> f64 {
        let angle = self.sign() * from.turn_to(to);
        if angle < -NO_TURN { angle + std::f64::consts::TAU } else { angle.max(0.0) }
    }

    const fn sign(self) -> f64 {
        match self {
            Self::Left => 1.0,
            Self::Right => -1.0,
        }
    }
}

/// A corner that a cord goes round.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// Where it is.
    pub at: Point,
    /// Which way the cord goes round it.
    pub turn: Turn,
}

/// Direction of the cord from one corner to another with `radius` round both; `None` where the corners are too near for one.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Bend, Turn, corner_to_corner};
/// let bend = |x: f64, turn: Turn| Bend { at: Point::new(x, 0.0), turn };
/// let outside = corner_to_corner(bend(0.0, Turn::Left), bend(2000.0, Turn::Left), 300.0);
/// assert_eq!(outside, Some(Point::new(1.0, 0.0)));
/// let between = corner_to_corner(bend(0.0, Turn::Left), bend(599.0, Turn::Right), 300.0);
/// assert_eq!(between, None);
/// ```
#[must_use]
pub fn corner_to_corner(from: Bend, to: Bend, radius: f64) -> Option<Point> {
    let across = if from.turn == to.turn { 0.0 } else { 2.0 * radius * from.turn.sign() };
    swung(to.at - from.at, across)
}

/// Direction of the cord from a place to a corner.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Bend, Turn, place_to_corner};
/// let corner = Bend { at: Point::new(1000.0, 300.0), turn: Turn::Left };
/// let along = place_to_corner(Point::new(0.0, 0.0), corner, 300.0);
/// assert!(along.is_some_and(|along| (along - Point::new(1.0, 0.0)).norm() < 1e-12));
/// ```
#[must_use]
pub fn place_to_corner(from: Point, to: Bend, radius: f64) -> Option<Point> {
    swung(to.at - from, -radius * to.turn.sign())
}

/// Direction of the cord from a corner to a place.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::{Bend, Turn, corner_to_place};
/// let corner = Bend { at: Point::new(0.0, 300.0), turn: Turn::Left };
/// let along = corner_to_place(corner, Point::new(1000.0, 0.0), 300.0);
/// assert!(along.is_some_and(|along| (along - Point::new(1.0, 0.0)).norm() < 1e-12));
/// ```
#[must_use]
pub fn corner_to_place(from: Bend, to: Point, radius: f64) -> Option<Point> {
    swung(to - from.at, radius * from.turn.sign())
}

/// `apart` turned to the left by the angle whose sine is `across` over its length.
fn swung(apart: Point, across: f64) -> Option<Point> {
    let length = apart.norm();
    let sine = across / length;
    if length <= TOUCH || sine.abs() > 1.0 + SINE {
        return None;
    }
    let sine = sine.clamp(-1.0, 1.0);
    let (unit, cosine) = (apart * (1.0 / length), (1.0 - sine * sine).sqrt());
    Some(unit * cosine + unit.left() * sine)
}

#[cfg(test)]
mod tests {
    use super::{Bend, Turn, corner_to_corner, corner_to_place, place_to_corner};
    use elbowroom_model::Point;

    #[test]
    fn a_cord_lies_one_radius_from_every_corner_that_it_meets() {
        let (from, to, radius) = (Point::new(100.0, 50.0), Point::new(1300.0, -420.0), 300.0);
        for first in Turn::BOTH {
            for last in Turn::BOTH {
                let along =
                    corner_to_corner(Bend { at: from, turn: first }, Bend { at: to, turn: last }, radius).unwrap();
                let leaves = from + first.contact(along) * radius;
                let meets = to + last.contact(along) * radius;
                assert!(along.cross(meets - leaves).abs() < 1e-9);
                assert!(along.dot(meets - leaves) > 0.0);
            }
            let along = place_to_corner(from, Bend { at: to, turn: first }, radius).unwrap();
            assert!(along.cross(to + first.contact(along) * radius - from).abs() < 1e-9);
            let along = corner_to_place(Bend { at: from, turn: first }, to, radius).unwrap();
            assert!(along.cross(to - from - first.contact(along) * radius).abs() < 1e-9);
        }
    }

    #[test]
    fn no_cord_crosses_between_corners_that_stand_nearer_than_two_radii() {
        let (from, to) = (Point::new(0.0, 0.0), Point::new(599.0, 0.0));
        let cord = |turn: Turn| corner_to_corner(Bend { at: from, turn: Turn::Left }, Bend { at: to, turn }, 300.0);
        assert!(cord(Turn::Right).is_none());
        assert!(cord(Turn::Left).is_some());
    }

    #[test]
    fn a_quarter_turn_is_a_quarter_only_one_way_round() {
        let (east, north) = (Point::new(1.0, 0.0), Point::new(0.0, 1.0));
        assert!((Turn::Left.angle(east, north).to_degrees() - 90.0).abs() < 1e-9);
        assert!((Turn::Right.angle(east, north).to_degrees() - 270.0).abs() < 1e-9);
    }
}
