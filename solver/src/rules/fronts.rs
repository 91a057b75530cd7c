//! What is kept free before storage and desks, and along the long sides of a dining table, whichever those are.

use elbowroom_model::{Front, Rule};

use super::linear_outline::LinearOutline;
use super::tolerance::NARROWER;
use super::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With, separation};
use crate::program::Row;

/// What is kept free before storage and desks and beside dining tables.
#[derive(Debug)]
pub(super) struct FreeFronts;

impl LayoutRule for FreeFronts {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some((rule, _)) = rule_of(context, pose) else { return Vec::new() };
        zones(context, pose).iter().flat_map(|zone| clear_of_room(context, pose, rule, zone)).collect()
    }

    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let mut found = one_way(context, first, second);
        found.extend(one_way(context, second, first));
        found
    }
}

fn one_way(context: &RuleContext<'_>, keeper: &Pose, other: &Pose) -> Vec<Requirement> {
    let Some((rule, _)) = rule_of(context, keeper) else { return Vec::new() };
    zones(context, keeper).iter().flat_map(|zone| clear_of_piece(keeper, rule, zone, other)).collect()
}

/// The zone of a piece lies inside the walls and off what stands for good; of what is dined at out of swings too.
pub(super) fn clear_of_room(context: &RuleContext<'_>, pose: &Pose, rule: Rule, zone: &Zone) -> Vec<Requirement> {
    let Zone { shape, unless } = zone;
    let mut asked = context.inside(shape, pose.id, rule, 0.0);
    asked.extend(context.off_bodies(shape, pose.id, rule, 0.0, |body| body.shape.area() > 0.0));
    // Nobody sits, or draws a chair back, over a step.
    asked.extend(context.off_steps(shape, pose.id, rule));
    if pose.piece.kind.is_dined_at() {
        asked.extend(context.site.swings.iter().map(|swing| Requirement {
            cause: Cause { rule, piece: pose.id, with: With::Item(swing.item) },
            alternatives: separation::out_of_swing(shape, swing),
        }));
        asked.extend(context.site.folds.iter().map(|fold| Requirement {
            cause: Cause { rule, piece: pose.id, with: With::Item(fold.item) },
            alternatives: separation::out_of_polygon(shape, &fold.zone),
        }));
    }
    asked.into_iter().map(|requirement| spared(requirement, unless)).collect()
}

/// The zone of a piece is free of another, which may be a rug. What one opens may open over floor that is kept open; chairs
/// stand on none.
pub(super) fn clear_of_piece(keeper: &Pose, rule: Rule, zone: &Zone, other: &Pose) -> Vec<Requirement> {
    let is_opened = matches!(keeper.piece.kind.traits().front, Front::Opened);
    if other.lies_under() || (other.piece.kind.stays_open() && is_opened) {
        return Vec::new();
    }
    let cause = Cause { rule, piece: keeper.id, with: With::Piece(other.id) };
    let apart = |part| Requirement { cause, alternatives: separation::apart(&zone.shape, part, 0.0) };
    other.parts.iter().map(|part| spared(apart(part), &zone.unless)).collect()
}

/// What is kept free, unless one of some rows holds.
pub(super) struct Zone {
    pub(super) shape: LinearOutline,
    pub(super) unless: Vec<Row>,
}

/// The requirement, met by each of `unless` too.
fn spared(mut requirement: Requirement, unless: &[Row]) -> Requirement {
    requirement.alternatives.extend(unless.iter().map(|row| Alternative::of_rows(vec![row.clone()])));
    requirement
}

fn rule_of(context: &RuleContext<'_>, pose: &Pose) -> Option<(Rule, f64)> {
    let rule = pose.piece.keeps_clear()?;
    let reach = context.brief.rules.get(rule);
    (reach > 0.0).then_some((rule.into(), reach))
}

/// Straight before its front over its width; along the sides of a dining table.
fn zones(context: &RuleContext<'_>, pose: &Pose) -> Vec<Zone> {
    let Some((_, reach)) = rule_of(context, pose) else { return Vec::new() };
    let (from, to) = pose.stretch();
    let depth = pose.depth();
    let front = pose.block([&from, &to], [&depth, &depth.clone().shifted(reach)]);
    if pose.piece.kind.is_dined_at() {
        return along_table(pose, front, reach);
    }
    vec![Zone { shape: front, unless: Vec::new() }]
}

/// Which sides of a dining table are long is a question of the one that is bought: any that is no larger. So its front and,
/// where it stands free, its back are kept free unless none is as wide as it is deep, and its ends unless none is
/// deeper than it is wide. What comes in steps is as wide as deep at least.
fn along_table(pose: &Pose, front: LinearOutline, reach: f64) -> Vec<Zone> {
    let (from, to) = pose.stretch();
    let (width, depth) = (pose.width(), pose.depth());
    let never_as_wide = width.at_most(pose.piece.depth.least - NARROWER);
    let mut zones = vec![Zone { shape: front, unless: vec![never_as_wide.clone()] }];
    if pose.wall().is_none() {
        let behind = pose.block([&from, &to], [&Linear::constant(-reach), &Linear::default()]);
        zones.push(Zone { shape: behind, unless: vec![never_as_wide] });
    }
    if pose.piece.steps.is_empty() {
        // Chairs at the ends of one that is just deeper than it is wide.
        let half = Linear::constant(reach).plus(&depth, 0.5);
        let ends = pose.block([&Linear::default().plus(&half, -1.0), &half], [&Linear::default(), &depth]);
        zones.push(Zone { shape: ends, unless: vec![depth.at_most(pose.piece.width.least)] });
    }
    zones
}
