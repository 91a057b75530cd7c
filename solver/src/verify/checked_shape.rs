//! The places that pieces keep out of, and how far one reaches into them.

use elbowroom_model::{Point, Rule};

use super::tolerance::SLACK;
use crate::answer::Thing;
use crate::geometry::{Convex, apart};

/// A place that pieces keep out of.
pub(super) struct Zone {
    /// Stable name of the rule.
    pub(super) rule: Rule,
    /// What it belongs to.
    pub(super) of: Thing,
    pub(super) shape: Shape,
    /// Rugs keep out of it too.
    pub(super) stops_rugs: bool,
    /// It stops what is taller than this, mm.
    pub(super) above: f64,
}

/// What a zone looks like.
pub(super) enum Shape {
    Polygon(Convex),
    /// What a leaf sweeps, or a part of it: at most a quarter disc.
    Sector {
        hinge: Point,
        /// Inward unit normals of its two straight sides.
        sides: [Point; 2],
        radius: f64,
    },
    /// All that lies before the plane of a front and within `reach` of it.
    Round {
        left: Point,
        right: Point,
        inward: Point,
        reach: f64,
    },
}

/// Below the lowest piece: the zone stops whatever its height.
pub(super) const ANY: f64 = -1.0;

impl Zone {
    /// What a leaf takes of the floor.
    pub(super) fn of_leaf(of: Thing, shape: Shape) -> Self {
        Self { rule: Rule::DoorSwing, of, shape, stops_rugs: false, above: ANY }
    }
}

impl Shape {
    /// How far `part` reaches into it, mm; `None` where it stays out. `part` comes with the slack taken off.
    pub(super) fn entered_by(&self, part: &Convex) -> Option<f64> {
        match self {
            Self::Polygon(zone) => {
                crate::geometry::meets(zone, part).then(|| crate::geometry::overlap_depth(zone, part) + SLACK)
            }
            Self::Sector { hinge, sides: [first, second], radius } => {
                let over = part.clipped(-*first, -hinge.dot(*first))?.clipped(-*second, -hinge.dot(*second))?;
                let distance = apart(&over, &Convex::counter_clockwise([*hinge]));
                let beyond = |axis: &Point| over.support(*axis) - hinge.dot(*axis);
                (distance < *radius).then(|| (radius - distance).min(beyond(first)).min(beyond(second)) + SLACK)
            }
            Self::Round { left, right, inward, reach } => {
                let over = part.clipped(-*inward, -left.dot(*inward))?;
                let distance = apart(&over, &Convex::counter_clockwise([*left, *right]));
                (distance < *reach).then(|| reach - distance + SLACK)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_leaf_sweeps_a_quarter_disc_and_no_square() {
        let sides = [Point::new(1.0, 0.0), Point::new(0.0, -1.0)];
        let quarter = Shape::Sector { hinge: Point::new(0.0, 0.0), sides, radius: 800.0 };
        let square = |near: f64| {
            let far = near + 100.0;
            let at = Point::new;
            Convex::counter_clockwise([at(near, -near), at(far, -near), at(far, -far), at(near, -far)])
        };
        // The near corner lies on the diagonal: it touches the arc at 800 / sqrt 2.
        let edge = 800.0 / 2_f64.sqrt();
        assert!(quarter.entered_by(&square(edge + 0.1)).is_none());
        assert!(quarter.entered_by(&square(edge - 0.1)).is_some());
    }

    #[test]
    fn a_fire_keeps_a_round_end_and_nothing_behind_its_front() {
        let front = Shape::Round {
            left: Point::new(0.0, 0.0),
            right: Point::new(1000.0, 0.0),
            inward: Point::new(0.0, -1.0),
            reach: 900.0,
        };
        let block = |x: f64, y: f64| {
            let at = Point::new;
            Convex::counter_clockwise([at(x, y), at(x + 100.0, y), at(x + 100.0, y - 100.0), at(x, y - 100.0)])
        };
        assert!(front.entered_by(&block(1001.0, 100.0)).is_none(), "beside the breast");
        assert!(front.entered_by(&block(1636.0, -637.0)).is_none(), "past the round end");
        assert!(front.entered_by(&block(1636.0, -636.0)).is_some(), "in the round end");
    }
}
