//! What a comparison is made from.

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::text::table::{Stand, Table};
use crate::words::compare as words;

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Compared<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// Two options or three, as they were named.
    pub options: &'a [&'a RankedOption],
}

impl<'a> Compared<'a> {
    /// What was solved.
    pub(super) const fn brief(&self) -> &'a Brief {
        &self.answer.brief
    }

    pub(super) const fn units(&self) -> Unit {
        self.answer.brief.units
    }

    /// A table with a column before and one for each option.
    pub(super) fn table(&self, between: &[(&str, Stand)]) -> Table {
        let heads: Vec<String> = self.options.iter().map(|option| words::head(option.rank)).collect();
        let mut columns = vec![("", Stand::Left)];
        columns.extend(between);
        columns.extend(heads.iter().map(|head| (head.as_str(), Stand::Right)));
        // Figures stand right in every column but the last.
        columns.push(("", Stand::Left));
        Table::new(&columns)
    }
}
