//! Two pieces on one level: on one side of each step in the floor, or past the same end of it.

use elbowroom_model::Point;

use super::context::with_body;
use super::{Alternative, LinearOutline, Pose, RuleContext, With, separation};
use crate::site::Body;

/// For each step the ways in which two pieces can be on one side of it.
pub(crate) fn on_one_side<'c>(
    context: &'c RuleContext<'_>,
    first: &'c Pose,
    second: &'c Pose,
) -> impl Iterator<Item = (With, Vec<Alternative>)> + 'c {
    context.site.steps.iter().filter_map(|step| Some((with_body(step.id), of_step(step, [first, second])?)))
}

fn of_step(step: &Body, poses: [&Pose; 2]) -> Option<Vec<Alternative>> {
    let along = step.shape.edges().max_by(|one, other| one.length().total_cmp(&other.length()))?.vector().unit()?;
    let outline = LinearOutline::fixed(&step.shape);
    let beyond = |towards: Point| {
        let each = poses.into_iter().flat_map(|pose| &pose.parts);
        let rows = each.flat_map(|part| separation::beyond(&outline, part, towards, 0.0).rows);
        Alternative::of_rows(rows.collect())
    };
    Some([along.left(), along.right(), along, -along].map(beyond).into())
}
