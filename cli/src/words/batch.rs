//! Prose of many rooms.

use std::fmt::Write;

use elbowroom_model::Fault;
use elbowroom_model::quote::quoted;

use super::failure::{self, make_readable};
use super::figures::counted;
use super::refused;
use crate::process::source::Unreadable;

/// A room whose text cannot be read.
pub(crate) fn unreadable(why: &Unreadable) -> Box<Fault> {
    Box::new(fault("unreadable", format!("It cannot be read: {}.", failure::unreadable(why)), make_readable(why)))
}

/// A line that is no JSON.
pub(crate) fn not_json(why: &str) -> Box<Fault> {
    let remedy = "Put each room on one line: a scenario as JSON, or its text as `scenario` beside `source`.";
    Box::new(fault("not_json", format!("The line is not JSON: {why}."), remedy))
}

/// Remedy: how a line is written that is more than a scenario.
const LINE: &str =
    "A line is a scenario, or `source` (a text) and `scenario` around one; nothing else stands beside the two.";

/// Keys that stand beside a scenario and mean nothing there.
pub(crate) fn no_keys_of_a_line(keys: &[&str]) -> Box<Fault> {
    let listed = keys.iter().map(|key| format!("`{}`", quoted(key))).collect::<Vec<_>>().join(", ");
    let are = if keys.len() == 1 { "is no key" } else { "are no keys" };
    Box::new(fault("unknown_key", format!("{listed} {are} of a line with `source` or `scenario`."), LINE))
}

/// A key of a line that stands there twice.
pub(crate) fn key_of_a_line_twice(key: &str) -> Box<Fault> {
    Box::new(fault("key_twice", format!("The line has `{key}` twice."), LINE))
}

/// A line that says where a scenario came from in something other than a text.
pub(crate) fn source_is_no_text() -> Box<Fault> {
    Box::new(fault("wrong_type", "The line's `source` is no text.".to_owned(), LINE))
}

/// A line that says where a scenario came from and has none.
pub(crate) fn no_scenario() -> Box<Fault> {
    Box::new(fault("missing_key", "The line has `source` and no `scenario`.".to_owned(), LINE))
}

/// A room on which the program itself went wrong.
pub(crate) fn broke_off() -> Fault {
    let remedy = "Please report it with the scenario; the other rooms are not touched by it.";
    fault("broke_off", "The program itself went wrong on this room.".to_owned(), remedy)
}

fn fault(code: &'static str, message: String, remedy: &str) -> Fault {
    Fault { code, item: None, message, remedy: remedy.to_owned(), place: None }
}

/// What a room is called whose line does not say where it came from.
pub(crate) fn called(source: Option<&str>) -> String {
    source.unwrap_or("a line without `source`").to_owned()
}

/// A room that something fits in.
pub(crate) const FITS: &str = "fits";
/// A room that nothing fits in.
pub(crate) const NOTHING_FITS: &str = "nothing fits";
/// How a room came out of which it is not known.
pub(crate) const NOT_KNOWN: &str = "not known";
/// A room whose file is at fault.
pub(crate) const AT_FAULT: &str = "at fault";

/// Yes or no.
pub(crate) const fn yes_no(it_is: bool) -> &'static str {
    if it_is { "yes" } else { "no" }
}

/// The first fault of a room, its line, and how many more there are.
pub(crate) fn at_fault(message: &str, line: Option<usize>, faults: usize) -> String {
    let line = line.map_or_else(String::new, |line| format!("line {line}: "));
    match faults {
        0 | 1 => format!("{line}{message}"),
        faults => format!("{line}{message} ({} more)", counted(faults - 1, "fault", "faults")),
    }
}

/// That nothing fits or was found, and what would help.
pub(crate) fn no_option(undecided: usize, help: Option<&str>) -> String {
    match (undecided, help) {
        (0, None) => "Nothing fits as asked, and no small change would help.".to_owned(),
        (_, None) => refused::nothing_fits(undecided).to_owned(),
        (_, Some(help)) => format!("{} {help}", refused::nothing_fits(undecided)),
    }
}

/// How many rooms came out how.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Tally {
    /// Rooms that something fits in.
    pub fit: usize,
    /// Rooms that nothing fits in.
    pub nothing_fits: usize,
    /// Rooms of which it is not known.
    pub undecided: usize,
    /// Rooms whose file is at fault.
    pub at_fault: usize,
    /// Rooms whose result was kept from an earlier run, or from another room of the same content.
    pub kept: usize,
}

impl Tally {
    /// Rooms in all.
    const fn all(&self) -> usize {
        self.fit + self.nothing_fits + self.undecided + self.at_fault
    }
}

/// How many rooms came out how.
pub(crate) fn tally(tally: &Tally) -> String {
    let mut text = format!("{}: something fits in {}", counted(tally.all(), "room", "rooms"), tally.fit);
    if tally.nothing_fits > 0 {
        let _ = write!(text, ", nothing in {}", tally.nothing_fits);
    }
    if tally.undecided > 0 {
        let _ = write!(text, ", not known of {}", tally.undecided);
    }
    if tally.at_fault > 0 {
        let _ = write!(text, ", {} at fault", tally.at_fault);
    }
    if tally.kept > 0 {
        let _ = write!(text, "; {} known already", tally.kept);
    }
    text
}

/// Rooms without an option that are not told one by one.
pub(crate) fn more_without(more: usize) -> String {
    format!("and {more} more without an option")
}

/// Where the files are.
pub(crate) fn files_in(folder: &str) -> String {
    format!("In {folder}: index.html to look at, rooms.csv for a spreadsheet, rooms.ndjson with everything.")
}

/// The head of a column of sizes: `sofa_width_cm`, `sofa_width_most_cm`.
pub(crate) fn size_column(name: &str, dimension: &str, most: bool, unit: &str) -> String {
    let most = if most { "_most" } else { "" };
    format!("{name}_{dimension}{most}_{unit}")
}

/// That a sheet would have too many columns.
pub(crate) fn no_column(pieces: usize) -> String {
    let of = counted(pieces, "piece has", "pieces have");
    format!("In rooms.csv {of} no columns, since no sheet would have room for them; rooms.ndjson has them.")
}

/// Label: what was asked otherwise.
pub(crate) const ASKED: &str = "asked";
/// Label: which options there are.
pub(crate) const OPTIONS: &str = "options";
/// Label: which one stands first.
pub(crate) const FIRST: &str = "first";
/// Label: how large its pieces are planned.
pub(crate) const SIZES: &str = "sizes";
/// Of a variant.
pub(crate) const NOTHING_CHANGED: &str = "Nothing that is told here changed.";
/// Of a rule.
pub(crate) const NOT_IN_FORCE: &str = "none";
/// What the floor measures.
pub(crate) const AREA: &str = "floor";
/// Instead of variants.
pub(crate) const NO_VARIANTS: &str = "No two rooms go by one name, so there are no variants to compare.\n";

/// Over the variants of one room.
pub(crate) fn variants_of(name: &str, first: Option<&str>, unit: &str) -> String {
    format!("{name}: what changed against {} (sizes in {unit})", called(first))
}

/// From one thing to another.
pub(crate) fn change(what: &str, was: &str, is: &str) -> String {
    format!("{what} {was}, now {is}")
}

/// A wish that counts otherwise.
pub(crate) fn wish_change(criterion: &str, was: f64, is: f64) -> String {
    format!("{criterion} counts {is} instead of {was}")
}

/// How many options fit, and which came and went, the first `named` of them by their keys.
pub(crate) fn options_change(was: usize, is: usize, lost: &[String], gained: &[String], named: usize) -> String {
    let told = |keys: &[String]| {
        let mut text = keys.iter().take(named).cloned().collect::<Vec<_>>().join(", ");
        if keys.len() > named {
            let _ = write!(text, " and {} more", keys.len() - named);
        }
        text
    };
    let mut text = format!("{was}, now {is}");
    if !lost.is_empty() {
        let _ = write!(text, "; no longer {}", told(lost));
    }
    if !gained.is_empty() {
        let _ = write!(text, "; new {}", told(gained));
    }
    text
}

/// Another option stands first.
pub(crate) fn first_change(was: &str, score_was: f64, is: &str, score_is: f64) -> String {
    format!("was \"{was}\" with {score_was:.0}, now \"{is}\" with {score_is:.0}")
}

/// The same option stands first with another score.
pub(crate) fn score_change(was: f64, is: f64) -> String {
    format!("the same, its score {was:.0}, now {is:.0}")
}

/// Something fits where nothing did.
pub(crate) fn first_now(title: &str, score: f64) -> String {
    format!("nothing fitted, now \"{title}\" with {score:.0}")
}

/// A piece that stands there now.
pub(crate) fn came(name: &str, size: &str) -> String {
    format!("{name} {size} is new")
}

/// A piece that stood there.
pub(crate) fn went(name: &str) -> String {
    format!("no {name}")
}
