//! Whether the quotes of a separated table open and close where they may (RFC 4180), line by line.

use super::faults::FaultList;

/// Where in a cell the reading stands.
enum At {
    /// Before the first character of a cell.
    Start,
    /// In a cell without quotes: a quote in it (`58"`) is an inch mark.
    Bare,
    /// Inside quotes.
    Quoted,
    /// After a quote inside quotes: the end, or the first of a doubled one.
    Closed,
}

/// Tells every quote that is closed in the middle of a cell, or never; `text` begins on line `first`. Whether all is well.
pub(super) fn sound(text: &str, first: usize, delimiter: u8, told: &mut FaultList) -> bool {
    let before = told.count();
    let (mut at, mut line, mut opened) = (At::Start, first, first);
    for byte in text.bytes() {
        let ends_cell = byte == delimiter || byte == b'\n';
        at = match at {
            At::Start if byte == b'"' => {
                opened = line;
                At::Quoted
            }
            At::Start | At::Bare if ends_cell => At::Start,
            At::Start | At::Bare => At::Bare,
            At::Quoted if byte == b'"' => At::Closed,
            At::Quoted => At::Quoted,
            At::Closed if byte == b'"' => At::Quoted,
            At::Closed if ends_cell => At::Start,
            At::Closed => {
                let message = format!("A quote closes in the middle of a cell that was opened on line {opened}.");
                let remedy =
                    "Write a quote inside a quoted cell twice (`\"\"`), or mend the cell before it.".to_owned();
                told.add(line, "wrong_quoting", "", message, remedy);
                At::Bare
            }
        };
        line += usize::from(byte == b'\n');
    }
    if matches!(at, At::Quoted) {
        let message = "A quote opens here and is never closed.".to_owned();
        told.add(opened, "wrong_quoting", "", message, "Close it, or write it twice if it is meant.".to_owned());
    }
    told.count() == before
}
