//! What each term costs a plan that was found.

use super::asked::Asked;
use super::plan_term::TermContext;
use super::term_cost::{TermCost, dearest_first};
use super::terms::TERMS;
use crate::rules::Pose;

/// What costs less than this is not told.
const WORTH_TELLING: f64 = 1.0;

/// All terms that cost a plan something, what costs most first.
pub(crate) fn told(context: &TermContext<'_>, poses: &[&Pose], values: &[f64]) -> Vec<TermCost> {
    let mut asked: Vec<Asked> = Vec::new();
    for (order, pose) in poses.iter().enumerate() {
        asked.extend(TERMS.iter().flat_map(|term| term.alone(context, pose)));
        for other in &poses[..order] {
            asked.extend(TERMS.iter().flat_map(|term| term.between(context, other, pose)));
        }
    }
    let mut found: Vec<TermCost> = asked.iter().filter_map(|asked| asked.told(values)).collect();
    found.retain(|told| told.cost > WORTH_TELLING);
    dearest_first(&mut found);
    found
}
