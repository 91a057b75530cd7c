//! Every threshold of the stock in one place, each with its why.

/// How much larger than a size a piece may be and still have its place, mm: the programs that found the size place
/// it to 1e-7 mm.
pub(super) const ROUNDING: f64 = 1e-6;

/// Sizes are tried in steps of this, mm, rounded down: what one can shop by.
pub(super) const STEP: f64 = 10.0;
