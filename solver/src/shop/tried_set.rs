//! A set as it was tried, by what decides between sets alone; and as it is told.

use elbowroom_model::listing::Money;

use super::found::{Costs, SetFound, SetPiece};
use super::node::{NoSet, Node};
use super::sets_context::SetsContext;
use super::trial::best_score;
use crate::answer::Answer;
use crate::{Limits, Unwatched, rank};

/// A set that fits.
#[derive(Debug, Clone)]
pub(super) struct TriedSet {
    /// Where the search came upon it.
    pub(super) node: Node,
    /// What stands for each row.
    pub(super) pieces: Vec<SetPiece>,
    /// What all of it costs; `None` where a price is not known.
    pub(super) price: Option<Money>,
    /// The score of its best option.
    pub(super) score: f64,
}

impl TriedSet {
    /// Rows that it leaves out.
    pub(super) fn left_out(&self) -> usize {
        self.pieces.iter().filter(|piece| piece.candidate.is_none()).count()
    }
}

impl SetsContext<'_> {
    /// The score of the best option that these make.
    pub(super) fn best_score(&self, pieces: &[SetPiece]) -> Result<f64, NoSet> {
        best_score(&self.brief_of_pieces(pieces))
    }

    /// The set with its layout and all that is told of that; `None` where it has no option, which a set that was tried has.
    pub(super) fn told(&self, set: &TriedSet, costs: Option<Costs>) -> Option<SetFound> {
        let brief = self.brief_of_pieces(&set.pieces);
        let Answer { brief, options, .. } = rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
        let bought = set.pieces.iter().filter_map(|piece| self.candidates.get(piece.candidate?));
        let scores: Vec<f64> = bought.filter_map(|candidate| candidate.score).collect();
        Some(SetFound {
            pieces: set.pieces.clone(),
            price: set.price,
            liking: (!scores.is_empty()).then(|| scores.iter().sum::<f64>() / scores.len() as f64),
            costs,
            options: options.len(),
            brief,
            option: options.into_iter().next()?,
        })
    }
}
