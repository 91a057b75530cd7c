//! A corner sofa in the corner of the room: what it is made for, wherever along its wall that is (common practice, no source).

use elbowroom_model::{Point, Term};

use super::asked::Way;
use super::free_stretch::Stretch;
use crate::rules::{CostSlot, Pose};
use crate::site::{Site, SiteWall};

/// Walls that meet at no less than 60 degrees make a corner: the sine of that (ours, no source).
const MAKES_CORNER: f64 = 0.866;

/// What begins nearer than this to a corner begins in it, mm: rounding.
const AT_CORNER: f64 = 0.01;

/// A corner of the room with free wall beside it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Corner {
    place: Point,
    /// How far the wall is free from there on, mm.
    free: f64,
}

impl Corner {
    /// The one at that end of its wall that the return of this sofa makes; `None` where it has no return or one at either end,
    /// where the room has no corner there, or where a doorway, a fire or a low window begins at once.
    pub(super) fn of(site: &Site, pose: &Pose, wall: &SiteWall, stretches: &[Stretch]) -> Option<Self> {
        if pose.returns().count() != 1 {
            return None;
        }
        let length = (wall.end - wall.start).norm();
        let is_at_start = pose.along().dot(wall.along) > 0.0;
        let place = if is_at_start { wall.start } else { wall.end };
        let from_corner = |stretch: &&Stretch| if is_at_start { stretch.low } else { length - stretch.high };
        let beside = stretches.iter().find(|stretch| from_corner(stretch) < AT_CORNER)?;
        let meets = |other: &&SiteWall| if is_at_start { other.end == place } else { other.start == place };
        let next = site.walls.iter().find(meets)?;
        (next.inward.dot(pose.along()) > MAKES_CORNER).then(|| Self { place, free: beside.length() })
    }

    /// What it costs to stand out of it, all of the sofa at what is free of the wall.
    pub(super) fn way(&self, pose: &Pose, term: Term) -> Way {
        let out = pose.anchor.along(pose.along()).shifted(-self.place.dot(pose.along()));
        let ends = out.clone().plus(&pose.width(), 1.0).at_most(self.free);
        let off = out.shifted(-pose.piece.off_wall);
        Way::free(vec![ends]).and(Way::pays(pose, CostSlot::Middle, term, &off))
    }
}
