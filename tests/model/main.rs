//! Suite `model`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a panic is how a test fails")]

mod at_seats;
mod filed;
mod fires;
mod fixed;
mod fuzz;
mod groups;
mod held_to;
mod hostile;
mod hung;
mod instead;
mod lengths;
mod listing;
mod names;
mod outlines;
mod pieces;
mod places;
mod plain_room;
mod plain_words;
mod plausible;
mod reading;
mod refusals;
mod registry;
mod rooms;
mod schema;
mod settings;
mod sofas;
mod stands;
mod told;
mod turned;
mod way;
mod words;
