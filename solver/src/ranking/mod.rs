//! How firm the order is: weights, shares of first place, dominance, what would turn it.
//!
//! Shares of first place are those of stochastic acceptability analysis (Lahdelma, Hokkanen and Salminen 1998, "SMAA, stochastic
//! multiobjective acceptability analysis", cited from memory).
//!
//! Criteria are judged elsewhere; here their scores are weighed. Options come in the order that size and geometry give
//! them, and a tie goes to the earlier one: names settle nothing.

mod best_first;
mod contenders;
mod dominance;
mod draws;
mod network;
mod order;
mod share;
mod table;
mod tolerance;
mod turn;

pub use draws::Draws;
pub use order::{Rating, order, ratings};
pub use turn::Turn;
