//! Suite `published`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

mod screens;
mod sight;
mod sun;
mod survey;
mod weights;
