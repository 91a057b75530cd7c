//! Pieces that come in steps, and pieces of one row of the file: of one size, in one order.

use elbowroom_model::Rule;

use super::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};
use crate::program::Row;

/// A piece that comes in steps has one of them.
#[derive(Debug)]
pub(super) struct Steps;

/// Two pieces of one row of the file have one size. Where they stand in one way, the first is the left one as one faces them:
/// the other way round it is the same room.
#[derive(Debug)]
pub(super) struct Alike;

impl LayoutRule for Steps {
    fn alone(&self, _ground: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.piece.steps.is_empty() {
            return Vec::new();
        }
        let cause = Cause { rule: Rule::Size, piece: pose.id, with: With::Itself };
        let step = |step: &elbowroom_model::Step| {
            let rows = [(pose.width(), step.width), (pose.depth(), step.depth)];
            let rows = rows.iter().flat_map(|(size, figure)| [size.at_least(*figure), size.at_most(*figure)]);
            Alternative::of_rows(rows.collect())
        };
        // The largest first: what fits at its largest need not be tried smaller.
        vec![Requirement { cause, alternatives: pose.piece.steps.iter().rev().map(step).collect() }]
    }
}

impl LayoutRule for Alike {
    fn between(&self, _ground: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let (first, second) = if first.id < second.id { (first, second) } else { (second, first) };
        let mut rows = Vec::new();
        if first.piece.alike.is_some()
            && first.piece.alike == second.piece.alike
            && second.variables.width != first.variables.width
        {
            rows.extend(equal(&first.width(), &second.width()));
            rows.extend(equal(&first.depth(), &second.depth()));
        }
        if (first.role, first.stand) == (second.role, second.stand) && second.piece.is_twin_of(&first.piece) {
            let across = |pose: &Pose| Linear::variable(pose.variables.across);
            rows.push(across(first).plus(&across(second), -1.0).at_most(0.0));
        }
        if rows.is_empty() {
            return Vec::new();
        }
        let cause = Cause { rule: Rule::Size, piece: second.id, with: With::Piece(first.id) };
        vec![Requirement::always(cause, rows)]
    }
}

fn equal(one: &Linear, other: &Linear) -> [Row; 2] {
    let difference = one.clone().plus(other, -1.0);
    [difference.at_least(0.0), difference.at_most(0.0)]
}
