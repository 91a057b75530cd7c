//! Why an arrangement does not fit, and, where none does, the least change that helps.
//!
//! Every reason and every remedy is found by solving again with something eased; nothing is guessed from a failed proof.

mod asked;
mod reason;
mod reason_words;
mod remedy;
mod remedy_words;
mod retry;
mod tolerance;

pub(crate) use reason::{not_verified, refused};
pub(crate) use remedy::{remedies, without};
