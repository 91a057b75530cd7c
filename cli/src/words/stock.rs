//! Prose of one stock for many rooms.

use std::fmt::Write;

use elbowroom_model::article::{a, capital};
use elbowroom_model::quote::quoted;
use elbowroom_model::{Brief, Fault, Hand};
use elbowroom_solver::stock::{By, OneMore, Proven, Served, Tried};

use super::figures::counted;

/// Over what is short.
pub(crate) const SHORT: &str = "Short";
/// Over what one more piece would bring.
pub(crate) const ONE_MORE: &str = "One more piece";
/// Of a room that nothing fits in.
pub(crate) const NO_OPTION: &str = "Nothing fits in the room as asked; `elbowroom rank` says what would help.";
/// Of a room in which nothing was found that fits.
pub(crate) const NO_OPTION_FOUND: &str = "Nothing was found that fits in the room as asked; it is not known whether anything \
                                          does. `elbowroom rank` says what helped where it was tried.";
/// Of a room that gets nothing.
pub(crate) const NOTHING_TO_PICK: &str = "Nothing to pick.";
/// At the foot.
pub(crate) const CAUTION: &str = "Measure the way in before loading. Heavy pieces are for two people or a trolley; fix tall storage and \
    televisions to the wall where they come to stand; keep exits free, and three feet between heaters and anything that burns.";

/// How many pieces the bookings ask for, and how many of them come out of the stock.
pub(crate) fn summary(bookings: usize, served: usize, asked: usize, at_fault: usize) -> String {
    let mut text = format!(
        "{}: {served} of {} asked for come out of the stock",
        counted(bookings, "booking", "bookings"),
        counted(asked, "piece", "pieces")
    );
    if at_fault > 0 {
        let _ = write!(text, "; {at_fault} at fault");
    }
    text
}

/// Must-haves by priority.
pub(crate) fn must(served: &[Served]) -> String {
    let one = |served: &Served| format!("{} of {}", served.count.found, served.of);
    match served {
        [] => "No must-haves.".to_owned(),
        [only] => format!("Must-haves served: {}.", one(only)),
        several => {
            let told: Vec<String> =
                several.iter().map(|served| format!("{} of priority {}", one(served), served.priority)).collect();
            format!("Must-haves served: {}.", told.join(", "))
        }
    }
}

/// That it is proven, or how far it may be from the best.
pub(crate) fn proof(proven: bool, must: &[Served], points: Proven) -> String {
    if proven {
        return "Proven: no other assignment serves more must-haves, the first priority first, nor brings more points."
            .to_owned();
    }
    let mut text = "Not proven the best:".to_owned();
    for served in must.iter().filter(|served| !served.count.is_proven()) {
        let _ =
            write!(text, " at most {} must-haves of priority {} can be served;", served.count.at_most, served.priority);
    }
    let share = (points.at_most - points.found) as f64 / (points.at_most.max(1)) as f64;
    let _ = write!(text, " points lie within {:.2} % of the most there can be.", share * 100.0);
    text
}

/// Over the pick list.
pub(crate) fn to_pick(unit: &str) -> String {
    format!("To pick, by day and room (sizes in {unit})")
}

/// A booking.
pub(crate) fn booking(from: Option<&str>, to: Option<&str>, name: Option<&str>, source: &str) -> String {
    let days = match (from, to) {
        (Some(from), Some(to)) if from == to => format!("{from}: "),
        (Some(from), Some(to)) => format!("{from} to {to}: "),
        _ => String::new(),
    };
    match name {
        Some(name) => format!("{days}{name} ({source})"),
        None => format!("{days}{source}"),
    }
}

/// The arrangement that pieces stand in.
pub(crate) fn arrangement(rank: usize, title: &str) -> String {
    format!("option {rank}: {title}")
}

/// A room that is short of something.
pub(crate) fn short_room(from: Option<&str>, source: &str) -> String {
    match from {
        Some(from) => format!("{from} {source}"),
        None => source.to_owned(),
    }
}

/// A piece that is short.
pub(crate) fn short_piece(name: &str, must: bool) -> String {
    if must { format!("{name} (must)") } else { name.to_owned() }
}

/// Why a piece is short; `None` where something serves.
pub(crate) const fn why_short(by: By) -> Option<&'static str> {
    match by {
        By::Stock { .. } => None,
        By::NoOption => Some("nothing fits in the room as asked"),
        By::NotDecided => Some("it is not known whether anything fits in the room as asked"),
        By::NoneOfKind => Some("the stock has none of the kind"),
        By::AllTaken => Some("what fits is in other rooms, or out, on some of these days"),
        By::NoneFits => Some("none of the stock fits in this arrangement"),
    }
}

/// One more piece: `like` a row of the stock of that name, or any of these sizes.
pub(crate) fn which(best: &OneMore, like: Option<&str>, size: &str, unit: &str) -> String {
    let hand = best.hand.map_or("", |hand| match hand {
        Hand::Left => ", its return on the left as one sits",
        Hand::Right => ", its return on the right as one sits",
    });
    match like {
        Some(name) => format!("One more {name}, {size} {unit}{hand},"),
        None => format!("{} of {size} {unit}{hand}", capital(&a(&best.kind.words()))),
    }
}

/// What one more piece would bring; at the least where the assignment is not proven.
pub(crate) fn one_more(which: &str, best: &OneMore, priorities: &[u32], tried: &Tried, proven: bool) -> String {
    let mut brings = Vec::new();
    for (more, priority) in best.must.iter().zip(priorities).filter(|(more, _)| **more != 0) {
        let of = if priorities.len() > 1 { format!(" of priority {priority}") } else { String::new() };
        let count = usize::try_from(more.abs()).unwrap_or_default();
        let sign = if *more > 0 { "more" } else { "fewer" };
        brings.push(format!("{}{of} {sign}", counted(count, "must-have", "must-haves")));
    }
    brings.push(format!("{:+} points", best.points));
    format!(
        "{which} would bring most{}: {}. {}",
        if proven { "" } else { ", at least" },
        brings.join(", "),
        how_many(tried)
    )
}

/// That no piece would bring anything.
pub(crate) fn no_one_more(tried: &Tried, proven: bool) -> String {
    match tried.of {
        0 => "Nothing is short that one more piece could serve.".to_owned(),
        _ if !proven => format!("None is certain to bring anything. {}", how_many(tried)),
        _ => format!("None would bring anything. {}", how_many(tried)),
    }
}

fn how_many(tried: &Tried) -> String {
    let how_many = if tried.tried < tried.of {
        format!("{} of {}, must-haves and small sizes first", tried.tried, tried.of)
    } else {
        format!("{} in all", tried.of)
    };
    format!(
        "Tried, {how_many}: the largest sizes that fit where something is short, and one more of each in stock where \
         several alike are. Two more at once, or a larger piece where one stands already, are not tried."
    )
}

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

/// A day that is none.
pub(crate) fn no_day(text: &str) -> Box<Fault> {
    let message =
        if text.is_empty() { "A day is left out.".to_owned() } else { format!("`{}` is no day.", quoted(text)) };
    Box::new(fault("bad_day", None, message, "Write days as 2026-03-14, `from` and `to` both."))
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

/// A cell over several lines.
pub(crate) fn line_break() -> Fault {
    fault("line_break", None, "A cell runs over several lines.".to_owned(), "See that every quote is closed.")
}

/// A column that is not known.
pub(crate) fn no_column(head: &str, all: &str) -> Fault {
    fault(
        "unknown_column",
        None,
        format!("There is no column `{}`.", quoted(head)),
        &format!("The columns are: {all}."),
    )
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
        "Put a header over the table: room, from, to, priority, must.",
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
