//! What the file holds in its place stands there.

use elbowroom_model::{Point, Rule, StandsAt};

use super::tolerance::SAME_WAY;
use super::{Alternative, Cause, LayoutRule, Pose, Requirement, RuleContext, With};
use crate::program::Row;

/// How far from its place a piece may stand that is held, mm: a tape is read no finer.
const WITHIN: f64 = 0.5;

/// What is held stands where it is.
#[derive(Debug)]
pub(super) struct Held;

impl LayoutRule for Held {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some(place) = pose.piece.stands.filter(|_| pose.piece.held) else { return Vec::new() };
        let cause = Cause { rule: Rule::Held, piece: pose.id, with: With::Itself };
        let alternatives = rows(context, pose, place).map(Alternative::of_rows).into_iter().collect();
        vec![Requirement { cause, alternatives }]
    }
}

/// What a piece that stands at its gap from its wall lacks to it, mm, where the wall lies as much further in as what was measured
/// may be off: it keeps its place by no more than that.
fn lacking(context: &RuleContext<'_>, pose: &Pose, place: StandsAt) -> f64 {
    let StandsAt::Wall { off, .. } = place else { return 0.0 };
    let within = context.brief.room.measured_within;
    let lacking = pose.piece.off_wall + within - off;
    if lacking <= within { lacking.max(0.0) } else { 0.0 }
}

/// Rows that keep a pose in its place; `None` where it stands another way.
fn rows(context: &RuleContext<'_>, pose: &Pose, place: StandsAt) -> Option<Vec<Row>> {
    let room = &context.brief.room;
    // From a wall's end the middle moves with the width: half a millimetre for each.
    let none = place.back(room, 0.0)?;
    let is_its_wall = match place {
        StandsAt::Wall { wall, .. } => pose.wall() == Some(wall),
        StandsAt::Place { .. } => true,
    };
    if none.facing.dot(pose.stand.facing) < SAME_WAY || !is_its_wall {
        return None;
    }
    let moves = place.back(room, 1.0)?.middle - none.middle;
    let off = |along: Point| {
        let at = pose.middle_of_back().along(along).plus(&pose.width(), -moves.dot(along));
        at.shifted(-none.middle.dot(along))
    };
    let [aside, ahead] = [pose.left(), pose.stand.facing].map(off);
    let ahead = ahead.shifted(-lacking(context, pose, place));
    Some([aside, ahead].iter().flat_map(|off| [off.at_most(WITHIN), off.at_least(-WITHIN)]).collect())
}
