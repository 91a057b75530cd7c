//! The routes that a layout must have.

use elbowroom_model::Brief;

use super::demand::{Demand, demands_with};
use crate::layout::Layout;

/// The routes that a layout with these pieces must have: from every entrance to every other doorway (between two
/// entrances once), to each fixed thing that people use, to each seat, storage front and desk, and to each window that must be reached.
#[must_use]
pub fn demands(brief: &Brief, layout: &Layout) -> Vec<Demand> {
    demands_with(brief, layout.placed.iter().map(|placed| placed.piece))
}
