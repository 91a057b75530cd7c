//! The plan of an option: the room, what stands in it and what is kept free, at a scale, on a sheet or by itself.
//!
//! Places come from the result and from the solver's view of it; here they become marks. How marks are written down is
//! `drawing`'s.

mod doors;
mod figure;
mod frame;
mod gaps;
mod items;
mod outline;
mod panel;
mod pieces;
mod points;
mod rulers;
mod sheet;
mod signs;
mod turning;
mod walls;
mod ways;
mod whole;
mod zones;

use elbowroom_model::{Brief, Unit};
use elbowroom_solver::answer::{Answer, RankedOption};

pub(crate) use figure::Drawn;
pub(crate) use sheet::sheet;
pub(crate) use whole::{Alone, alone, to_set_out, within};

use crate::words::lengths::{shop_unit, sign, taped_bare};

/// All that a plan is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shown<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// The option that is drawn.
    pub option: &'a RankedOption,
}

impl<'a> Shown<'a> {
    /// What was solved.
    const fn brief(&self) -> &'a Brief {
        &self.answer.brief
    }

    /// The unit that lengths are told in, as sheets head it.
    const fn unit(&self) -> &'static str {
        sign(shop_unit(self.units()))
    }

    const fn units(&self) -> Unit {
        self.answer.brief.units
    }

    /// A length as a tape reads it, without its unit.
    fn tape(&self, length: f64) -> String {
        taped_bare(self.units(), length)
    }
}

#[cfg(test)]
mod tests;
