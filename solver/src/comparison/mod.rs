//! One option against another, and one result against another: what is gained, and what that costs.
//!
//! Options are compared by what a person would hold against each other: how each criterion judges them, how large each
//! piece may be, how wide and how long each way is. Nothing here is solved again.

mod changed;
mod counterpart;
mod side;
mod trade;

pub use changed::{Changed, changed};
pub use counterpart::{Counterpart, counterpart};
pub use side::Side;
pub use trade::{Apart, Trade, trade};
