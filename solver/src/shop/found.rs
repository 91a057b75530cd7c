//! What comes out of a shop's list, as results tell it. Lengths mm.

use elbowroom_model::listing::Money;
use elbowroom_model::{Dimension, PieceKind};
use serde::Serialize;

use crate::outcome::{OptionFound, Remedy};
use crate::way::PieceIn;

/// The format that [`ShopFound`] is written in.
pub const FORMAT: &str = "elbowroom-shop/1";

/// Every candidate against one room.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ShopFound {
    /// Name and version of the format.
    pub format: &'static str,
    /// Name of the room.
    pub room: String,
    /// What the room asks for.
    pub rows: Vec<RowFound>,
    /// Each candidate, in the list's order.
    pub candidates: Vec<CandidateFound>,
    /// The best sets, where they were asked for.
    pub sets: Option<SetsFound>,
    /// Cautions.
    pub notices: Vec<String>,
}

/// A piece that the room asks for, or several alike.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RowFound {
    /// The name of the first of them.
    pub name: String,
    /// What it is.
    pub kind: PieceKind,
    /// How many alike.
    pub count: usize,
    /// It must stand in the room.
    pub needed: bool,
}

/// A candidate against the row that suits it best.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CandidateFound {
    /// Its name.
    pub name: String,
    /// Line of the list.
    pub line: usize,
    /// What it is.
    pub kind: PieceKind,
    /// Width.
    pub width: f64,
    /// Return.
    #[serde(rename = "return")]
    pub return_length: Option<f64>,
    /// Depth.
    pub depth: f64,
    /// What one costs.
    pub price: Option<Money>,
    /// The piece of the room that it is tried as; `None`: the room asks for none of its kind.
    pub row: Option<String>,
    /// Sizes that lie beyond what was asked for.
    pub beyond: Vec<Beyond>,
    /// Whether it gets in, where the way is given.
    pub way: Option<PieceIn>,
    /// It has its place in the room: there are options.
    pub fits: bool,
    /// Every option with it, best first.
    pub options: Vec<OptionFits>,
    /// How much larger it could be in the first option, each dimension by itself.
    pub left: Vec<Left>,
    /// Dimensions that would have to be less, each by itself enough; the least first.
    pub misses: Vec<Miss>,
    /// Why it does not fit, where that is no matter of size.
    pub why_not: Option<String>,
    /// What would make it fit, each tried.
    pub remedies: Vec<Remedy>,
}

/// A size beyond what was asked for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Beyond {
    /// Which.
    pub dimension: Dimension,
    /// Over the most if above 0, under the least if below.
    pub by: f64,
}

/// An option that a candidate fits.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OptionFits {
    /// Stable name of the arrangement.
    pub key: String,
    /// The arrangement in words.
    pub title: String,
    /// 0 to 100.
    pub score: f64,
}

/// How much larger a piece could be.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Left {
    /// Which dimension.
    pub dimension: Dimension,
    /// By so much, all other pieces at their least.
    pub by: f64,
    /// It was not looked any further.
    pub or_more: bool,
}

/// By how much a piece is too large.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Miss {
    /// Which dimension.
    pub dimension: Dimension,
    /// So much less would do.
    pub by: f64,
}

/// The best sets.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SetsFound {
    /// Best first.
    pub sets: Vec<SetFound>,
    /// Sets that were solved.
    pub solved: usize,
    /// Nothing better can be: every other set costs too much, holds what does not fit, or stands behind by its bound.
    pub proven: bool,
    /// Why there is none.
    pub impossible: Option<String>,
    /// Pairs that do not go together, where there is no set.
    pub pairs: Vec<PairFound>,
    /// The cheapest set that fits, where none does under the budget.
    pub cheapest: Option<Box<SetFound>>,
    /// Rows for which the list has nothing.
    pub without: Vec<String>,
    /// Candidates left aside since they have no price.
    pub unpriced: Vec<String>,
}

/// One of each.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SetFound {
    /// What stands for each row.
    pub pieces: Vec<SetPiece>,
    /// What all of it costs; `None` where a price is not known.
    pub price: Option<Money>,
    /// Mean of the scores that the list gives; `None` where it gives none.
    pub liking: Option<f64>,
    /// Options that the set makes.
    pub options: usize,
    /// The best of them, with its layout.
    pub option: OptionFound,
}

/// What stands for a row.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SetPiece {
    /// The row.
    pub row: String,
    /// The candidate; `None`: this row is left out.
    pub candidate: Option<String>,
    /// How many.
    pub count: usize,
}

/// Two candidates that do not go together.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PairFound {
    /// Their names.
    pub between: [String; 2],
    /// What fails, in the arrangement that misses least.
    pub why: String,
}
