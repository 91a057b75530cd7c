//! Every threshold of the rules in one place, each with its why.
//!
//! Programs keep a row to 1e-7 mm (`program`); what a rule lets pass lies above that and below what a tape shows.

/// How far a row may be broken, mm, before a rule counts as broken: rounding of the programs lies far below.
pub const TOLERANCE: f64 = 1e-6;

/// What just fits is asked for with this much less, mm, so that rounding of the programs does not refuse it.
pub(super) const RELAXED: f64 = 1e-6;

/// What a millimetre of misplacement costs, against a millimetre of a sofa's 3: it settles ties and no more.
pub(super) const TIE: f64 = 1e-3;

/// No term of a plan costs more: a hundred times what easing a rule does.
pub(super) const MOST_COST: f64 = 1e7;

/// Directions nearer than this (sine of the angle) are one: edges that are meant to be parallel come from the same
/// walls.
pub(super) const SAME_DIRECTION: f64 = 1e-9;

/// Edges this far from square (as a sine) are square to a tape: two millimetres along a sofa.
pub(super) const NEARLY_SQUARE: f64 = 1e-3;

/// Reaches nearer to each other than this are the same, mm.
pub(super) const SAME_REACH: f64 = 1e-6;

/// Two unit vectors are opposite where their cosine is nearer to -1 than this.
pub(super) const OPPOSITE: f64 = 1e-9;

/// A direction this far outside the cone of a corner still has that corner as its furthest, as a sine: of two
/// corners an edge square to it may take either.
pub(super) const WITHIN_CONE: f64 = 1e-12;

/// Coefficients nearer to each other than this are one: they are products of the same cosines.
pub(super) const SAME_TERM: f64 = 1e-12;

/// Two unit vectors point the same way where their cosine is more than this: a degree.
pub(super) const SAME_WAY: f64 = 0.999_8;

/// A place nearer to a mouth's end than this stands at it, mm.
pub(super) const AT_END: f64 = 1e-3;

/// What stands before a mouth reaches in by this at least, mm: what merely touches its line stands beyond it.
pub(super) const REACHES_IN: f64 = 1.0;

/// Angle between the sides of the polygon around a round gap, radians: it reaches a four-hundredth beyond the arc.
pub(super) const FAN_STEP: f64 = 7.5 * std::f64::consts::PI / 180.0;

/// A sector is cut so that neither part is less than this share of it: thin slices would not end.
pub(super) const LEAST_PART: f64 = 0.1;

/// A dining table that is narrower than it is deep by this has long ends, mm: less may be rounding.
pub(super) const NARROWER: f64 = 0.1;
