//! The columns of a table of bookings: what each may be called, and where it stands.

use elbowroom_model::listing::Grid;
use elbowroom_model::{Fault, is_a_slip, quote};

use super::store::at_line;
use crate::words::stock_faults as words;

/// The columns: what each is called, and what else it may be called.
pub(super) const COLUMNS: [(&str, &[&str]); 7] = [
    ("room", &["file", "scenario", "room file", "scenario file", "file name", "rooms", "files"]),
    ("from", &["start", "first day", "start date", "start day", "from date", "date from", "begin", "starts", "begins"]),
    ("to", &["until", "end", "last day", "end date", "end day", "to date", "date to", "till", "through", "ends"]),
    ("priority", &["priorities"]),
    ("must", &["must have", "must haves"]),
    ("client", &["customer", "client name", "customer name", "clients", "customers"]),
    ("address", &["street address", "addresses"]),
];
/// The columns whose cells may run over several lines: text for people.
pub(super) const OVER_LINES: [usize; 2] = [5, 6];

/// Whether a head means a column.
pub(super) fn is_known(head: &str) -> bool {
    column(&plain(head)).is_some()
}

/// A head as it is compared.
fn plain(head: &str) -> String {
    head.trim().to_lowercase().replace(['_', '-'], " ")
}

/// The column that a plain head means.
fn column(head: &str) -> Option<usize> {
    COLUMNS.iter().position(|(name, also)| *name == head || also.contains(&head))
}

/// Words that say nothing of which day, or of whose name, is meant.
const OF_ANY: [&str; 6] = ["date", "day", "name", "file", "first", "last"];

/// Whether a head will be meant for a column: a slip of what that may be called, or with one of its words.
fn is_near(head: &str, name: &str, also: &[&str]) -> bool {
    let mut called = std::iter::once(name).chain(also.iter().copied());
    let shares = |called: &str| {
        let telling = called.split(' ').filter(|word| word.len() > 2 && !OF_ANY.contains(word));
        telling.into_iter().any(|word| head.split(' ').any(|of_head| of_head == word))
    };
    called.any(|called| is_a_slip(head, called) || shares(called))
}

/// The place of each column among the heads.
pub(super) type Places = [Option<usize>; 7];

/// The place of each column among the heads, and the heads that say nothing here. One that will be a slip for a column which
/// is not there is a fault.
pub(super) fn columns(table: &Grid) -> Result<(Places, Vec<String>), Vec<Fault>> {
    let line = table.header_line;
    let (mut told, mut others) = (Vec::new(), Vec::new());
    let mut places = [None; 7];
    for (place, head) in table.headers.iter().enumerate() {
        let head = plain(head);
        match column(&head).and_then(|column| places.get_mut(column)) {
            Some(free @ None) => *free = Some(place),
            Some(_) => told.push(at_line(words::column_twice(&head), line)),
            None if head.is_empty() => {}
            None => others.push(head),
        }
    }
    let free = || COLUMNS.iter().zip(&places).filter(|(_, place)| place.is_none()).map(|(column, _)| column);
    let meant = |head: &String| free().find(|(name, also)| is_near(head, name, also)).map(|(name, _)| *name);
    let all = COLUMNS.map(|(name, _)| name).join(", ");
    let mut passed_over = Vec::new();
    for head in others {
        match meant(&head) {
            Some(name) => told.push(at_line(words::no_column(&head, name, &all), line)),
            None => passed_over.push(head),
        }
    }
    if places[0].is_none() {
        told.push(at_line(words::no_room_column(), line));
    }
    let passed_over = passed_over.iter().map(|head| quote::clean(head)).collect();
    if told.is_empty() { Ok((places, passed_over)) } else { Err(told) }
}
