//! Which rooms are to be furnished, when, and which come first: a table of one row for each.

use std::path::{Path, PathBuf};

use elbowroom_model::Fault;
use elbowroom_model::listing::{self, Faults, Form, GridRow, MOST_FAULTS};
use elbowroom_solver::stock::Days;

use super::booking_columns::{COLUMNS, OVER_LINES, Places, columns, is_known};
use super::days::{day, written};
use super::store::{at_cell, at_line};
use crate::process::failure::Failure;
use crate::process::listed;
use crate::words::stock_faults as words;

/// Most rows of a table: all of them make one program, which for so many takes minutes.
const MOST_ROWS: usize = 500;
/// The last priority there is.
const LAST_PRIORITY: u32 = 9;
/// Days of a room that gives none: every other room's are the same.
pub(crate) const ANY_DAY: Days = Days { from: 0, to: 0 };

/// A room that is to be furnished.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Booking {
    /// Line of its row; 0 where there is no table.
    pub line: usize,
    /// Its file as the table names it.
    pub source: String,
    /// Its file.
    pub path: PathBuf,
    /// When; `None` where the table gives no days.
    pub days: Option<Days>,
    /// 1 comes before 2.
    pub priority: u32,
    /// What must be served.
    pub must: Must,
    /// Whom it is for; empty where the table does not say.
    pub client: String,
    /// Where it is; empty where the table does not say.
    pub address: String,
}

/// What must be served in a room.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Must {
    /// The pieces that its file says are needed.
    Needed,
    /// Everything.
    All,
    /// Nothing.
    Nothing,
    /// The pieces of these names.
    Named(Vec<String>),
}

/// A table once read.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Bookings {
    /// Its rows.
    pub rows: Vec<Booking>,
    /// Columns that say nothing here.
    pub passed_over: Vec<String>,
}

/// Reads the table at `path`. Either every row gives days, or none does.
pub(crate) fn read(path: &Path) -> Result<Bookings, Failure> {
    let name = path.display().to_string();
    let bytes = listed::bytes_at(path).map_err(|why| Failure::Unreadable { name: name.clone(), why })?;
    let folder = path.parent().unwrap_or(Path::new(""));
    read_bytes(&bytes, Form::of_name(&name), folder).map_err(|faults| Failure::ListFaults { name, faults })
}

/// Reads the bytes of a table; `form`: how it is said to be written.
pub(crate) fn read_bytes(bytes: &[u8], form: Option<Form>, folder: &Path) -> Result<Bookings, Faults> {
    let (table, unread) = listing::table(bytes, form, MOST_ROWS, &is_known).map_err(in_words_of_bookings)?;
    let sheet = unread.sheet.clone();
    let told = |told: Vec<Fault>| Faults { beyond: told.len().saturating_sub(MOST_FAULTS), told: first(told), sheet };
    let (places, passed_over) = match columns(&table) {
        Ok(found) => found,
        Err(faults) => return Err(told(faults)),
    };
    let (mut bookings, mut faults) = (Vec::new(), unread.told);
    for row in &table.rows {
        match (Row { row, places: &places }).booking(folder) {
            Ok(booking) => bookings.push(booking),
            Err(found) => faults.extend(found),
        }
    }
    if bookings.is_empty() && faults.is_empty() {
        faults.push(words::no_bookings());
    }
    if let Some(other) = bookings.iter().position(|booking| booking.days.is_some() != bookings[0].days.is_some())
        && faults.is_empty()
    {
        faults.push(at_line(words::days_for_some(), table.rows[other].line));
    }
    if faults.is_empty() {
        faults.extend(booked_twice(&bookings));
    }
    if faults.is_empty() {
        return Ok(Bookings { rows: bookings, passed_over });
    }
    faults.sort_by(Fault::before);
    let faults = told(faults);
    Err(Faults { beyond: faults.beyond + unread.beyond, ..faults })
}

/// Rooms that are booked again on days on which they are booked already.
fn booked_twice(bookings: &[Booking]) -> Vec<Fault> {
    let days = |booking: &Booking| booking.days.unwrap_or(ANY_DAY);
    let again = |(place, booking): (usize, &Booking)| {
        let mut before = bookings.iter().take(place);
        let first = before.find(|first| first.path == booking.path && days(first).overlap(days(booking)))?;
        let both = days(first).from.max(days(booking).from)..=days(first).to.min(days(booking).to);
        let both = booking.days.map(|_| (written(*both.start()), written(*both.end())));
        Some(at_line(words::booked_twice(&booking.source, first.line, both.as_ref()), booking.line))
    };
    bookings.iter().enumerate().filter_map(again).collect()
}

/// As many faults as are told one by one.
fn first(mut told: Vec<Fault>) -> Vec<Fault> {
    told.truncate(MOST_FAULTS);
    told
}

/// What the reader of tables says of one without rows, in the words of bookings.
fn in_words_of_bookings(mut faults: Faults) -> Faults {
    for fault in faults.told.iter_mut().filter(|fault| fault.code == "empty_file") {
        *fault = words::no_bookings();
    }
    faults
}

/// A row of the table.
struct Row<'a> {
    row: &'a GridRow,
    places: &'a Places,
}

impl Row<'_> {
    fn cell(&self, column: usize) -> &str {
        let place = self.places.get(column).copied().flatten();
        place.and_then(|place| self.row.cells.get(place)).map_or("", |cell| cell.trim())
    }

    /// A fault of what the row has in the column.
    fn at(&self, column: usize, fault: Fault) -> Fault {
        let place = self.places.get(column).copied().flatten().map_or(0, |place| place + 1);
        at_cell(fault, self.row.line, place)
    }

    fn booking(&self, folder: &Path) -> Result<Booking, Vec<Fault>> {
        let mut told: Vec<Fault> = self.broken().collect();
        if !told.is_empty() {
            return Err(told);
        }
        let source = self.cell(0).to_owned();
        if source.is_empty() {
            told.push(self.at(0, words::no_room()));
        }
        let days = self.days().unwrap_or_else(|faults| {
            told.extend(faults);
            None
        });
        let priority = match self.cell(3) {
            "" => Some(1),
            text => text.parse().ok().filter(|priority| (1..=LAST_PRIORITY).contains(priority)),
        };
        if priority.is_none() {
            told.push(self.at(3, words::no_priority(self.cell(3), LAST_PRIORITY)));
        }
        let path = folder.join(&source);
        let (client, address) = (on_one_line(self.cell(5)), on_one_line(self.cell(6)));
        let priority = priority.unwrap_or(1);
        let line = self.row.line;
        let booking = Booking { line, source, path, days, priority, must: must(self.cell(4)), client, address };
        if told.is_empty() { Ok(booking) } else { Err(told) }
    }

    /// The cells that run over several lines and are no text for people.
    fn broken(&self) -> impl Iterator<Item = Fault> + '_ {
        let columns = COLUMNS.iter().enumerate().filter(|(column, _)| !OVER_LINES.contains(column));
        let broken = columns.filter(|(column, _)| self.cell(*column).contains(['\n', '\r']));
        broken.map(|(column, (name, _))| self.at(column, words::line_break(name)))
    }

    fn days(&self) -> Result<Option<Days>, Vec<Fault>> {
        let (from, to) = (self.cell(1), self.cell(2));
        if from.is_empty() && to.is_empty() {
            return Ok(None);
        }
        let read = |column: usize, text: &str| day(text).ok_or_else(|| Box::new(self.at(column, *words::no_day(text))));
        match (read(1, from), read(2, to)) {
            (Ok(first), Ok(last)) if first <= last => Ok(Some(Days { from: first, to: last })),
            (Ok(_), Ok(_)) => Err(vec![self.at(2, *words::days_backward(from, to))]),
            (first, last) => Err([first.err(), last.err()].into_iter().flatten().map(|fault| *fault).collect()),
        }
    }
}

/// The lines of a cell, parted by commas.
fn on_one_line(cell: &str) -> String {
    let lines = cell.split(['\n', '\r']).map(|line| line.trim().trim_end_matches(',')).filter(|line| !line.is_empty());
    lines.collect::<Vec<_>>().join(", ")
}

fn must(text: &str) -> Must {
    match text.to_lowercase().as_str() {
        "" | "needed" => Must::Needed,
        "all" => Must::All,
        "none" => Must::Nothing,
        _ => Must::Named(text.split('|').map(|name| name.trim().to_owned()).filter(|name| !name.is_empty()).collect()),
    }
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::{Must, read_bytes};

    #[test]
    fn a_table_is_read_by_the_names_of_its_columns() {
        let text = "Must have;Room;from;To;priority\nsofa | books;a.yaml;2026-03-01;2026-03-02;2\n;../b.yaml;2026-03-01;2026-03-01;\n";
        let read = read_bytes(text.as_bytes(), None, Path::new("rooms")).unwrap().rows;
        assert_eq!((read[0].source.as_str(), read[0].priority), ("a.yaml", 2));
        assert_eq!(read[0].must, Must::Named(vec!["sofa".to_owned(), "books".to_owned()]));
        assert_eq!(
            (read[1].path.as_path(), read[1].priority, &read[1].must),
            (Path::new("rooms/../b.yaml"), 1, &Must::Needed)
        );
        assert_eq!(read[0].days.map(|days| days.to - days.from), Some(1));
    }

    #[test]
    fn natural_heads_are_understood_and_near_ones_told() {
        let read =
            |head: &str| read_bytes(format!("{head}\na.yaml,2026-05-03,2026-05-10\n").as_bytes(), None, Path::new(""));
        for head in ["Room,Start date,End date", "scenario file,From_date,to date", "rooms,begins,ends"] {
            let rows = read(head).unwrap().rows;
            assert_eq!(rows[0].days.map(|days| days.to - days.from), Some(7), "{head}");
        }
        for (head, nearest) in
            [("room,start of let,to", "`from`"), ("room,from,until noon of", "`to`"), ("room,form,to", "`from`")]
        {
            let told = read(head).unwrap_err().told;
            assert!(told[0].code == "unknown_column" && told[0].remedy.contains(nearest), "{head}: {told:?}");
        }
        // What is there already is not told of another.
        assert_eq!(read("room,from,to").unwrap().passed_over, Vec::<String>::new());
    }

    #[test]
    fn columns_of_ones_own_addresses_on_lines_and_days_with_points_are_taken() {
        let text = "room,from,to,Notes,address\na.yaml,3.5.2026,10.5.2026,\"ring\ntwice\",\"4 Mill Row,\r\nLodewater\"\nb.yaml,2026-05-03,2026-05-10,,\n";
        let read = read_bytes(text.as_bytes(), None, Path::new("")).unwrap();
        assert_eq!(read.passed_over, ["notes"]);
        assert_eq!(read.rows[0].address, "4 Mill Row, Lodewater");
        assert_eq!(read.rows[0].days, read.rows[1].days);
    }

    #[test]
    fn every_fault_is_told_with_its_line() {
        let faults = |text: &str| {
            let told = read_bytes(text.as_bytes(), None, Path::new("")).unwrap_err().told;
            told.iter().map(|fault| (fault.code, fault.place.map_or(0, |place| place.line))).collect::<Vec<_>>()
        };
        let bad =
            "room,from,to,priority\na,2026-03-02,2026-03-01,1\n,2026-03-01,2026-03-01,1\na,1.3.,2026-03-01,0\na,b\n";
        assert_eq!(
            faults(bad),
            [("bad_days", 2), ("missing_room", 3), ("bad_day", 4), ("bad_priority", 4), ("wrong_count", 5)]
        );
        assert_eq!(faults("rom,from\n"), [("unknown_column", 1), ("missing_column", 1)]);
        assert_eq!(faults("room,from,to,piority\na,2026-03-01,2026-03-01,2\n"), [("unknown_column", 1)]);
        assert_eq!(faults("room,from,to\na,soon,later\n"), [("bad_day", 2), ("bad_day", 2)]);
        assert_eq!(faults("room,from,to\n\"a\nb\",2026-03-01,2026-03-01\n"), [("line_break", 2)]);
        assert_eq!(faults("room,room\n"), [("column_twice", 1)]);
        assert_eq!(faults("room\n"), [("empty_file", 0)]);
        assert_eq!(faults(""), [("empty_file", 0)]);
        assert_eq!(faults("from\n2026-03-01\n"), [("missing_column", 1)]);
        assert_eq!(faults("room,from,to\n\"a,2026-03-01,2026-03-01\nb,,\n"), [("wrong_quoting", 2)]);
        assert_eq!(faults("room,from,to\na,2026-03-01,2026-03-01\nb,,\n"), [("days_for_some", 3)]);
    }
}
