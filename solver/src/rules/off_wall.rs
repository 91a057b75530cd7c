//! A piece at a wall keeps its gap behind its back, and a foot more at most, and has the wall behind it. The back of a
//! corner sofa is that of its main run: a return may stand close to a side wall. What hangs hangs on its wall, or on the front
//! of a chimney breast.

use elbowroom_model::Rule;

use super::on_wall::on_wall;
use super::{Alternative, Cause, LayoutRule, Pose, Requirement, RuleContext, With, hung};
use crate::program::Row;
use crate::site::SiteWall;

/// How much further than its gap a piece at a wall may stand, mm: up to a foot where one wants to walk or clean behind
/// (common practice, no source).
pub const FOOT: f64 = 304.8;

/// How much of its width a piece at a wall may have past the ends of the wall, mm: so little looks like none (common
/// practice, no source).
pub const PAST_ENDS: f64 = 50.0;

/// A piece at a wall keeps its gap behind its back and stands before the wall.
#[derive(Debug)]
pub(super) struct OffWall;

impl LayoutRule for OffWall {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(wall) = pose.wall().and_then(|id| context.site.wall(id)) else { return Vec::new() };
        let cause = Cause { rule: Rule::OffWall, piece: pose.id, with: With::Wall(wall.id) };
        if pose.piece.kind.hangs() {
            let mut alternatives = vec![Alternative::of_rows(Vec::from(on_wall(wall, pose, 0.0)))];
            alternatives.extend(hung::on_breasts(context, wall, pose));
            let before = Requirement::always(cause, before_wall(context, wall, pose));
            let mut found = vec![Requirement { cause, alternatives }, before];
            found.extend(hung::off_openings(context, wall, pose));
            return found;
        }
        let mut rows = Vec::from(behind_back(wall, pose));
        rows.extend(before_wall(context, wall, pose));
        vec![Requirement::always(cause, rows)]
    }
}

/// How much further than its gap a pose may be off its wall, mm: a foot, or what hangs as far as a breast stands out.
pub(crate) fn furthest_off(context: &RuleContext<'_>, pose: &Pose, wall: &SiteWall) -> f64 {
    if pose.piece.kind.hangs() { hung::deepest_breast(context, wall) } else { FOOT }
}

fn behind_back(wall: &SiteWall, pose: &Pose) -> [Row; 2] {
    let off = pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward));
    let gap = pose.piece.off_wall;
    [off.at_least(gap), off.at_most(gap + FOOT)]
}

/// All but [`PAST_ENDS`] of its width as laid out is before the wall: it passes neither end by more, nor both together.
/// Nothing is asked of its least, so that whoever bought a larger one than that may say so.
fn before_wall(context: &RuleContext<'_>, wall: &SiteWall, pose: &Pose) -> Vec<Row> {
    let Some((from, to)) = context.site.ends_along(context.brief, wall.id) else { return Vec::new() };
    let middle = pose.middle_of_back().along(wall.along);
    vec![
        middle.clone().plus(&pose.width(), -0.5).at_least(from - PAST_ENDS),
        middle.plus(&pose.width(), 0.5).at_most(to + PAST_ENDS),
        pose.width().at_most(to - from + PAST_ENDS),
    ]
}
