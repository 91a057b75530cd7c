//! Every threshold of the linear programs in one place, each with its why.
//!
//! Variables are millimetres from 0 to some 1e5, coefficients are cosines, sines and small weights, so a value carries a
//! rounding error near 1e-11 and everything below stands well above that.

/// How far outside a row or bound a point may lie and still count as keeping it, in mm: what callers may rely on.
pub const FEASIBLE: f64 = 1e-7;

/// How far outside the dual simplex itself lets a row or bound be, in mm. Less than [`FEASIBLE`], because cleaning the
/// values to their bounds afterwards moves each row by this much for every variable in it.
pub const WORKING: f64 = 1e-8;

/// Values this near a bound, in mm, are the bound: so that "as large as it may be" compares equal.
pub const SNAP: f64 = 1e-9;

/// Residual of a row that should be met exactly, in mm, from which the point is corrected by one step of refinement.
pub const DRIFT: f64 = 1e-10;

/// Least size of a pivot. Coefficients are of the order of 1, and what cancels to nothing leaves about 1e-14.
pub const PIVOT: f64 = 1e-9;

/// Ratios this near each other are a tie, which the larger pivot and then the smaller index decide.
pub const RATIO_TIE: f64 = 1e-10;

/// A dual step no longer than this makes no progress and counts towards a stall.
pub const STEP: f64 = 1e-12;

/// How far the bound proven by the row weights may stay above the point's objective, absolutely.
pub const GAP: f64 = 1e-7;

/// The same as a share of the largest objective that the bounds alone allow: rounding grows with what is summed.
pub const GAP_SHARE: f64 = 1e-12;

/// A weighted sum of rows must miss by this much, in mm, to prove that no point keeps them all.
pub const MISS: f64 = 1e-9;

/// Steps without progress after which the smallest index decides (Bland's rule), which cannot cycle.
pub const STALL: usize = 24;

/// Most steps of one solve: this many for every variable and row. Dual simplex on such programs takes about a tenth of
/// one step for each; the limit exists for hostile input alone.
pub const STEPS_EACH: usize = 40;

/// How far from 0 and 1 a value may lie and still be taken for it, in programs of yes and no.
pub const WHOLE: f64 = 1e-6;

/// How far an optimum may lie above a whole number and still be taken for it: rounding of sums of some thousands.
pub const WHOLE_SUM: f64 = 1e-4;
