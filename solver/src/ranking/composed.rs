//! What the composition of an option costs, as the order weighs it.

use crate::criteria::{Finding, Judgement};

/// What the composition of an option that was judged so costs, and what it leaves out is worth, in millimetres of shortfall of a
/// piece that counts 3; 0 where balance was not judged.
#[must_use]
pub fn composed(judgements: &[Judgement]) -> f64 {
    let balance = judgements.iter().find_map(|judgement| match &judgement.finding {
        Finding::Balance(balance) => Some(balance),
        _ => None,
    });
    balance.map_or(0.0, |balance| balance.placement + balance.left_out_worth)
}
