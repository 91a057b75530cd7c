//! Decisions that the options are held to, who lives in the room, and whom it is planned for.

use crate::household::Household;
use crate::only::{Only, Wanted};
use crate::order::Order;
use crate::piece::Piece;
use crate::quote::{is_control, quoted};
use crate::report::Report;
use crate::room::Room;
use crate::scenario::document::{ChoiceRow, ChoiceRows, Document};
use crate::yaml::Trail;

/// Longest words at the head of pages, characters.
const LONGEST: usize = 300;

/// The decisions that are wanted and those that are not; `room`: `None` where it has a fault.
pub(super) fn wanted(document: &Document, room: Option<&Room>, pieces: &[Piece], report: &mut Report<'_>) -> Wanted {
    let Some(room) = room else { return Wanted::default() };
    let mut read = |key: &str, rows: &Option<ChoiceRows>| {
        let mut found = Vec::new();
        for (choice, row) in rows.iter().flat_map(|rows| &rows.0) {
            let at = Trail::default().key(key).key(choice);
            for (value, at) in row.iter().flat_map(|row| values(row, &at)) {
                match Only::of(choice, value, room, pieces) {
                    Ok(only) => found.push(only),
                    Err(fault) => report.add(&at, fault.code, "", fault.message, fault.remedy),
                }
            }
        }
        found
    };
    Wanted { only: read("only", &document.only), exclude: read("exclude", &document.exclude) }
}

/// Each value, and where it stands.
fn values<'a>(row: &'a ChoiceRow, at: &Trail) -> Vec<(&'a str, Trail)> {
    match row {
        ChoiceRow::One(value) => vec![(value, at.clone())],
        ChoiceRow::Several(all) => {
            all.iter().enumerate().map(|(place, value)| (value.as_str(), at.index(place))).collect()
        }
    }
}

/// Who lives in the room; what that changes is told.
pub(super) fn household(document: &Document, report: &mut Report<'_>) -> Household {
    let Some(row) = &document.household else { return Household::default() };
    let at = Trail::default().key("household").key("people");
    match row.people {
        Some(0) => {
            let message = "`people` of household is 0; it must be 1 or more.".to_owned();
            report.add(
                &at,
                "not_positive",
                "household",
                message,
                "Give how many are to sit, or leave it out.".to_owned(),
            );
        }
        Some(people) => {
            let places =
                if people == 1 { "1 place to sit is".to_owned() } else { format!("{people} places to sit are") };
            report.notice(format!("{places} wanted (`household`): the criterion `seats` counts against that."));
        }
        None => {}
    }
    match row.children {
        Some(true) => report.notice(
            "Children live here: what to heed for them is told among these notices, of the pieces and of where they stand.",
        ),
        Some(false) => report.notice("No children live here: the caution for children is left out."),
        None => {}
    }
    Household { people: row.people.filter(|people| *people > 0), children: row.children }
}

/// Whom the room is planned for; lines are joined, and nothing in it is read as anything but words.
pub(super) fn order(document: &Document, report: &mut Report<'_>) -> Order {
    let Some(row) = &document.room else { return Order::default() };
    let mut words = |key: &str, given: &Option<String>| {
        let joined = given.as_deref()?.split_whitespace().collect::<Vec<_>>().join(" ");
        let at = Trail::default().key("room").key(key);
        if joined.chars().any(is_control) {
            let message = format!("`{key}` of room, `{}`, holds control characters.", quoted(&joined));
            report.add(&at, "control_character", "room", message, "Write it with plain characters alone.".to_owned());
        }
        let count = joined.chars().count();
        if count > LONGEST {
            let message = format!("`{key}` of room has {count} characters, {} more than fit.", count - LONGEST);
            report.add(&at, "too_many", "room", message, format!("Keep {LONGEST} at most."));
        }
        Some(joined).filter(|joined| !joined.is_empty())
    };
    Order { client: words("client", &row.client), note: words("note", &row.note) }
}
