//! The figures of each dimension: how large it is together with the others, how large it could be alone, and what
//! holds it.

mod alone;
mod held_by;
mod tolerance;

pub use alone::{AloneAsked, alone};
pub use held_by::{HeldBy, Holding, held_by};
