//! How exactly refusals and remedies are worked out.

/// How fine a shortfall, or a change that would help, is found, mm: half of what is told, a centimetre.
pub(super) const FINE: f64 = 5.0;
