//! Every threshold of what is told in one place, each with its why.

/// A length that lies past a mark of the tape by no more than this is at the mark, mm: rounding, not size.
pub(super) const FORGIVEN: f64 = 1e-3;

/// A stretch no longer than this is none, mm.
pub(super) const NOTHING: f64 = 1e-6;

/// How far from a whole number of hundredths a wish may lie and still be one.
pub(super) const WHOLE: f64 = 1e-6;

/// Corners that miss their sum by less do not, degrees.
pub(super) const NO_MISFIT: f64 = 1e-6;
