//! The process: what a run reads, where it writes, and how it ends.
//!
//! Ends are values ([`failure::Failure`], [`exit::Exit`]); what is said of them is `words`'.

pub(crate) mod destination;
pub(crate) mod exit;
pub(crate) mod failure;
pub(crate) mod inputs;
pub(crate) mod listed;
pub(crate) mod outlet;
pub(crate) mod source;
pub(crate) mod whole;
