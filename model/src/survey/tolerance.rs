//! Every threshold of the survey in one place, each with its why.
//!
//! Walls are measured to a millimetre at best; figures stand well below that and above the rounding of coordinates.

/// Nearer than this, walls touch, and what is at a wall's end is on it, mm.
pub(crate) const TOUCHING: f64 = 1e-6;

/// How far from parallel the wall that takes up the change may be, as the sine of the angle (about 3 degrees).
pub(crate) const PARALLEL: f64 = 0.05;

/// Directions this near to a quarter turn are one, degrees: rooms are mostly square, and then their coordinates are
/// exact.
pub(crate) const QUARTER: f64 = 1e-9;

/// What a free corner's arc weighs where the measures alone do not fix the outline: a millionth, squared, of what
/// was measured.
pub(crate) const WEAK: f64 = 1e-3;

/// The adjustment ends when no corner moves by more than this share of the mean wall length.
pub(crate) const STILL: f64 = 1e-12;

/// A pivot below this share of its column's is no pivot.
pub(crate) const SINGULAR: f64 = 1e-11;

/// How much the first step of the adjustment is shortened: hardly.
pub(crate) const FIRST_DAMPING: f64 = 1e-9;

/// Below this a step is a whole one.
pub(crate) const LEAST_DAMPING: f64 = 1e-15;
