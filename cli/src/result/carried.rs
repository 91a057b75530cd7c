//! What is carried on which day, as JSON; load lists and the calendar are made from it too.

use elbowroom_solver::Size;
use elbowroom_solver::stock::{Move, Stop};
use serde::Serialize;

/// Pieces that are carried on a day.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Carried {
    /// When, as written.
    pub day: String,
    /// Out of the store, back to it, collected to go on to another room the day after, delivered there, or staying where it
    /// is.
    pub what: &'static str,
    /// The room that it comes from, by its place among the bookings; null: the store.
    pub from: Option<usize>,
    /// The room that it goes to; null: the store.
    pub to: Option<usize>,
    /// Line of the store's list.
    pub line: usize,
    /// What it is called.
    pub name: String,
    /// How many of it.
    pub count: u32,
    /// Its sizes.
    #[serde(skip)]
    pub size: Size,
    /// Above the floor, mm; null where the list does not say.
    pub height: Option<f64>,
    /// What one of it weighs, kg; null where the list does not say.
    pub mass: Option<f64>,
    /// How many carry one of it; null where the list does not say.
    pub people: Option<u32>,
    /// In how many parts it comes; null where the list does not say.
    pub parts: Option<usize>,
    /// What one of it fills, m3; null where the list does not say how high it is.
    pub volume: Option<f64>,
    /// Where it is in the store, or goes back to.
    #[serde(rename = "where")]
    pub place: String,
}

/// `out`, `back`, `collected`, `delivered` or `stays`.
pub(crate) const fn what(one: &Move) -> &'static str {
    match (one.from, one.to) {
        _ if one.stays => STAYS,
        (Stop::Store, _) => OUT,
        (_, Stop::Store) => BACK,
        (Stop::Van { .. }, _) => DELIVERED,
        _ => COLLECTED,
    }
}

/// Out of the store.
pub(crate) const OUT: &str = "out";
/// Back to it.
pub(crate) const BACK: &str = "back";
/// Out of a room on its last day, to go on to another the day after.
pub(crate) const COLLECTED: &str = "collected";
/// To that other room.
pub(crate) const DELIVERED: &str = "delivered";
/// In a room that is booked again the day after: nobody carries it.
pub(crate) const STAYS: &str = "stays";
