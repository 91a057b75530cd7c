//! How firm the order is: tiers, weights, shares of first place, dominance, what would turn it, families.
//!
//! Shares of first place are those of stochastic acceptability analysis (Lahdelma, Hokkanen and Salminen 1998, "SMAA, stochastic
//! multiobjective acceptability analysis", cited from memory), over shifts of the wishes by up to one step.
//!
//! Criteria are judged elsewhere; here their scores are weighed. Options come in the order that size and geometry give
//! them, and a tie goes to the earlier one: names settle nothing.

mod best_first;
mod composed;
mod contenders;
mod dominance;
mod draws;
pub(crate) mod family;
mod ill_composed;
mod order;
mod set_aside;
mod share;
mod table;
mod tier;
mod tolerance;
mod turn;

pub use composed::composed;
pub use draws::Draws;
pub use ill_composed::ill_composed;
pub(crate) use ill_composed::set_ill_composed_aside;
pub use order::{Rating, order, ratings};
pub(crate) use order::{scores, tied};
pub use set_aside::{Lapse, SetAside, lapses};
pub use tier::Entrant;
pub use turn::Turn;
