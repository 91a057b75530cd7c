//! Why a run did not do what was asked, and what to do about it.

use std::borrow::Cow;
use std::path::Path;

use elbowroom_model::article::the;

use super::figures::counted;
use super::refused::{NO_REMEDY, remedies as heading};
use crate::process::failure::Failure;
use crate::process::source::{Unreadable, is_scenario};

/// A failure and what to do about it.
pub(crate) fn told(message: &str, remedy: Option<&str>) -> String {
    match remedy {
        Some(remedy) => format!("elbowroom: {message}.\n{remedy}\n"),
        None => format!("elbowroom: {message}.\n"),
    }
}

/// What went wrong, in a sentence without its end.
pub(crate) fn message(failure: &Failure) -> String {
    match failure {
        Failure::CommandLine(error) => error.to_string(),
        Failure::StandardInputTwice => "standard input can stand for one file, not for two".to_owned(),
        Failure::Unreadable { name, why } => format!("cannot read {name}: {}", unreadable(why)),
        Failure::Faults { scenario, faults } => format!("{} in {}", faults.len(), scenario.name),
        Failure::ListFaults { name, faults } => format!("{} in {name}", faults.told.len()),
        Failure::NothingToCarry => "there is no piece to carry in".to_owned(),
        Failure::NotPlaced { names, .. } => not_placed(names),
        Failure::AlreadyThere(name) => format!("{name} is already there, and nothing was written"),
        Failure::WouldWriteInput { output, input } if output == input => {
            format!("{output} is read by this run, and nothing was written")
        }
        Failure::WouldWriteInput { output, input } => {
            format!("{output} is the file {input}, which is read by this run, and nothing was written")
        }
        Failure::Foreign(names) => foreign(names),
        Failure::UnknownEnding { name, .. } => {
            format!("the ending of {name} tells no form that this can be written in, and nothing was written")
        }
        Failure::NoFont { name } => format!("{name} is no font"),
        Failure::Uncreatable { name, why } => format!("cannot write {name}: {why}"),
        Failure::NotWritten { name, why } => format!("cannot write {name}: {why}; nothing is left of it"),
        Failure::NoRooms { name } => format!("there is no scenario in {name}"),
        Failure::NotServed { port: 0, why } => format!("cannot listen on this machine: {why}"),
        Failure::NotServed { port, why } => format!("cannot listen on port {port}: {why}"),
        Failure::NoNetwork => "this machine has no address on a local network that could be found".to_owned(),
        Failure::InUse { name } => format!("another run is at work in {name}"),
        Failure::BrokenOff { name, why } => {
            format!("cannot go on with {name}: {why}; what is solved so far is kept")
        }
        Failure::NoSuchOption { meant, .. } => format!("no option is called {meant}"),
        Failure::SameOption { meant } => format!("option {meant} is named twice"),
        Failure::NothingFits { undecided: 0, .. } => "nothing fits as asked".to_owned(),
        Failure::NothingFits { .. } => {
            "nothing was found that fits as asked, and it is not known whether anything does".to_owned()
        }
        Failure::Drawing(why) => format!("cannot draw the sheet: {why}"),
        Failure::OneSheet => "an SVG or PNG holds one sheet, and both are asked for".to_owned(),
        Failure::TooManyRows { rows, most } => {
            format!("there are {rows} rooms, and a sheet of a workbook holds {most}")
        }
        Failure::NoText { form, .. } => format!("a {form} file cannot be shown at a terminal"),
        Failure::NoSuchCommand(name) => format!("there is no command {name}"),
        Failure::ReaderGone => "the result was not read to its end".to_owned(),
        Failure::Unwritable(why) => format!("cannot write the result: {why}"),
        Failure::Json(why) => format!("cannot put the result into JSON: {why}"),
        Failure::Threads(why) => format!("cannot start the threads: {why}"),
    }
}

/// What to do about it, where that is not plain from the message.
pub(crate) fn remedy(failure: &Failure) -> Option<Cow<'_, str>> {
    let plain = match failure {
        Failure::Unreadable { why: Unreadable::Missing, name } if is_scenario(Path::new(name)) => {
            "Check the name and the folder; `elbowroom new` writes a file to start from."
        }
        Failure::Unreadable { why, .. } => make_readable(why),
        Failure::StandardInputTwice => "Name a file for one of the two.",
        Failure::NothingToCarry => "Give the file `pieces`, or name a list: `--pieces LIST`.",
        Failure::NotPlaced { several_alike, wall, .. } => return Some(give_places(*several_alike, wall).into()),
        Failure::AlreadyThere(_) => "Name another file, or put `--force` to replace that one.",
        Failure::WouldWriteInput { .. } => "Name another file or folder for the result; `--force` does not help here.",
        Failure::Foreign(_) => "Name another folder, or put `--force` to replace what stands there.",
        Failure::UnknownEnding { known, .. } => return Some(known_endings(known).into()),
        Failure::NoFont { .. } => "Name a TTF or OTF file, or a collection of them.",
        Failure::Uncreatable { .. } => "See that the folder is there and can be written to.",
        Failure::NoRooms { .. } => "Scenarios are files that end in .yaml, .yml or .json.",
        Failure::NotServed { .. } => "Leave `--port` off for a free one, or name another.",
        Failure::NoNetwork => "Join a network, or name the address: `--lan=192.0.2.7`.",
        Failure::InUse { .. } => "Let it end, or name another folder.",
        Failure::BrokenOff { .. } => {
            "See that there is room and that the folder can be written to; the same command then goes on from there."
        }
        Failure::NotWritten { .. } => "See that there is room for it, and that it can be written to.",
        Failure::NoSuchOption { options, .. } => return Some(options_there_are(*options).into()),
        Failure::SameOption { .. } => "Name two different options, or three.",
        Failure::NothingFits { undecided, remedies } => return Some(would_help(*undecided, remedies).into()),
        Failure::OneSheet => "Write a PDF, or choose `--sheet client` or `--sheet working`.",
        Failure::TooManyRows { .. } => "Leave `--xlsx` out: what is solved is kept, and rooms.csv holds any number.",
        Failure::NoText { instead, .. } => instead,
        Failure::NoSuchCommand(_) => "`elbowroom --help` lists them.",
        Failure::CommandLine(_)
        | Failure::Faults { .. }
        | Failure::ListFaults { .. }
        | Failure::Drawing(_)
        | Failure::ReaderGone
        | Failure::Unwritable(_)
        | Failure::Json(_)
        | Failure::Threads(_) => return None,
    };
    Some(plain.into())
}

/// Why a file cannot be read.
pub(crate) fn unreadable(why: &Unreadable) -> String {
    match why {
        Unreadable::Missing => "there is no such file".to_owned(),
        Unreadable::Directory => "it is a directory, not a file".to_owned(),
        Unreadable::NoFile => "it is no ordinary file".to_owned(),
        Unreadable::TooLarge => "it is larger than 1 MiB, which no scenario needs to be".to_owned(),
        Unreadable::NotText(byte) => format!("it is not text: byte {byte} belongs to no UTF-8 text"),
        Unreadable::System(why) => why.to_string(),
    }
}

/// What to do about a file that cannot be read.
pub(crate) const fn make_readable(why: &Unreadable) -> &'static str {
    match why {
        Unreadable::Missing => "Check the name and the folder.",
        Unreadable::Directory => "Name a file in it.",
        Unreadable::NoFile => "Put the scenario into a file.",
        Unreadable::TooLarge => "Name the scenario file itself: one room, a few dozen lines.",
        Unreadable::NotText(_) => "Save the file as plain text in UTF-8, not as a document, a picture or UTF-16.",
        Unreadable::System(_) => "See that the file can be read.",
    }
}

/// What the file does not give a place.
fn not_placed(names: &[String]) -> String {
    let names: Vec<String> = names.iter().map(|name| the(name)).collect();
    match names.as_slice() {
        [] => "the file does not say where any seat stands".to_owned(),
        [one] => format!("the file does not say where {one} stands"),
        [all @ .., last] => format!("the file does not say where {} and {last} stand", all.join(", ")),
    }
}

/// How a place is given, by a wall of the room itself where its name can stand there as it is.
fn give_places(several_alike: bool, wall: &str) -> String {
    let is_plain = !wall.is_empty() && wall.chars().all(|letter| letter.is_alphanumeric() || " -".contains(letter));
    let wall = if is_plain { wall } else { "north wall" };
    let rows = if several_alike { " Pieces alike, written as one row with a `count`, need a row each." } else { "" };
    format!(
        "`judge` takes the room as it stands today, so each piece says where it is. At a wall: `place: {{ wall: {wall}, from: \
         58, off: 6 }}`, `from` being the tape from the wall's left end, as you face it, to the nearer end of the piece, \
         and `off` from the wall to its back. Free in the room: `place: {{ at: [x, y], facing: 270 }}`, the middle of its back \
         in plan coordinates, and the degrees that it faces, 0 to the right of the plan, 90 up.{rows} What is not in the room \
         leaves the file, or says `needed: false`."
    )
}

/// Files that no run left where a run is to leave its own.
fn foreign(names: &[String]) -> String {
    let (are, them) = if names.len() == 1 { ("is", "it") } else { ("are", "them") };
    format!("{} {are} there, and no run of `batch` left {them}; nothing was written", names.join(", "))
}

/// Which endings a file may have.
fn known_endings(known: &[String]) -> String {
    let known: Vec<String> = known.iter().map(|ending| format!(".{ending}")).collect();
    format!("Let its name end in {}.", known.join(" or "))
}

/// Which options can be asked for.
fn options_there_are(options: usize) -> String {
    match options {
        1 => "There is one option, 1; `elbowroom rank --json` gives its key.".to_owned(),
        options => format!("There are options 1 to {options}; `elbowroom rank --json` gives their keys."),
    }
}

/// What would help where nothing fits.
fn would_help(undecided: usize, remedies: &[String]) -> String {
    match remedies {
        [] => NO_REMEDY.to_owned(),
        remedies => format!("{}: {}", heading(undecided), remedies.join(" ")),
    }
}

/// How many faults a file has.
pub(crate) fn faults(count: usize, name: &str) -> String {
    let faults = counted(count, "fault", "faults");
    format!("{name}: {faults} to mend first.\n")
}

/// What to do about a fault of a file, and last the name that programs know it by.
pub(crate) fn remedy_and_code(remedy: &str, code: &str) -> String {
    format!("{remedy} ({code})")
}
