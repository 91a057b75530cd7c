//! A free circle to turn a wheelchair in; coffee tables can be moved and do not count.

use elbowroom_model::{Clearance, Point, Rule};

use super::linear_outline::LinearOutline;
use super::{Cause, LayoutRule, Linear, LinearPoint, Pose, Requirement, RuleContext, With, separation};

const RULE: Rule = Rule::Clearance(Clearance::TurningCircle);

/// A free circle to turn in.
#[derive(Debug)]
pub(super) struct TurningCircle;

impl LayoutRule for TurningCircle {
    fn room(&self, context: &RuleContext<'_>) -> Vec<Requirement> {
        let Some((centre, radius)) = circle(context) else { return Vec::new() };
        let piece = context.main_seat;
        let mut found = context.inside(&centre, piece, RULE, radius);
        found.extend(context.off_bodies(&centre, piece, RULE, radius, |_| true));
        found
    }

    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some((centre, radius)) = circle(context) else { return Vec::new() };
        if !pose.piece.stops_walkers() || pose.piece.kind.traits().moves_aside {
            return Vec::new();
        }
        let cause = Cause { rule: RULE, piece: pose.id, with: With::Itself };
        let parts = pose.parts.iter();
        parts.map(|part| Requirement { cause, alternatives: separation::apart(&centre, part, radius) }).collect()
    }
}

/// The centre as a point of the program, and the radius.
fn circle(context: &RuleContext<'_>) -> Option<(LinearOutline, f64)> {
    let diameter = context.brief.rules.turning_circle()?;
    let (x, y) = context.variables.circle?;
    let centre = LinearPoint::fixed(context.variables.origin)
        .moved(Point::new(1.0, 0.0), &Linear::variable(x))
        .moved(Point::new(0.0, 1.0), &Linear::variable(y));
    Some((LinearOutline { corners: vec![centre], normals: Vec::new() }, diameter / 2.0))
}
