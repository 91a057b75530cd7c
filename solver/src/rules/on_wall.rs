//! The back of a pose exactly so far off its wall.

use super::Pose;
use crate::program::Row;
use crate::site::SiteWall;

/// Its back exactly so far off the wall, mm.
pub(super) fn on_wall(wall: &SiteWall, pose: &Pose, off: f64) -> [Row; 2] {
    let back = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    [back.at_least(off), back.at_most(off)]
}
