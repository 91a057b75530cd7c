//! Every threshold of reading a scenario in one place, each with its why.
//!
//! A file is told what it gets wrong, never what binary figures do to it.

/// What is nearer than this touches and does not overlap, mm.
pub(crate) const TOUCHING: f64 = 1e-6;

/// A misclosure below this is rounding, mm.
pub(crate) const CLOSED: f64 = 1e-6;

/// Corners that miss their sum by less do not, degrees.
pub(crate) const NO_MISFIT: f64 = 1e-9;

/// Coordinates are mostly rounded to the millimetre, so a length between them may be off by half of one, mm.
pub(crate) const ROUNDED: f64 = 0.5;

/// A diagonal that is off by less is off by rounding and is no slip, mm.
pub(crate) const LEAST_SLIP: f64 = 1e-3;

/// A figure at its limit is within it: sums of floats are off by less than this share.
pub(crate) const AT_LIMIT: f64 = 1e-9;

/// How far from parallel to the misclosure a wall may run and still be a likely slip: the sine of the angle.
pub(crate) const ALONG_MISCLOSURE: f64 = 0.3;

/// Corners that turn by less than this over their edges are straight, mm2.
pub(crate) const STRAIGHT: f64 = 1e-6;

/// All turns of a convex shape come to one full turn within this, radians: two would be off by thousands of times
/// as much.
pub(crate) const ONE_TURN: f64 = 1e-3;
