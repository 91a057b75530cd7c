//! Every threshold of reading a room as it stands, each with its why.

/// How much farther than its gap from a wall a piece still stands at it, mm: a foot, where one walks or cleans behind
/// (common practice, and what the result format asks of a piece at a wall).
pub(super) const FOOT: f64 = 304.8;

/// How far past a wall a back may lie by the coordinates that a file gives, mm: they are rounded, and a wall may be askew.
pub(super) const PAST: f64 = 50.0;

/// The nearest and the furthest of the ranges that the distance from seat to table is taken from, mm: 12 to 18 in where it is snug,
/// 16 to 18 in elsewhere (their sources stand in the table of clearances). A figure under them is somebody's own, and is held to.
pub(super) const NEAREST_TABLE: f64 = 304.8;
pub(super) const FURTHEST_TABLE: f64 = 457.2;

/// How much further from what is behind it than it may be a seat can stand with no slot there, mm: places are read off a tape to a
/// centimetre.
pub(super) const READ_OFF: f64 = 10.0;
