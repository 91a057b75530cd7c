//! Every threshold of the shop in one place, each with its why.

/// How fine a miss is found, mm.
pub(super) const FINE: f64 = 1.0;

/// A size is beyond what was asked by more than this, mm: less is rounding.
pub(super) const BEYOND: f64 = 0.5;
