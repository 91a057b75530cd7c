//! What a rule of comfort asks for.

use elbowroom_model::Clearance;

use crate::rules::RuleContext;

/// The figure of a clearance, mm; `None` where it is switched off.
pub(super) fn figure(context: &RuleContext<'_>, clearance: Clearance) -> Option<f64> {
    Some(context.brief.rules.get(clearance)).filter(|figure| *figure > 0.0)
}
