//! What this member reads, with something wrong somewhere: scenarios, settings, ways in, lists of pieces, workbooks.
//! `tests/fuzz/` has the same checks.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a panic is how a check fails")]
#![allow(dead_code, reason = "the suite and the targets use their own part each")]

pub(crate) mod lists;
#[path = "../../support/mutation.rs"]
pub(crate) mod mutation;
#[path = "../../support/rows.rs"]
mod rows;
pub(crate) mod scenarios;
pub(crate) mod settings;
pub(crate) mod sheets;
pub(crate) mod told;
pub(crate) mod ways;
