//! Strips of tape: how long to cut each, and how many rolls they take.

use elbowroom_model::{Point, Rounding, Unit};

use super::tolerance::PART_OF_ROLL;

/// What a strip is cut longer than its stroke, mm, so that strips cross at the corners (common practice, no source).
pub const OVERLAP: f64 = 50.0;

/// One strip, from a corner to the next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strip {
    /// From corner to corner, mm.
    pub stroke: f64,
    /// To cut, in whole steps of a shopper's tape, mm.
    pub cut: f64,
}

/// What all strips take.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tape {
    /// All strips together, mm.
    pub total: f64,
    /// Length of one roll, mm.
    pub roll: f64,
    /// Rolls to buy; a strip may be pieced together from the end of one and the start of the next.
    pub rolls: usize,
}

/// One strip for each side of the ring.
pub(super) fn strips(ring: &[Point], unit: Unit) -> Vec<Strip> {
    let strip = |place: usize| {
        let stroke = (ring[(place + 1) % ring.len()] - ring[place]).norm();
        Strip { stroke, cut: unit.rounded(stroke + OVERLAP, Rounding::Up) }
    };
    (0..ring.len()).map(strip).collect()
}

/// What the strips take of rolls of `roll` mm.
pub(super) fn tape<'a>(strips: impl Iterator<Item = &'a Strip>, roll: f64) -> Tape {
    let total = strips.map(|strip| strip.cut).sum::<f64>();
    // Rolls are few; a cast saturates, and a roll of no length gives none.
    let rolls = if roll > 0.0 { (total / roll - PART_OF_ROLL).ceil().max(0.0) as usize } else { 0 };
    Tape { total, roll, rolls }
}
