//! Every threshold of the way in, in one place, each with its why.

/// What is missing by less than this is rounding, mm: what just fits passes.
pub(super) const JUST_PASSES: f64 = 1e-6;

/// How fine a size is found, mm.
pub(super) const FINE: f64 = 0.01;

/// The nearest to lying along either hall that a turning box is tried at, radians: there its length is without end.
pub(super) const FLAT: f64 = 1e-9;
