//! The answer to a brief: options with their layouts, what was refused and why, what would help, what must be heeded.
//!
//! Ids, enumerations, causes and figures; how any of it is said is for whoever speaks. Lengths mm, plan coordinates,
//! angles degrees counter-clockwise from +x; figures are to a thousandth, so that no rounding of a program is told.

mod eased;
mod family;
mod figures;
mod found;
mod option;
mod rounded;
mod size;
mod thing;
mod turned;
mod work;

use elbowroom_model::{Brief, PieceId};

use crate::notice::Notice;
use crate::refusal::{Refusal, Remedy, Why};

pub use eased::Eased;
pub use family::Family;
pub use figures::{degrees, parts as corners_of, thousandth};
pub(crate) use found::{AnswerContext, option, sizes};
pub use option::{Gap, Largest, OptionPiece, PlanValue, RankedOption, TurningCircle, TurnsIf};
pub(crate) use rounded::told_to_a_thousandth;
pub use size::{DimensionRange, PieceSizes};
pub use thing::Thing;
pub use turned::TurnedPiece;
pub use work::Work;

/// All that came of one brief.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The brief as it was asked.
    pub asked: Brief,
    /// The brief as it was solved, which all ids of the answer are places in: sizes are lowered to what the way in allows,
    /// and what does not get in is not there.
    pub brief: Brief,
    /// What does not get in, of the brief as asked.
    pub outside: Vec<PieceId>,
    /// Every option that fits, best first.
    pub options: Vec<RankedOption>,
    /// Arrangements that do not fit.
    pub refused: Vec<Refusal>,
    /// What would help, where nothing fits.
    pub remedies: Vec<Remedy>,
    /// What must be told beside the options, in the order in which it is told; first comes what the reading of the file has
    /// to say, which stands in the brief.
    pub notices: Vec<Notice>,
    /// What it took.
    pub work: Work,
}

impl Answer {
    /// A piece of the brief as asked, as the brief as solved names it; `None` where it does not get in.
    #[must_use]
    pub fn solved_as(&self, asked: PieceId) -> Option<PieceId> {
        let before = self.outside.iter().filter(|outside| **outside < asked).count();
        (!self.outside.contains(&asked)).then(|| PieceId(asked.0 - before))
    }

    /// How many arrangements were not decided within the work allowed: nobody knows whether they fit.
    #[must_use]
    pub fn undecided(&self) -> usize {
        self.refused.iter().filter(|refusal| refusal.why == Why::NotDecided).count()
    }

    /// The option of this key.
    #[must_use]
    pub fn keyed(&self, key: &str) -> Option<&RankedOption> {
        self.options.iter().find(|option| option.key == key)
    }
}
