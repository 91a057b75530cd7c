//! Prose of what is wrong with a store's list or a table of bookings.

use elbowroom_model::quote::quoted;
use elbowroom_model::{Brief, Fault};

/// A span of days that is none.
pub(crate) fn no_span(name: &str, span: &str) -> Box<Fault> {
    let remedy = "Write 2026-03-01..2026-03-14, several parted by `;`, and (2) after one when two are out and not all.";
    Box::new(fault(
        "bad_days",
        Some(name),
        format!("{name} is out on `{}`, which is no span of days.", quoted(span)),
        remedy,
    ))
}

/// A span of days on which more of a piece are out than there are, or none.
pub(crate) fn not_so_many(name: &str, span: &str, count: u32) -> Box<Fault> {
    let remedy = format!("The number in brackets is how many are out, 1 to {count}; leave it off where all are.");
    let message = format!("{name} is out on `{}`, and the stock has {count} of it.", quoted(span));
    Box::new(fault("bad_days", Some(name), message, &remedy))
}

/// A value that is none.
pub(crate) fn no_value(name: &str, text: &str, why: &str) -> Box<Fault> {
    Box::new(fault(
        "bad_value",
        Some(name),
        format!("The value of {name}, `{}`, {why}.", quoted(text)),
        "Write an amount, as 1250.00.",
    ))
}

/// A mass that is none.
pub(crate) fn no_mass(name: &str, text: &str) -> Box<Fault> {
    let message = format!("The mass of {name}, `{}`, is no figure in kilograms.", quoted(text));
    Box::new(fault(
        "bad_mass",
        Some(name),
        message,
        "Write kilograms, as 48 or 48.5, under `mass (kg)`, or leave it empty.",
    ))
}

/// A number of people that is none.
pub(crate) fn no_people(name: &str, text: &str) -> Box<Fault> {
    let message = format!("{name} is carried by `{}`, which is no number of people.", quoted(text));
    Box::new(fault(
        "bad_people",
        Some(name),
        message,
        "Write a whole number from 1 to 20 under `people`, or leave it empty.",
    ))
}

/// A day that is none.
pub(crate) fn no_day(text: &str) -> Box<Fault> {
    let message =
        if text.is_empty() { "A day is left out.".to_owned() } else { format!("`{}` is no day.", quoted(text)) };
    Box::new(fault("bad_day", None, message, "Write days as 2026-03-14 or 14.3.2026, `from` and `to` both."))
}

/// Days that run backward.
pub(crate) fn days_backward(from: &str, to: &str) -> Box<Fault> {
    Box::new(fault(
        "bad_days",
        None,
        format!("{from} comes after {to}."),
        "Give the first day as `from`, the last as `to`.",
    ))
}

/// Days in some rows and not in others.
pub(crate) fn days_for_some() -> Fault {
    fault(
        "days_for_some",
        None,
        "Some rows give days and others do not.".to_owned(),
        "Give every row its days, or none.",
    )
}

/// A room that is booked on line `first` already; `both`: the first and the last of the days that both are for.
pub(crate) fn booked_twice(source: &str, first: usize, both: Option<&(String, String)>) -> Fault {
    let days = match both {
        Some((from, to)) if from == to => format!(" for {from}"),
        Some((from, to)) => format!(" for days from {from} to {to}"),
        None => String::new(),
    };
    fault(
        "booked_twice",
        Some(source),
        format!("{} is booked{days} on line {first} already: it would be furnished twice.", quoted(source)),
        "Leave one of the two out, or let the second begin the day after the first ends.",
    )
}

/// A priority that is none.
pub(crate) fn no_priority(text: &str, last: u32) -> Fault {
    fault(
        "bad_priority",
        None,
        format!("`{}` is no priority.", quoted(text)),
        &format!("Give a whole number from 1, which comes first, to {last}."),
    )
}

/// A row without a room.
pub(crate) fn no_room() -> Fault {
    fault("missing_room", None, "The row names no room.".to_owned(), "Name the room's scenario file under `room`.")
}

/// A cell over several lines in a column that has none.
pub(crate) fn line_break(column: &str) -> Fault {
    let message = format!("The cell under `{column}` runs over several lines.");
    fault("line_break", None, message, "Write it on one line, and see that every quote is closed.")
}

/// A column that is not known; `nearest`: what it will be meant for.
pub(crate) fn no_column(head: &str, nearest: &str, all: &str) -> Fault {
    fault(
        "unknown_column",
        None,
        format!("There is no column `{}`.", quoted(head)),
        &format!("Call it `{nearest}` if that is what it tells. The columns are: {all}."),
    )
}

/// A piece whose value names a currency.
pub(crate) struct Valued<'a> {
    /// What it is called.
    pub(crate) name: &'a str,
    /// What its value is in.
    pub(crate) currency: &'a str,
}

/// A value that names no currency beside another that does.
pub(crate) fn no_currency(name: &str, text: &str, of: &Valued<'_>) -> Box<Fault> {
    let message = format!(
        "The value of {}, `{}`, names no currency; that of {} has `{}`.",
        quoted(name),
        quoted(text),
        quoted(of.name),
        quoted(of.currency)
    );
    Box::new(fault("no_currency", Some(name), message, "Write the currency beside every value, or beside none."))
}

/// Values in two currencies.
pub(crate) fn two_currencies(name: &str, own: &str, of: &Valued<'_>) -> Box<Fault> {
    let message = format!(
        "The value of {} is in `{}`, that of {} in `{}`.",
        quoted(name),
        quoted(own),
        quoted(of.name),
        quoted(of.currency)
    );
    Box::new(fault("two_currencies", Some(name), message, "Give all values in one currency."))
}

/// A column twice.
pub(crate) fn column_twice(head: &str) -> Fault {
    fault("column_twice", None, format!("The column `{}` is there twice.", quoted(head)), "Leave one of them out.")
}

/// No column for rooms.
pub(crate) fn no_room_column() -> Fault {
    fault(
        "missing_column",
        None,
        "There is no column `room`.".to_owned(),
        "Put a header over the table: room, from, to, priority, must, client, address.",
    )
}

/// A table without rows.
pub(crate) fn no_bookings() -> Fault {
    fault("empty_file", None, "The table has no rows.".to_owned(), "Write a row for each room that is to be furnished.")
}

/// A must-have that the room does not ask for.
pub(crate) fn no_piece(name: &str, brief: &Brief) -> Fault {
    let all: Vec<&str> = brief.pieces.iter().map(|piece| piece.name.as_str()).collect();
    let remedy = format!("Its pieces are: {}. Several are parted by `|`.", all.join(", "));
    fault("unknown_piece", Some(name), format!("The room asks for no {}, which it must have.", quoted(name)), &remedy)
}

fn fault(code: &'static str, item: Option<&str>, message: String, remedy: &str) -> Fault {
    Fault { code, item: item.map(str::to_owned), message, remedy: remedy.to_owned(), place: None }
}
