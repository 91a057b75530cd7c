//! How many rooms look: a table for a spreadsheet, pages with plans, a summary, what differs between variants.

mod columns;
mod compare;
mod csv;
mod index;
mod plan;
pub(crate) mod room_line;
mod summary;

pub(crate) use columns::Columns;
pub(crate) use compare::compared;
pub(crate) use csv::{ROWS_START, head, row};
pub(crate) use index::{PAGE_START, Part, ROOMS_A_PAGE, is_page_name, page, page_name};
pub(crate) use plan::{OfRoom, digits, plan};
pub(crate) use summary::{Summary, text as summary};

use elbowroom_model::{Rounding, Unit};
use elbowroom_solver::Size;

use crate::render::batch::room_line::{LinePiece, RoomLine};
use crate::words::batch as words;
use crate::words::lengths::shopped;

/// Why the room has no option, in a sentence or two; nothing where it has one.
pub(crate) fn reason(told: &RoomLine) -> Option<String> {
    if let Some(fault) = told.faults.first() {
        return Some(words::at_fault(&fault.message, fault.place.as_ref().map(|place| place.line), told.faults.len()));
    }
    let result = told.result.as_ref()?;
    let help = result.remedies.first().map(|remedy| remedy.sentence.as_str());
    result.options.is_empty().then(|| words::no_option(result.undecided(), help))
}

/// `230 x 180 x 95`: the size as planned.
fn size(piece: &LinePiece, unit: Unit) -> String {
    told(piece.size.whole(), unit)
}

/// `280 x 230 x 105`: the largest size to shop by.
fn largest(piece: &LinePiece, unit: Unit) -> String {
    told(piece.range.together(), unit)
}

fn told(size: Size, unit: Unit) -> String {
    crate::words::size::size(size, " x ", |figure| shopped(unit, figure, Rounding::Down))
}
