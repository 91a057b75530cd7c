//! Every threshold of the search in one place, each with its why.
//!
//! The objective counts millimetres of size by their weight, some thousands in a room; misplacement counts a thousandth of that.

/// An option is proven where its bound lies within this share of its objective: what no shopper tells apart.
pub(super) const PROVEN_WITHIN: f64 = 1e-3;

/// A node is pruned where its bound is not above the incumbent by more than this share: a fifth of what a proof
/// allows.
pub(super) const SAME_VALUE: f64 = 2e-4;

/// The same for a plain problem, which is held against other solvers to the last digit that they share.
pub(super) const SAME_PLAIN_VALUE: f64 = 1e-9;

/// Bounds nearer to each other than this are the same: less than a thousandth of a millimetre of size.
pub(super) const SAME_BOUND: f64 = 1e-3;

/// A millimetre of size is no reason to look elsewhere first.
pub(super) const SAME_PROMISE: f64 = 1.0;

/// Nor is a millimetre of misplacement.
pub(super) const SAME_ORDER_PROMISE: f64 = 1e-3;

/// Nor is what a millimetre of a plan costs.
pub(super) const SAME_PLAN_PROMISE: f64 = 1.0;

/// Plans that differ by less are the same: a fifth of what a proof allows.
pub(super) const INDIFFERENT_PLAN: f64 = 5.0;

/// A plan is proven where its bound lies within this, or a hundredth of it: what no eye tells apart.
pub(super) const PLAN_PROVEN_WITHIN: f64 = 25.0;
pub(super) const PLAN_PROVEN_SHARE: f64 = 1e-2;

/// A plain problem is searched as others would.
pub(super) const SAME_PLAIN_PROMISE: f64 = 1e-6;

/// Where a layout must be found before the nodes are used up, promises nearer to each other than this are the same,
/// mm of size.
pub(super) const ROUGHLY_SAME_PROMISE: f64 = 100.0;

/// Bounds nearer to each other than this wait in the order of their depth: rounding settles no order.
pub(super) const SAME_RANK: f64 = 1e-6;

/// Order that differs by less is the same: a centimetre of misplacement.
pub(super) const INDIFFERENT_ORDER: f64 = 0.01;

/// Sizes that are held may give by this, mm: rounding, not size.
pub(super) const HELD_WITHIN: f64 = 1e-4;

/// Gains below this, in the objective, end the polish: a thousandth of a millimetre of size.
pub(super) const NO_MORE_GAIN: f64 = 1e-3;

/// Share of the objective that later rounds of the polish may still gain; the first has the most of it.
pub(super) const STILL_TO_GAIN: f64 = 0.02;

/// A round gap is not halved below this angle, radians: its chord lies within a thousandth of a millimetre of the
/// arc.
pub(super) const FINEST_SECTOR: f64 = 0.1 * std::f64::consts::PI / 180.0;

/// A chord further from its arc than this is coarse, mm.
pub(super) const COARSE: f64 = 5.0;
