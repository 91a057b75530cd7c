//! The solver from the outside: one file per part.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

#[allow(dead_code, reason = "this suite needs a part of what the suites share")]
#[path = "../support/mod.rs"]
mod support;

mod about_doorways;
mod about_fire;
mod about_view;
mod arrangement;
mod behind;
mod criteria;
mod equals;
mod free_standing;
mod gaps;
mod groups;
mod hung;
mod in_corner;
mod judge;
mod kinds;
mod laws;
mod plan;
mod program;
mod ranking;
mod remedies;
mod rewished;
mod routes;
mod scenarios;
mod search;
mod second_seats;
mod shop;
mod sizes_in_full;
mod stock;
mod stopped;
mod told_once;
mod turned;
mod twins;
mod verify;
mod way;
#[cfg(feature = "highs")]
mod whole;
