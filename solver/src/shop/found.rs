//! What comes out of a shop's list. Lengths mm; candidates by their places in the list, rows by their places in
//! [`ShopFound::rows`].

use elbowroom_model::listing::Money;
use elbowroom_model::{Brief, Dimension, PieceId};

use super::rows::Row;
use crate::answer::RankedOption;
use crate::arrangement::Choices;
use crate::refusal::{Refusal, Remedy};
use crate::way_in::PieceIn;

/// Every candidate against one room.
#[derive(Debug, Clone, PartialEq)]
pub struct ShopFound {
    /// What the room asks for.
    pub rows: Vec<Row>,
    /// Each candidate, in the list's order.
    pub candidates: Vec<CandidateFound>,
    /// The best sets, where they were asked for.
    pub sets: Option<SetsFound>,
}

/// A candidate against the row that suits it best.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CandidateFound {
    /// The row that it is tried as; `None`: the room asks for none of its kind.
    pub row: Option<usize>,
    /// Sizes that lie beyond what was asked for.
    pub beyond: Vec<Beyond>,
    /// Whether it gets in, where the way is given.
    pub way: Option<PieceIn>,
    /// Every option with it, best first; none where it has no place in the room.
    pub options: Vec<OptionFits>,
    /// How much larger it could be in the first option, each dimension by itself.
    pub left: Vec<Left>,
    /// Dimensions that would have to be less, each by itself enough; the least first.
    pub misses: Vec<Miss>,
    /// Why it has no option, where that is no matter of size.
    pub why_not: Option<WhyNot>,
    /// What would make it fit, each tried.
    pub remedies: Vec<Remedy>,
}

impl CandidateFound {
    /// It has its place in the room.
    #[must_use]
    pub const fn fits(&self) -> bool {
        !self.options.is_empty()
    }

    /// It is known whether it fits.
    #[must_use]
    pub fn is_decided(&self) -> bool {
        self.why_not != Some(WhyNot::NotDecided)
    }

    /// It has its place in the room, and gets in where the way is given.
    #[must_use]
    pub fn goes(&self) -> bool {
        self.fits() && self.way.as_ref().is_none_or(|way| way.carried.gets_in)
    }
}

/// Why a candidate has no option, where that is no matter of size.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WhyNot {
    /// The room asks for none of its kind.
    NoneAsked,
    /// The room asks for more alike than are in hand.
    TooFew,
    /// A return on the other hand is asked for.
    OtherHand,
    /// Nothing was found that fits, and it is not known whether anything does.
    NotDecided,
}

/// A size beyond what was asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Beyond {
    /// Which.
    pub dimension: Dimension,
    /// Over the most if above 0, under the least if below.
    pub by: f64,
}

/// An option that a candidate fits.
#[derive(Debug, Clone, PartialEq)]
pub struct OptionFits {
    /// Stable name of the arrangement.
    pub key: String,
    /// The seat that it is built about, by its place in the brief.
    pub main_seat: PieceId,
    /// Its decisions.
    pub choices: Choices,
    /// 0 to 100.
    pub score: f64,
}

/// How much larger a piece could be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Left {
    /// Which dimension.
    pub dimension: Dimension,
    /// By so much, all other pieces at their least.
    pub by: f64,
    /// It was not looked any further.
    pub or_more: bool,
}

/// By how much a piece is too large.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Miss {
    /// Which dimension.
    pub dimension: Dimension,
    /// So much less would do.
    pub by: f64,
}

/// The best sets.
#[derive(Debug, Clone, PartialEq)]
pub struct SetsFound {
    /// Best first; of those that differ in lamps, rugs and other small pieces alone the best.
    pub sets: Vec<SetFound>,
    /// Sets that were solved.
    pub solved: usize,
    /// Nothing better can be: every other set costs too much, holds what does not fit, or stands behind by its bound. Not so
    /// where it is not known of a set whether it fits.
    pub proven: bool,
    /// Why there is none, where that is proven.
    pub impossible: Option<Impossible>,
    /// Rows for which the list has nothing.
    pub without: Vec<usize>,
    /// Candidates left aside since they have no price.
    pub unpriced: Vec<usize>,
}

/// Why there is no set.
#[derive(Debug, Clone, PartialEq)]
pub enum Impossible {
    /// The list has no candidate for any row.
    NothingListed,
    /// Sets fit, and each costs more than the budget: the cheapest of them.
    OverBudget(Box<SetFound>),
    /// No candidate for this row fits, all else as the room asks for it.
    NoneFor(usize),
    /// These do not go together, all else as the room asks for it.
    Pairs(Vec<PairFound>),
    /// Every two go together, and no whole set does.
    NotAllTogether,
}

/// What a set costs beside others.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Costs {
    /// The cheapest set of those solved that costs more and scores a point more at least.
    pub better: Option<Better>,
    /// What the next smaller piece in place of the dearest would save.
    pub saving: Option<Saving>,
}

/// A set that is better.
#[derive(Debug, Clone, PartialEq)]
pub struct Better {
    /// What all of it costs.
    pub price: Money,
    /// The score of its best option.
    pub score: f64,
    /// What stands for each row.
    pub pieces: Vec<SetPiece>,
}

/// What a smaller piece would save.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saving {
    /// The row of the dearest piece.
    pub row: usize,
    /// The dearest piece of the set, by its place in the list.
    pub dearest: usize,
    /// The next smaller one that costs less.
    pub smaller: usize,
    /// The dimension in which it is smaller by most.
    pub dimension: Dimension,
    /// By so much, mm.
    pub less: f64,
    /// What it saves, all of the row.
    pub saves: Money,
}

impl SetFound {
    /// Rows that it leaves out.
    #[must_use]
    pub fn left_out(&self) -> usize {
        self.pieces.iter().filter(|piece| piece.candidate.is_none()).count()
    }
}

/// One of each.
#[derive(Debug, Clone, PartialEq)]
pub struct SetFound {
    /// What stands for each row.
    pub pieces: Vec<SetPiece>,
    /// What all of it costs; `None` where a price is not known.
    pub price: Option<Money>,
    /// Mean of the scores that the list gives; `None` where it gives none.
    pub liking: Option<f64>,
    /// What it costs beside others; `None` where a price of it is not known.
    pub costs: Option<Costs>,
    /// Options that the set makes.
    pub options: usize,
    /// The room with the set in the places of its pieces, and without the rows that are left out.
    pub brief: Brief,
    /// The best of them, with its layout; its ids are places in that brief.
    pub option: RankedOption,
}

/// What stands for a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct SetPiece {
    /// The row.
    pub row: usize,
    /// The candidate; `None`: this row is left out.
    pub candidate: Option<usize>,
}

/// Two candidates that do not go together.
#[derive(Debug, Clone, PartialEq)]
pub struct PairFound {
    /// The two.
    pub between: [usize; 2],
    /// What fails in the arrangement that misses least; `None` where nothing was refused.
    pub nearest: Option<Refusal>,
}
