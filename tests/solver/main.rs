//! The solver from the outside: one file per part.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

#[path = "../support/mod.rs"]
mod support;

mod arrangement;
mod criteria;
mod demo_rooms;
mod laws;
mod plan;
mod program;
mod ranking;
mod refusals;
mod routes;
mod scenarios;
mod search;
mod shop;
mod stock;
mod twins;
mod verify;
mod way;
#[cfg(feature = "highs")]
mod whole;
