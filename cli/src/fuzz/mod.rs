//! What this member reads, with something wrong somewhere: lines of rooms, what is kept of a run, bookings. What the model
//! reads is tried beside its own tests.
//!
//! The suite changes sound files by a seeded draw; `tests/fuzz/` puts files to the same checks that it makes after what of
//! the program they reach, in a build with `--cfg fuzzing`. Of no other build is this a part.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a panic is how a check fails")]
#![cfg_attr(not(test), allow(dead_code, reason = "the suite has a part of its own"))]

mod bookings;
#[cfg(fuzzing)]
pub mod by_reach;
mod journal;
mod lines;
#[path = "../../../tests/support/mutation.rs"]
pub(crate) mod mutation;
#[path = "../../../tests/support/rows.rs"]
mod rows;
