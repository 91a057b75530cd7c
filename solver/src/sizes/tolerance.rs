//! Every threshold of the sizes in one place, each with its why.
//!
//! Sizes are told to a centimetre or half an inch, rounded down.

/// A size that grows by more than this when something is freed was held by it, mm.
pub(super) const GROWS: f64 = 1.0;

/// Gains below this are none, mm.
pub(super) const NO_GAIN: f64 = 1e-3;

/// A row nearer to its limit than this is tight, mm.
pub(super) const TIGHT: f64 = 1e-3;
