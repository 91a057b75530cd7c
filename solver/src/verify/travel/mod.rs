//! Whether a disc can travel from one place to another: a cell decomposition of the free places for its centre.
//!
//! Every obstacle is grown by the disc's radius, its corners truly round. Vertical lines through all places where the
//! grown boundaries meet or end cut the plan into slabs, in each of which the free stretches keep their order; stretches
//! of neighbouring slabs that overlap are one. Exact but for rounding, and a different method from the chains of
//! shapes that `routes` measures by, which makes it a check of them. Moving by cells:
//! Schwartz and Sharir 1983, "On the piano movers' problem" (cited from memory).

mod crossing;
mod disc;
mod free_space;
mod gate;
mod rounded;
mod slabs;

pub(super) use disc::{Target, travels};
pub(super) use gate::Gate;
