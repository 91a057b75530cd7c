//! Every threshold of the arrangements in one place, each with its why.
//!
//! What is dropped here is dropped whatever the layout, so each leans toward letting an arrangement through.

/// What falls short by no more than this still fits, and a stretch no longer than this is none, mm: the linear
/// programs let through what just fits by as much.
pub(super) const ROUNDING: f64 = 1e-6;

/// How far beside a corner the depth before a wall is looked up, mm: between two corners it changes evenly, at one
/// it may leap.
pub(super) const BESIDE: f64 = 1e-3;

/// Cosine of two directions under which one runs along the other rather than toward it: no wall of a house is askew
/// by so little.
pub(super) const ALONG: f64 = 1e-6;

/// Cosines nearer to each other than this are equal, so that an angle just at its limit is within it.
pub(super) const AT_LIMIT: f64 = 1e-9;

/// Walls whose cosines to a direction differ by less than this are faced as squarely as each other (the cosine of a
/// tenth of a degree is further from 1).
pub(super) const AS_SQUARE: f64 = 1e-6;

/// Cosine of 10 degrees: seats face each other, or the media unit, within so much of opposite (common practice).
pub(super) const COSINE_FACING: f64 = 0.984_807_753_012_208;

/// Cosine of just under 45 degrees: from there on a chair is turned as much from one way as from the next.
pub(super) const COSINE_OF_HALF: f64 = 0.708;

/// How far before the front of a seat a table may lie and still be that seat's, mm: beyond it one would have to stand up
/// to put a cup down, even from the edge of the seat, and whoever lives there has it stand elsewhere (common practice).
pub(super) const TABLE_OF_SEAT: f64 = 1200.0;

/// Cosine of 1 degree: walls within it run the same way; a survey seldom closes better.
pub(super) const COSINE_ALIKE: f64 = 0.999_847_695_156_391_2;
