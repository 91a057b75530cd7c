//! Prose of what a crew takes along: load lists, what comes back, the calendar.

use elbowroom_model::Unit;

use super::figures::counted;
use super::unit::in_words;

/// Over what goes out.
pub(crate) const OUT: &str = "Out of the store";
/// Over what comes back.
pub(crate) const BACK: &str = "Back to the store";
/// Over what is collected to go on to another room the day after.
pub(crate) const COLLECTED: &str = "Collected for another room: it stays on the van until tomorrow";
/// Over what comes from another room.
pub(crate) const DELIVERED: &str = "Delivered from another room: on the van since yesterday";
/// Over what stays where it is.
pub(crate) const STAYS: &str = "Stays";
/// Of what stays.
pub(crate) const BOOKED_ON: &str = "In rooms that are booked again from this day on: nothing of it is carried.";
/// Of a day on which nothing is carried.
pub(crate) const NOTHING_CARRIED: &str = "Nothing is carried.";
/// Over the rooms of a day.
pub(crate) const STOPS: &str = "Rooms of the day";
/// Over cautions.
pub(crate) const CAUTIONS: &str = "Before you lift";
/// What the store is called where a room could stand.
pub(crate) const STORE: &str = "the store";
/// Of what the list does not say.
pub(crate) const UNKNOWN: &str = "not given";
/// Cautions of a crew (common practice, no source).
pub(crate) const CAUTIONS_OF_CREW: [&str; 4] = [
    "What the list gives for one person is a guide: two take whatever either of them would rather not lift alone.",
    "Measure the way in before loading, and keep exits and stairs free while carrying.",
    "Tie the load so that nothing can shift; nobody rides with it.",
    "Fix tall storage and televisions to the wall where they come to stand.",
];
/// Heads of a load list.
pub(crate) const HEADS: [&str; 7] = ["Loaded", "Piece", "Count", "Where", "Size", "kg each", "People"];
/// Head of where pieces go.
pub(crate) const TO: &str = "To";
/// Head of where they come from.
pub(crate) const FROM: &str = "From";
/// Head of where they stay.
pub(crate) const IN: &str = "In";
/// Head of both.
pub(crate) const FROM_TO: &str = "From, to";
/// Title of what comes back.
pub(crate) const RETURNS: &str = "What comes back when";
/// Heads of what comes back.
pub(crate) const RETURN_HEADS: [&str; 5] = ["Day", "Piece", "Count", "From", "To"];

/// The title of a day's list.
pub(crate) fn title(day: &str) -> String {
    format!("Load list, {day}")
}

/// The unit of sizes.
pub(crate) fn sizes_in(unit: Unit) -> String {
    let unit = in_words(unit);
    format!(
        "Sizes in {unit}, width x return x depth, then height where it is given. The heaviest come first; what has no mass given comes last."
    )
}

/// How much is on a list; what is not known is counted apart.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Totals {
    /// How many pieces.
    pub pieces: u32,
    /// Of those whose mass is known, kg.
    pub mass: f64,
    /// Pieces whose mass is not.
    pub no_mass: u32,
    /// Of those whose volume is known, m3.
    pub volume: f64,
    /// Pieces whose volume is not.
    pub no_volume: u32,
    /// Pieces that two carry, or more.
    pub two: u32,
    /// Pieces of which it is not known.
    pub no_people: u32,
}

/// How much is on a list.
pub(crate) fn totals(of: &Totals) -> String {
    let mut parts = Vec::new();
    parts.push(match of.no_mass {
        0 => format!("{:.0} kg", of.mass),
        all if all == of.pieces => "mass not given".to_owned(),
        some => format!("{:.0} kg and {} of unknown mass", of.mass, count_of(some)),
    });
    parts.push(match of.no_volume {
        0 => format!("{:.1} m3", of.volume),
        all if all == of.pieces => "volume not known (no heights)".to_owned(),
        some => format!("{:.1} m3 and {} of unknown volume", of.volume, count_of(some)),
    });
    parts.push(match (of.two, of.no_people) {
        (two, 0) => format!("{} for two people or more", count_of(two)),
        (_, all) if all == of.pieces => "how many carry each not given".to_owned(),
        (two, some) => format!("{} for two people or more, {} not given", count_of(two), count_of(some)),
    });
    format!("{}: {}.", count_of(of.pieces), parts.join("; "))
}

/// From one room to another.
pub(crate) fn from_to(from: &str, to: &str) -> String {
    format!("{from} to {to}")
}

fn count_of(count: u32) -> String {
    counted(count as usize, "piece", "pieces")
}

/// A room with whom it is for and where it is.
pub(crate) fn stop(room: &str, client: &str, address: &str) -> String {
    let told = |what: &str, text: &str| {
        if text.is_empty() { format!("{what} {UNKNOWN}") } else { format!("{what} {text}") }
    };
    format!("{room}: {}, {}", told("client", client), told("address", address))
}

/// A staged room in a calendar.
pub(crate) fn staged(room: &str) -> String {
    format!("Staged: {room}")
}

/// What is carried on a day, in a calendar.
pub(crate) fn load_day(counts: [u32; 4]) -> String {
    let mut parts = Vec::new();
    let whats = ["out", "back", "collected for another room", "delivered from another room"];
    for (count, what) in counts.into_iter().zip(whats) {
        if count > 0 {
            parts.push(format!("{} {what}", count_of(count)));
        }
    }
    format!("Van: {}", parts.join(", "))
}

/// Where the files for the crew are.
pub(crate) fn files_in(folder: &str, days: usize) -> String {
    format!(
        "In {folder}: {} to print (load list, plans, tape sheets), loads.csv, returns.txt, calendar.ics.",
        counted(days, "day", "days")
    )
}
