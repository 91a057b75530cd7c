//! Parts of different pieces do not overlap; a rug may lie under anything, what is low under what hangs.

use elbowroom_model::Rule;

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::hung;
use super::tolerance::SLACK;
use crate::geometry::{meets, overlap_depth};

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let mut found = Vec::new();
    for (i, first) in scene.pieces.iter().enumerate() {
        for second in &scene.pieces[i + 1..] {
            if hung::one_over_other(first, second) {
                continue;
            }
            let depth = depth(first, second);
            if depth > 0.0 && !first.is_rug() && !second.is_rug() {
                found.push(Breach::new(Rule::Overlap, Wrong::Overlap, &[first.thing(), second.thing()], depth));
            }
        }
    }
    found
}

fn depth(first: &InPlace<'_>, second: &InPlace<'_>) -> f64 {
    let mut worst = 0.0_f64;
    for part in &first.tight {
        for other in second.parts.iter().filter(|other| meets(part, other)) {
            worst = worst.max(overlap_depth(part, other) + SLACK);
        }
    }
    worst
}
