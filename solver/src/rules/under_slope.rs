//! Where a ceiling falls toward a wall nothing stands that is higher than it is there.

use elbowroom_model::{Rule, Slope};

use super::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};
use crate::geometry::Convex;

/// Under a ceiling that falls.
#[derive(Debug)]
pub(super) struct UnderSlope;

impl LayoutRule for UnderSlope {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.is_flat() {
            return Vec::new();
        }
        let too_low = |slope: &Slope| {
            let wall = context.site.wall(slope.wall)?;
            let out = wall.inward * slope.lower_than(pose.piece.height_with_screen());
            let zone = Convex::counter_clockwise([wall.start, wall.end, wall.end + out, wall.start + out]);
            let cause = Cause { rule: Rule::Ceiling, piece: pose.id, with: With::Wall(slope.wall) };
            (zone.area() > 0.0).then_some((cause, zone))
        };
        let zones = context.brief.room.slopes.iter().filter_map(too_low);
        let each = zones.flat_map(|(cause, zone)| {
            let asked: Vec<Requirement> =
                pose.each_part(cause, |part| separation::out_of_polygon(part, &zone)).collect();
            asked
        });
        each.collect()
    }
}
