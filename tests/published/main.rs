//! Suite `published`: figures that others printed and rooms that others measured, with the source beside each.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

#[allow(dead_code, reason = "this suite needs a part of what the suites share")]
#[path = "../support/mod.rs"]
mod support;

#[allow(dead_code, reason = "this suite needs a part of it")]
#[path = "../cli/program.rs"]
mod program;

mod clearances;
mod comfort;
mod rooms;
mod screens;
mod sight;
mod sun;
mod survey;
mod way;
mod weights;
