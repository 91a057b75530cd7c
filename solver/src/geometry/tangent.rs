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

/// Direction of the cord from a corner at `from` to one at `to`, with its turns there and `radius` round both; `None`
/// where the corners are too near for one.
#[must_use]
pub fn corner_to_corner(from: (Point, Turn), to: (Point, Turn), radius: f64) -> Option<Point> {
    let across = if from.1 == to.1 { 0.0 } else { 2.0 * radius * from.1.sign() };
    swung(to.0 - from.0, across)
}

/// Direction of the cord from a place to a corner that it meets with `turn`.
#[must_use]
pub fn place_to_corner(from: Point, to: (Point, Turn), radius: f64) -> Option<Point> {
    swung(to.0 - from, -radius * to.1.sign())
}

/// Direction of the cord from a corner, left with `turn`, to a place.
#[must_use]
pub fn corner_to_place(from: (Point, Turn), to: Point, radius: f64) -> Option<Point> {
    swung(to - from.0, radius * from.1.sign())
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
    use super::{Turn, corner_to_corner, corner_to_place, place_to_corner};
    use elbowroom_model::Point;

    #[test]
    fn a_cord_lies_one_radius_from_every_corner_that_it_meets() {
        let (from, to, radius) = (Point::new(100.0, 50.0), Point::new(1300.0, -420.0), 300.0);
        for first in Turn::BOTH {
            for last in Turn::BOTH {
                let along = corner_to_corner((from, first), (to, last), radius).unwrap();
                let leaves = from + first.contact(along) * radius;
                let meets = to + last.contact(along) * radius;
                assert!(along.cross(meets - leaves).abs() < 1e-9);
                assert!(along.dot(meets - leaves) > 0.0);
            }
            let along = place_to_corner(from, (to, first), radius).unwrap();
            assert!(along.cross(to + first.contact(along) * radius - from).abs() < 1e-9);
            let along = corner_to_place((from, first), to, radius).unwrap();
            assert!(along.cross(to - from - first.contact(along) * radius).abs() < 1e-9);
        }
    }

    #[test]
    fn no_cord_crosses_between_corners_that_stand_nearer_than_two_radii() {
        let (from, to) = (Point::new(0.0, 0.0), Point::new(599.0, 0.0));
        assert!(corner_to_corner((from, Turn::Left), (to, Turn::Right), 300.0).is_none());
        assert!(corner_to_corner((from, Turn::Left), (to, Turn::Left), 300.0).is_some());
    }

    #[test]
    fn a_quarter_turn_is_a_quarter_only_one_way_round() {
        let (east, north) = (Point::new(1.0, 0.0), Point::new(0.0, 1.0));
        assert!((Turn::Left.angle(east, north).to_degrees() - 90.0).abs() < 1e-9);
        assert!((Turn::Right.angle(east, north).to_degrees() - 270.0).abs() < 1e-9);
    }
}
