//! Pieces that come in steps, and pairs of one size.

use super::{Alternative, Cause, Ground, LayoutRule, Linear, Pose, Requirement, RuleName, With};

/// A piece that comes in steps has one of them.
#[derive(Debug)]
pub(super) struct Steps;

/// Two pieces of one row of the file have one size.
#[derive(Debug)]
pub(super) struct Alike;

impl LayoutRule for Steps {
    fn alone(&self, _ground: &Ground<'_>, pose: &Pose) -> Vec<Requirement> {
        if pose.piece.steps.is_empty() {
            return Vec::new();
        }
        let cause = Cause { rule: RuleName::Size, piece: pose.id, with: With::Itself };
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
    fn between(&self, _ground: &Ground<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let (first, second) = if first.id < second.id { (first, second) } else { (second, first) };
        if second.piece.alike != Some(first.id) || second.variables.width == first.variables.width {
            return Vec::new();
        }
        let cause = Cause { rule: RuleName::Size, piece: second.id, with: With::Piece(first.id) };
        let equal = |a: Linear, b: Linear| [a.clone().plus(&b, -1.0).at_least(0.0), a.plus(&b, -1.0).at_most(0.0)];
        let mut rows = Vec::from(equal(first.width(), second.width()));
        rows.extend(equal(first.depth(), second.depth()));
        vec![Requirement::always(cause, rows)]
    }
}
