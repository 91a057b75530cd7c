//! Every threshold of drawing in one place, each with its why.

/// What overlaps by no more than this touches, paper mm: no printer shows it.
pub(super) const TOUCH: f64 = 1e-9;

/// An arc longer than a quarter by no more than this is drawn as one, radians: a curve of the third degree follows
/// a quarter to a four-thousandth of its radius.
pub(super) const QUARTER: f64 = 1e-9;
