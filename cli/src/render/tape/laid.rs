//! What a tape sheet is made from.

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::drawing::Paper;
use crate::render::plan::Shown;
use crate::words::lengths::{shop_unit, taped, taped_bare};

/// All that the sheet is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Laid<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// The option that is laid out.
    pub option: &'a RankedOption,
    /// Length of a roll of tape, mm.
    pub roll: f64,
    /// How wide and high the small plan may be; text shows none.
    pub plan: Option<Paper>,
}

impl<'a> Laid<'a> {
    /// What was solved.
    pub(super) const fn brief(&self) -> &'a Brief {
        &self.answer.brief
    }

    pub(super) const fn units(&self) -> Unit {
        self.answer.brief.units
    }

    pub(super) const fn shown(&self) -> Shown<'_> {
        Shown::Option { answer: self.answer, option: self.option }
    }

    /// A length as a tape reads it, with its unit.
    pub(super) fn tape(&self, length: f64) -> String {
        taped(shop_unit(self.units()), length)
    }

    /// The same in a table, without its unit.
    pub(super) fn bare(&self, length: f64) -> String {
        taped_bare(self.units(), length)
    }
}
