//! Every threshold of the geometry in one place, each with its why.
//!
//! Coordinates are millimetres from 0 to some 1e5, so a place carries a rounding error near 1e-11 and everything below
//! stands well above that, and far below what a tape shows.

/// Shapes nearer to each other than this touch, mm.
pub(super) const TOUCH: f64 = 1e-9;

/// Squared sine under which two lines count as parallel: where they then meet is lost in rounding, and where they overlap
/// an end of one lies on the other.
pub(super) const PARALLEL: f64 = 1e-20;

/// Share of a segment's length by which a meeting may lie beyond its end and still be at it: two segments that share an end
/// meet there, and rounding may put that a few digits past either.
pub(super) const END: f64 = 1e-9;

/// A way that nears a side by less than this over its whole length, mm, runs along it.
pub(super) const ALONG_SIDE: f64 = 1e-12;

/// The sum of two unit normals by one of them, under which the edges turn back on each other and have no mitre.
pub(super) const TURNS_BACK: f64 = 1e-9;

/// Corners nearer to a straight line than this count as on it, mm: an ear thinner than this is no floor.
pub(super) const STRAIGHT: f64 = 1e-6;

/// A corner may lie this far outside an ear's side and still spoil the ear, mm2 of the triangle that it makes with the side:
/// a corner on the side does.
pub(super) const ON_EAR: f64 = 1e-9;

/// Share of a radius by which two round things that touch may be apart.
pub(super) const TANGENT: f64 = 1e-8;

/// What is turned back by less than this is not turned at all, radians: the last digits of a full turn are no turn.
pub(super) const NO_TURN: f64 = 1e-9;

/// How far above 1 a sine may be by rounding where a cord is square to the line between two corners.
pub(super) const SINE: f64 = 1e-12;

/// How far a place may lie outside a circle through others and still be held by it, mm.
pub(super) const ON_CIRCLE: f64 = 1e-6;

/// Twice the area of a triangle, mm2, under which its corners lie on one line and no circle runs through them.
pub(super) const ON_ONE_LINE: f64 = 1e-6;

/// Corners nearer to each other than this are one, mm, where outlines are put together: they are told to a thousandth.
pub(super) const SAME_CORNER: f64 = 0.01;
