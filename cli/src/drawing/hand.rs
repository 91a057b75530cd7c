//! The few weights of line and sizes of type that a sheet is drawn with (ISO 128 and ISO 3098, in steps of about the square root
//! of two or two: from memory).

/// Walls, mm.
pub(crate) const WALLS: f64 = 0.5;
/// Outlines of pieces, ways, strokes across the ends of what measures, mm.
pub(crate) const OUTLINES: f64 = 0.35;
/// Fittings, lines within pieces, what measures and what leads there, hatches, mm.
pub(crate) const FITTINGS: f64 = 0.18;

/// The answer, mm: the largest that needs no more lines than it may have; a sheet has one of them.
pub(crate) const LARGE: [f64; 3] = [5.0, 4.2, 3.5];
/// Names of pieces and what is read first, mm.
pub(crate) const NAMES: f64 = 2.5;
/// Figures, names of walls and of what they hold, small print, mm.
pub(crate) const FIGURES: f64 = 2.1;
