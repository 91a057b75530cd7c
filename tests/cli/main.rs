//! Suite `cli`: the program from the outside, and the house it lives in.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

#[allow(dead_code, reason = "this suite needs a part of what the suites share")]
#[path = "../support/mod.rs"]
mod support;

mod bad_input;
mod batch;
mod commands;
mod composed;
mod demo_rooms;
mod draw;
mod files;
mod for_every_reader;
mod held_to;
mod house;
mod judge;
mod marks;
mod out_of_bytes;
mod page;
mod pages;
mod program;
mod rank;
mod readme;
mod refusals;
mod report;
mod screens;
mod sheets;
mod shop;
mod undecided;
mod way;
mod what_if;
