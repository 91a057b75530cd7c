//! Every threshold of setting out in one place, each with its why.
//!
//! What is set out is marked with a tape: half a millimetre is the least that it shows (common practice, no source).

/// A corner nearer than this to the line between its neighbours goes straight on, mm: corners are told to a thousandth.
pub(super) const STRAIGHT: f64 = 0.01;

/// What a tape may brush against without being bent, mm.
pub(super) const BRUSHED: f64 = 2.0;

/// Walls that meet at a corner further from square than this are out of square, degrees.
pub(super) const SQUARE_WITHIN: f64 = 1.0;

/// A corner nearer to straight than this is no mark that a tape finds, degrees.
pub(super) const STRAIGHT_WITHIN: f64 = 2.0;

/// What lies past a wall's end by less is at its end, mm: rounding. Further past there is no wall to lay a tape
/// along.
pub(super) const PAST_END: f64 = 0.5;

/// How far off the wall the tape that lies along it is thought to lie, mm.
pub(super) const ALONG_AT: f64 = 5.0;

/// Share of a roll of tape that is not worth another: rounding of a sum that comes out even.
pub(super) const PART_OF_ROLL: f64 = 1e-9;
