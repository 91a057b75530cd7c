//! The program's prose, all of it that is not the model's or the solver's: headings, sentences, labels.

pub(crate) mod apart;
pub(crate) mod batch;
pub(crate) mod card;
pub(crate) mod changed;
pub(crate) mod check;
pub(crate) mod compare;
pub(crate) mod leaf;
pub(crate) mod list;
pub(crate) mod plan;
pub(crate) mod rank;
pub(crate) mod report;
pub(crate) mod shop;
pub(crate) mod stock;
pub(crate) mod tape;
pub(crate) mod way;
pub(crate) mod work;

use std::fmt::Write;

use crate::exit::Exit;

/// How a bar of progress reads (the library's own template language).
pub(crate) const PROGRESS: &str = "{pos} of {len} arrangements solved {wide_bar} {elapsed} ";

/// How a bar over many rooms reads, their number being known.
pub(crate) const ROOMS_PROGRESS: &str = "{pos} of {len} rooms {wide_bar} {rate} a second, {eta} left ";

/// The same, their number not being known.
pub(crate) const ROOMS_PROGRESS_OPEN: &str = "{pos} rooms {spinner} {rate} a second, {elapsed} ";

/// How a count of what was tried reads.
pub(crate) const TRIED_PROGRESS: &str = "{pos} candidates and sets tried {elapsed} ";

/// What `--help` says of exit codes.
pub(crate) fn exit_codes() -> String {
    Exit::ALL.iter().fold("Exit codes:".to_owned(), |mut text, exit| {
        let _ = write!(text, "\n  {}  {}", exit.code(), exit.meaning());
        text
    })
}

/// A failure and what to do about it.
pub(crate) fn failure(message: &str, remedy: Option<&str>) -> String {
    match remedy {
        Some(remedy) => format!("elbowroom: {message}.\n{remedy}\n"),
        None => format!("elbowroom: {message}.\n"),
    }
}

/// Where a plan would go to a terminal.
pub(crate) const SVG_INSTEAD: &str = "Name a file to write with `-o`, or choose `--format svg`.";
/// Where options side by side on a sheet would.
pub(crate) const TEXT_INSTEAD: &str = "Name a file to write with `-o`, or leave `--format` off for text.";
/// Where a tape sheet or a card would.
pub(crate) const LEAF_INSTEAD: &str = "Name a file to write with `-o`, or choose `--format text` or `--format html`.";

/// Which options can be asked for.
pub(crate) fn options_there_are(options: usize) -> String {
    match options {
        1 => "There is one option, 1; `elbowroom rank --json` gives its key.".to_owned(),
        options => format!("There are options 1 to {options}; `elbowroom rank --json` gives their keys."),
    }
}

/// What would help where nothing fits.
pub(crate) fn would_help(remedies: &[String]) -> String {
    match remedies {
        [] => rank::NO_REMEDY.to_owned(),
        remedies => format!("{}: {}", rank::REMEDIES, remedies.join(" ")),
    }
}

/// How many faults a file has.
pub(crate) fn faults(count: usize, name: &str) -> String {
    let faults = counted(count, "fault", "faults");
    format!("{name}: {faults} to mend first.\n")
}

/// What `new` says once the file is there.
pub(crate) fn wrote(name: &str) -> String {
    format!("Wrote {name}. Put your own measurements in, then: elbowroom check {name}\n")
}

/// `1 wall`, `4 walls`.
pub(crate) fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

/// An area in square metres.
pub(crate) fn area(square_metres: f64) -> String {
    format!("{square_metres:.1} m2")
}

/// Over what a reader must be told.
pub(crate) const NOTICES: &str = "Notices";
