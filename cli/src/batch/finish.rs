//! The files that a run over many rooms leaves, made from the kept lines one after another.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use elbowroom_model::Unit;

use super::kept::{Kept, ROOMS};
use super::left::{ROWS, WORKBOOK, drop_book, is_page};
use super::of_rooms::{self, Ordered};
use super::record::told_under;
use crate::process::failure::Failure;
use crate::process::whole::Whole;
use crate::render::batch::room_line::RoomLine;
use crate::render::batch::{Columns, Part, ROOMS_A_PAGE, Summary, head, page, page_name, row};
use crate::text::cells::{BYTE_ORDER_MARK, Cell, line};
use crate::text::workbook::{BookOfRows, MOST_ROWS};

/// What is wanted of the files beside what they always hold.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Wanted {
    /// A report of each room.
    pub(crate) reports: bool,
    /// The rows as a workbook too.
    pub(crate) xlsx: bool,
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
    if wanted.xlsx && order.len() >= MOST_ROWS {
        return Err(Failure::TooManyRows { rows: order.len(), most: MOST_ROWS - 1 });
    }
    let mut lines = Whole::start(folder.join(ROOMS))?;
    let mut columns = Columns::new(wanted.units);
    let mut seen = BTreeSet::new();
    let mut is_ascii = order.iter().all(|(source, _)| source.as_deref().is_none_or(str::is_ascii));
    for (_, content) in order.iter().filter(|(_, content)| seen.insert(*content)) {
        let line = kept.line(*content)?;
        is_ascii &= line.is_ascii();
        columns.add(&RoomLine::of(&line)?);
    }
    let mut rows = Rows::start(folder, &head(&columns), is_ascii, wanted.xlsx)?;
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
            rows.add(&row(&room, &columns))?;
            summary.count(&room);
            rooms.push(room);
        }
        let mut file = Whole::start(folder.join(page_name(number)))?;
        file.add(&page(&rooms, &Part { number, pages, first, all: order.len(), reports: wanted.reports }))?;
        file.put()?;
        rooms.into_iter().for_each(&mut told);
    }
    drop_pages_after(folder, pages);
    drop_book(&folder.join(ROWS).with_extension(WORKBOOK), wanted.xlsx);
    rows.put()?;
    lines.put()?;
    Ok(summary)
}

/// The rows under way, as CSV and where wanted as a workbook.
struct Rows {
    separated: Whole,
    book: Option<(Whole, BookOfRows)>,
}

impl Rows {
    fn start(folder: &Path, heads: &[Cell], is_ascii: bool, xlsx: bool) -> Result<Self, Failure> {
        let mut separated = Whole::start(folder.join(ROWS))?;
        if !is_ascii {
            separated.add(BYTE_ORDER_MARK)?;
        }
        separated.add(&line(heads).map_err(Failure::Unwritable)?)?;
        let book = || {
            let book = BookOfRows::new(heads).map_err(Failure::Unwritable)?;
            Ok::<_, Failure>((Whole::start(folder.join(ROWS).with_extension(WORKBOOK))?, book))
        };
        Ok(Self { separated, book: xlsx.then(book).transpose()? })
    }

    fn add(&mut self, cells: &[Cell]) -> Result<(), Failure> {
        self.separated.add(&line(cells).map_err(Failure::Unwritable)?)?;
        match &mut self.book {
            Some((_, book)) => book.add(cells).map_err(Failure::Unwritable),
            None => Ok(()),
        }
    }

    fn put(self) -> Result<(), Failure> {
        if let Some((mut file, book)) = self.book {
            file.add_bytes(&book.bytes().map_err(Failure::Unwritable)?)?;
            file.put()?;
        }
        self.separated.put()
    }
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
