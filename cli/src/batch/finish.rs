//! The files that a run over many rooms leaves, made from the kept lines one after another.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use elbowroom_model::Unit;

use super::kept::{Kept, ROOMS};
use super::left::{ROWS, is_page};
use super::of_rooms::{self, Ordered};
use super::record::told_under;
use crate::process::failure::Failure;
use crate::process::whole::Whole;
use crate::render::batch::room_line::RoomLine;
use crate::render::batch::{Columns, Part, ROOMS_A_PAGE, Summary, head, page, page_name, row};

/// What is wanted of the files beside what they always hold.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Wanted {
    /// A report of each room.
    pub(crate) reports: bool,
    /// The unit that rows are in, where they are not each in that of their room.
    pub(crate) units: Option<Unit>,
}

/// Makes the files: everything as lines, rows for a spreadsheet, pages to look at. `told` gets each room in turn.
///
/// Lines are read twice: what columns the rows have is known once all rooms are.
pub(crate) fn finish(
    folder: &Path,
    kept: &Kept,
    order: &[Ordered],
    wanted: Wanted,
    mut told: impl FnMut(RoomLine),
) -> Result<Summary, Failure> {
    let (mut lines, mut rows) = (Whole::start(folder.join(ROOMS))?, Whole::start(folder.join(ROWS))?);
    let mut columns = Columns::new(wanted.units);
    let mut seen = BTreeSet::new();
    for (_, content) in order.iter().filter(|(_, content)| seen.insert(*content)) {
        columns.add(&RoomLine::of(&kept.line(*content)?)?);
    }
    rows.add(&head(&columns)?)?;
    of_rooms::settle(folder, order, wanted.reports)?;
    let mut summary = Summary::default();
    summary.no_column = columns.left_out;
    let pages = order.len().div_ceil(ROOMS_A_PAGE).max(1);
    for number in 1..=pages {
        let first = (number - 1) * ROOMS_A_PAGE;
        let mut rooms = Vec::new();
        for (source, content) in order.iter().skip(first).take(ROOMS_A_PAGE) {
            let line = told_under(source.as_deref(), &kept.line(*content)?)?;
            let room = RoomLine::of(&line)?;
            lines.add(&line)?;
            lines.add("\n")?;
            rows.add(&row(&room, &columns)?)?;
            summary.count(&room);
            rooms.push(room);
        }
        let mut file = Whole::start(folder.join(page_name(number)))?;
        file.add(&page(&rooms, &Part { number, pages, first, all: order.len(), reports: wanted.reports }))?;
        file.put()?;
        rooms.into_iter().for_each(&mut told);
    }
    drop_pages_after(folder, pages);
    rows.put()?;
    lines.put()?;
    Ok(summary)
}

/// Takes away the pages of an earlier run that had more of them.
fn drop_pages_after(folder: &Path, pages: usize) {
    let further = (pages + 1..).map(|number| folder.join(page_name(number)));
    for page in further {
        if !is_page(&page) || fs::remove_file(page).is_err() {
            return;
        }
    }
}
