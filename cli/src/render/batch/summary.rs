//! What a run over many rooms tells at its end.

use super::reason;
use crate::batch::told::{Fate, Told};
use crate::outlet::Look;
use crate::render::page::Page;
use crate::render::table::{Stand, Table};
use crate::words::batch as words;

/// Rooms without an option that are told one by one; the files have them all.
const TOLD: usize = 20;

/// How many rooms came out how, and the first of those without an option.
#[derive(Debug, Default)]
pub(crate) struct Tally {
    /// Rooms that something fits in.
    pub fit: usize,
    /// Rooms that nothing fits in.
    pub nothing_fits: usize,
    /// Rooms whose file is at fault.
    pub at_fault: usize,
    /// Rooms whose result was kept from an earlier run, or from another room of the same content.
    pub kept: usize,
    without: Vec<(String, String)>,
}

impl Tally {
    /// Counts a room.
    pub(crate) fn count(&mut self, told: &Told) {
        match told.fate() {
            Fate::Fits => self.fit += 1,
            Fate::NothingFits => self.nothing_fits += 1,
            Fate::Faulty => self.at_fault += 1,
        }
        if let Some(reason) = reason(told).filter(|_| self.without.len() < TOLD) {
            self.without.push((words::called(told.source.as_deref()), reason));
        }
    }

    /// All rooms.
    pub(crate) const fn all(&self) -> usize {
        self.fit + self.nothing_fits + self.at_fault
    }
}

/// The summary, `folder` being where the files are.
pub(crate) fn summary(tally: &Tally, folder: &str, look: Look) -> String {
    let mut page = Page::new(look);
    page.strong(&words::tally(tally));
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left)]);
    for (room, reason) in &tally.without {
        table.row([room.clone(), reason.clone()]);
    }
    page.table(2, &table);
    let more = tally.nothing_fits + tally.at_fault - tally.without.len();
    if more > 0 {
        page.faint(2, &words::more_without(more));
    }
    page.paragraph(0, &words::files_in(folder));
    page.into_text()
}
