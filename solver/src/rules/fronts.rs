//! What is kept free before storage and desks, and along the long sides of a dining table.

use elbowroom_model::Rule;

use super::linear_outline::LinearOutline;
use super::{Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With, separation};

/// What is kept free before storage and desks and beside dining tables.
#[derive(Debug)]
pub(super) struct FreeFronts;

impl LayoutRule for FreeFronts {
    fn alone(&self, ground: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let Some((rule, _)) = rule_of(ground, pose) else { return Vec::new() };
        let mut found = Vec::new();
        for zone in zones(ground, pose) {
            found.extend(ground.inside(&zone, pose.id, rule, 0.0));
            found.extend(ground.off_bodies(&zone, pose.id, rule, 0.0, |body| body.shape.area() > 0.0));
            if pose.piece.kind.is_dined_at() {
                found.extend(ground.site.swings.iter().map(|swing| Requirement {
                    cause: Cause { rule, piece: pose.id, with: With::Item(swing.item) },
                    alternatives: separation::out_of_swing(&zone, swing),
                }));
            }
        }
        found
    }

    fn between(&self, ground: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let mut found = one_way(ground, first, second);
        found.extend(one_way(ground, second, first));
        found
    }
}

fn one_way(ground: &RuleContext<'_>, keeper: &Pose, other: &Pose) -> Vec<Requirement> {
    let Some((rule, _)) = rule_of(ground, keeper) else { return Vec::new() };
    if other.is_flat() {
        return Vec::new();
    }
    let cause = Cause { rule, piece: keeper.id, with: With::Piece(other.id) };
    let mut found = Vec::new();
    for zone in zones(ground, keeper) {
        let parts = other.parts.iter();
        found.extend(parts.map(|part| Requirement { cause, alternatives: separation::apart(&zone, part, 0.0) }));
    }
    found
}

fn rule_of(ground: &RuleContext<'_>, pose: &Pose) -> Option<(Rule, f64)> {
    let rule = pose.piece.keeps_clear()?;
    let reach = ground.brief.rules.get(rule);
    (reach > 0.0).then_some((rule.into(), reach))
}

/// Straight before its front over its width; of a dining table that stands free also behind its back.
fn zones(ground: &RuleContext<'_>, pose: &Pose) -> Vec<LinearOutline> {
    let Some((_, reach)) = rule_of(ground, pose) else { return Vec::new() };
    let (from, to) = pose.stretch();
    let depth = pose.depth();
    let mut zones = vec![pose.block([&from, &to], [&depth, &depth.clone().shifted(reach)])];
    if pose.piece.kind.is_dined_at() && pose.wall().is_none() {
        zones.push(pose.block([&from, &to], [&Linear::constant(-reach), &Linear::default()]));
    }
    zones
}
