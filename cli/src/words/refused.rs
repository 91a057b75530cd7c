//! Prose of what does not fit, of what was not decided, and of what would help.

use std::fmt::Write;

use elbowroom_model::Criterion;
use elbowroom_solver::answer::Answer;

use super::figures::{area, counted};

/// Instead of other options; `undecided`: arrangements of which nobody knows.
pub(crate) const fn no_other(undecided: usize) -> &'static str {
    if undecided == 0 { "No other arrangement fits." } else { "No other arrangement was found that fits." }
}
/// Over what does not fit.
pub(crate) const REFUSED: &str = "What does not fit, the nearest misses first";
/// Over what was not decided.
pub(crate) const UNDECIDED: &str = "What was not decided: it may fit, and it may not";
/// Instead of remedies.
pub(crate) const NO_REMEDY: &str = "No single change, and no two together, was found that makes room. Ask for less.";
/// The same, where only some decisions were looked at.
pub(crate) const NO_OTHER_DECISION: &str =
    "None with these decisions does, whatever gives way. Leave out an `--only` to see what the room holds.";
/// The same, where it is not known whether anything fits.
pub(crate) const NO_OTHER_DECISION_FOUND: &str = "With these decisions nothing was found, whatever gave way. Leave out \
                                                  an `--only` to see what the room holds.";

/// Instead of options; `undecided`: arrangements of which nobody knows.
pub(crate) const fn nothing_fits(undecided: usize) -> &'static str {
    match undecided {
        0 => "Nothing fits as asked.",
        _ => "Nothing was found that fits as asked; it is not known whether anything does.",
    }
}

/// Over remedies.
pub(crate) const fn remedies(undecided: usize) -> &'static str {
    if undecided == 0 { "What would help, each by itself" } else { "What helped where it was tried, each by itself" }
}

/// The head of the page: room, area, how many fit.
pub(crate) fn summary(answer: &Answer, by: Option<Criterion>) -> String {
    let (fit, undecided) = (answer.options.len(), answer.undecided());
    let not = answer.refused.len() - undecided;
    let undecided_told = || format!("{} not decided within the work allowed", counted(undecided, "was", "were"));
    let counts = match (fit, not, undecided) {
        (0, _, 0) => format!("none of {} fits", counted(not, "arrangement", "arrangements")),
        (0, 0, _) => {
            format!("none of {} was decided within the work allowed", counted(undecided, "arrangement", "arrangements"))
        }
        (0, _, _) => {
            format!("{}, {}", counted(not, "arrangement does not fit", "arrangements do not fit"), undecided_told())
        }
        (1, 0, 0) => "the only arrangement fits".to_owned(),
        (_, 0, 0) => format!("all {fit} arrangements fit"),
        (_, _, 0) => format!("{}, {} not", counted(fit, "arrangement fits", "arrangements fit"), plural_do(not)),
        (_, 0, _) => format!("{}, {}", counted(fit, "arrangement fits", "arrangements fit"), undecided_told()),
        (_, _, _) => format!(
            "{}, {} not, {}",
            counted(fit, "arrangement fits", "arrangements fit"),
            plural_do(not),
            undecided_told()
        ),
    };
    let room = &answer.brief.room;
    let mut text = format!("{}, {}: {counts}", room.name, area(room.area() / 1e6));
    if let Some(criterion) = by {
        let _ = write!(text, "; ranked by {} alone", super::criteria::name(criterion));
    }
    text
}

fn plural_do(count: usize) -> String {
    counted(count, "does", "do")
}

/// A reason and what it refuses, by the names that `--only` and the JSON know it by.
pub(crate) fn refused(why: &str, keys: &[&str]) -> String {
    match keys {
        [one] => format!("{why} ({one})"),
        [first, rest @ ..] => format!("{why} ({first} and {} more)", rest.len()),
        [] => why.to_owned(),
    }
}

/// Reasons that are not told.
pub(crate) fn more_refused(more: usize) -> String {
    format!("and {}: --json has them all", counted(more, "reason more", "reasons more"))
}
