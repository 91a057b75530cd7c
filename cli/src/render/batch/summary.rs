//! What a run over many rooms tells at its end.

use super::reason;
use crate::render::batch::room_line::{Fate, RoomLine};
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::batch as words;

/// Rooms without an option that are told one by one; the files have them all.
const TOLD: usize = 20;

/// How many rooms came out how, and the first of those without an option.
#[derive(Debug, Default)]
pub(crate) struct Summary {
    /// How many.
    pub tally: words::Tally,
    /// Pieces whose sizes have no column.
    pub no_column: usize,
    without: Vec<(String, String)>,
}

impl Summary {
    /// Counts a room.
    pub(crate) fn count(&mut self, told: &RoomLine) {
        match told.fate() {
            Fate::Fits => self.tally.fit += 1,
            Fate::NothingFits => self.tally.nothing_fits += 1,
            Fate::Undecided => self.tally.undecided += 1,
            Fate::Faulty => self.tally.at_fault += 1,
        }
        if let Some(reason) = reason(told).filter(|_| self.without.len() < TOLD) {
            self.without.push((words::called(told.source.as_deref()), reason));
        }
    }

    /// Rooms without an option that are not told one by one.
    const fn untold(&self) -> usize {
        self.tally.nothing_fits + self.tally.undecided + self.tally.at_fault - self.without.len()
    }
}

/// The summary, `folder` being where the files are.
pub(crate) fn text(summary: &Summary, folder: &str, look: Look) -> String {
    let mut page = Page::new(look);
    page.strong(&words::tally(&summary.tally));
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left)]);
    for (room, reason) in &summary.without {
        table.row([room.clone(), reason.clone()]);
    }
    page.table(2, &table);
    if summary.untold() > 0 {
        page.faint(2, &words::more_without(summary.untold()));
    }
    page.paragraph(0, &words::files_in(folder));
    if summary.no_column > 0 {
        page.paragraph(0, &words::no_column(summary.no_column));
    }
    page.into_text()
}
