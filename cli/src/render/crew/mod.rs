//! What a crew takes along: a day's load list, rows of all that is carried, what comes back when, a calendar.

mod calendar;
mod load_list;
mod rows;

pub(crate) use calendar::{CALENDAR_START, calendar};
pub(crate) use load_list::{days, load_list, returns};
pub(crate) use rows::rows;

use crate::result::carried::{COLLECTED, Carried};
use crate::result::stock::{BookingResult, StockResult};
use crate::words::crew as words;

/// What a room is called, by its place among the bookings; the store where it has none.
fn room(told: &StockResult, place: Option<usize>) -> String {
    place.and_then(|place| told.rooms.get(place)).map_or_else(|| words::STORE.to_owned(), name)
}

/// The room that is called at for what is carried, by its place among the bookings: where it is collected, or else where it
/// comes to.
fn stop(one: &Carried) -> Option<usize> {
    if one.what == COLLECTED { one.from } else { one.to.or(one.from) }
}

/// What a booking's room is called.
fn name(room: &BookingResult) -> String {
    room.name.clone().unwrap_or_else(|| room.source.clone())
}
