//! Every threshold of the criteria that is no judgement in one place, each with its why.
//!
//! What a criterion likes, and from where on, stands beside it with its source.

/// A size shorter by this than so many seat places still holds them, mm: rounding, not size.
pub(super) const ROUNDING: f64 = 1e-3;

/// Taken off what a walk keeps from the sides of things, mm: a gap that is just wide enough lets the line through.
pub(super) const JUST_FITS: f64 = 1.0;

/// A way to a place is shorter than another where it is so by more than this, mm.
pub(super) const NO_SHORTER: f64 = 1e-9;

/// Walls turn at a corner where the sine between them is above this.
pub(super) const TURNS: f64 = 1e-9;

/// A corner of the outline turns away from the room where the walls' vectors span more than this, mm2.
pub(super) const TURNS_OUT: f64 = 1e-6;

/// Share of a look within which something lies at one of its ends: what stands at the eye, or at what is looked at,
/// hides nothing of it.
pub(super) const AT_THE_EYE: f64 = 1e-9;

/// Share of their distance by which two edges that meet at the end of a slice may seem to cross inside it.
pub(super) const SAME_REACH: f64 = 1e-9;

/// A slice of the round is none below this angle, radians: corners in one line of sight.
pub(super) const NO_SLICE: f64 = 1e-12;

/// A part of the field is none below this angle, degrees: the same.
pub(super) const NO_ANGLE: f64 = 1e-9;

/// An angle that is at a limit but for rounding of what it is worked out from is within it, degrees.
pub(super) const SAME_ANGLE: f64 = 1e-6;

/// A line of sight runs along an edge where the cosine to the edge's normal is below this.
pub(super) const ALONG_EDGE: f64 = 1e-12;

/// How far inside a doorway's line one stands who arrives, mm: its own wall is then behind.
pub(super) const JUST_INSIDE: f64 = 1.0;

/// Places nearer to each other than this are one, mm: no tape tells them apart.
pub(super) const SAME_PLACE: f64 = 1.0;

/// A share that is whole but for rounding of what it is worked out from.
pub(super) const WHOLE: f64 = 0.999;

/// How far before the front of a screen its picture is looked at, mm: its own body then hides nothing of it.
pub(super) const IN_FRONT: f64 = 1.0;
