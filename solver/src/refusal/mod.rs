//! Why an arrangement does not fit, and, where none does, the least change that helps.
//!
//! Every reason and every remedy is found by solving again with something eased; nothing is guessed from a failed proof.

mod asked;
mod lever;
mod reason;
mod remedy;
mod retry;
mod tolerance;
mod why;

pub use lever::Lever;
pub(crate) use lever::without;
pub(crate) use reason::why_refused;
pub(crate) use remedy::remedies;
pub use remedy::{Change, Remedy};
pub use why::{Asked, AskedLength, DoesNotGetIn, Reason, Refusal, Why};
