//! Bookings and the days of the van as a calendar file (RFC 5545).

use icalendar::{Calendar, Component, Event, EventLike, Property};

use super::{days, name};
use crate::result::carried::{BACK, COLLECTED, DELIVERED, OUT};
use crate::result::stock::{BookingResult, StockResult};
use crate::words::crew as words;

/// How the file starts: what it is known again by.
pub(crate) const CALENDAR_START: &str = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//elbowroom//";
/// Who made it, as the standard wants it told.
const MAKER: &str = "-//elbowroom//stock//EN";

/// The file: an event for each room that something goes out to, from its first day to its last, and one for each day on
/// which something is carried. Nothing in it tells when it was made, so that the same bookings give the same bytes.
pub(crate) fn calendar(told: &StockResult) -> String {
    let mut calendar = Calendar::empty();
    calendar.append_property(Property::new("VERSION", "2.0"));
    calendar.append_property(Property::new("PRODID", MAKER));
    for (place, room) in told.rooms.iter().enumerate().filter(|(_, room)| room.arrangement.is_some()) {
        if let Some(event) = staged(place, room) {
            calendar.push(event);
        }
    }
    for day in days(told) {
        let count = |what: &str| -> u32 {
            let of = told.carried.iter().filter(|one| one.day == day && one.what == what);
            of.map(|one| one.count).sum()
        };
        let counts = [OUT, BACK, COLLECTED, DELIVERED].map(count);
        if counts.iter().sum::<u32>() == 0 {
            continue;
        }
        let summary = words::load_day(counts);
        calendar.push(event(&format!("van-{day}@elbowroom"), &summary, day, next(day)));
    }
    calendar.to_string()
}

fn staged(place: usize, room: &BookingResult) -> Option<Event> {
    let (from, to) = (room.from.as_deref()?, room.to.as_deref()?);
    let mut event = event(&format!("{from}-{to}-{place}@elbowroom"), &words::staged(&name(room)), from, next(to));
    if !room.address.is_empty() {
        event.location(&room.address);
    }
    if !room.client.is_empty() {
        event.description(&room.client);
    }
    Some(event.done())
}

/// A whole day, or several; `end` is the first day after them.
fn event(id: &str, summary: &str, from: &str, end: Option<String>) -> Event {
    let plain = |day: &str| day.replace('-', "");
    let date = |key: &str, day: &str| Property::new(key, plain(day)).add_parameter("VALUE", "DATE").done();
    let mut event = Event::new();
    event.uid(id).summary(summary);
    event.append_property(Property::new("DTSTAMP", format!("{}T000000Z", plain(from))));
    event.append_property(date("DTSTART", from));
    if let Some(end) = end {
        event.append_property(date("DTEND", &end));
    }
    event.done()
}

/// The day after.
fn next(day: &str) -> Option<String> {
    let day = time::Date::parse(day, &time::format_description::well_known::Iso8601::DATE).ok()?;
    day.next_day().map(|day| day.to_string())
}
