//! From measured lengths to a closed outline.
//!
//! [`trace`] draws the walls one after another, [`compass`] spreads what fails to close, [`fit`] adjusts an outline that
//! diagonals check. Figures only: names, faults and words are the scenario reader's.

pub mod compass;
pub mod fit;
pub mod simple;
pub mod stretch;
pub(crate) mod tolerance;
pub mod trace;

pub use stretch::with_wall_length;
