//! Every threshold of the order in one place, each with its why.
//!
//! Scores run from 0 to 100 and are told in whole points; sums of them carry a rounding error near 1e-13.

/// Scores and shares that differ by no more are a tie.
pub(super) const TIE: f64 = 1e-9;

/// A lead of this is more than a tie and all rounding: an option is left out of the draws only where it surely
/// cannot be first.
pub(super) const CLEAR: f64 = TIE + 1e-6;
