//! Tables of bookings with something wrong somewhere: read to the last row, or refused with every fault in its line.

use std::path::Path;

use super::mutation::Draw;
use super::rows;
use crate::stock::bookings::{Booking, Bookings, Must, read_bytes};
use crate::stock::days::{away, written};

/// Faults of a table as a whole: there is no line to them.
const OF_THE_WHOLE: [&str; 2] = ["empty_file", "too_many"];

/// The table written down again.
fn table(bookings: &[Booking]) -> String {
    let quoted = |cell: &str| format!("\"{}\"", cell.replace('"', "\"\""));
    let row = |booking: &Booking| {
        let days = booking.days.map_or_else(Default::default, |days| (written(days.from), written(days.to)));
        let must = match &booking.must {
            Must::Needed => "needed".to_owned(),
            Must::All => "ALL".to_owned(),
            Must::Nothing => "none".to_owned(),
            Must::Named(names) => format!("|{}|", names.join("|")),
        };
        let cells = [booking.source.clone(), days.0, days.1, booking.priority.to_string(), must];
        cells.map(|cell| quoted(&cell)).join(";") + "\r\n"
    };
    std::iter::once("File;Start;Until;Priority;Must have\n".to_owned()).chain(bookings.iter().map(row)).collect()
}

/// The same wherever they stood: empty lines are not written down again.
fn without_lines(bookings: Vec<Booking>) -> Vec<Booking> {
    bookings.into_iter().map(|booking| Booking { line: 0, ..booking }).collect()
}

/// The table is read to its last row, or refused with every fault in its line.
///
/// # Panics
/// Where it is not.
pub(super) fn check(bytes: &[u8], _: &mut Draw) {
    let text = rows::text_of(bytes);
    let lines = text.split('\n').count();
    let _ = away(&text, 3);
    match read_bytes(bytes, None, Path::new("rooms")) {
        Ok(Bookings { rows: bookings, .. }) => {
            assert!(rows::counts(&text).contains(&bookings.len()), "{} rows are read", bookings.len());
            let again = read_bytes(table(&bookings).as_bytes(), None, Path::new("rooms"));
            assert_eq!(again.map(|again| without_lines(again.rows)), Ok(without_lines(bookings)), "reads otherwise");
        }
        Err(faults) => {
            assert!(!faults.told.is_empty(), "refused without a fault");
            for fault in faults.told {
                assert!(fault.message.len() < 2000 && !fault.remedy.is_empty(), "tells {fault:?}");
                let has_line = fault.place.is_some_and(|place| (1..=lines).contains(&place.line));
                let of_the_whole = OF_THE_WHOLE.contains(&fault.code) || fault.message.contains("UTF-16");
                assert!(has_line || (fault.place.is_none() && of_the_whole), "of {lines} lines: {fault:?}");
            }
        }
    }
}

#[test]
fn bookings_with_something_wrong_are_read_whole_or_refused() {
    super::mutation::fuzz("bookings", 6_000, check);
}
