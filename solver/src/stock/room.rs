//! A room as it is solved for a stock: as it was asked for, and with what may stand in.

use elbowroom_model::way_in::Way;
use elbowroom_model::{Piece, PieceId, PieceKind};

use super::decided::is_decided;
use super::pick::RefusedSet;
use crate::answer::{Answer, RankedOption};

/// A room as it is solved for a stock.
#[derive(Debug, Clone, PartialEq)]
pub struct StockRoom {
    /// As it was asked for.
    pub answer: Answer,
    /// With what may stand in, as [`Brief::other_furnishings`](elbowroom_model::Brief::other_furnishings) has it. Ids of their
    /// briefs as asked are those of the first.
    pub others: Vec<Answer>,
    /// With sets of the stock that were asked of the solver, since no option as asked for holds them.
    pub sets: Vec<SolvedSet>,
    /// Sets of the stock that were asked of the solver and are not served.
    pub(super) refused: Vec<RefusedSet>,
    /// The way in, which the answers know nothing of; `None` where nothing is said of it.
    pub way: Option<Way>,
    /// Of each row of the stock, whether it can be carried in; where there is none, it can.
    pub gets_in: Vec<bool>,
}

/// A room solved for a set of the stock: the set is there, everything else only where there is room for it.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedSet {
    /// The furnishing that it is a set of: 0 as asked for, the others by their places from 1 on.
    pub furnishing: usize,
    /// Its options, each of which holds the set. Ids of its brief as asked are those of the first.
    pub answer: Answer,
}

/// An option of a room in one of its furnishings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Chosen {
    /// 0: as it was asked for; the others by their places from 1 on; then the solved sets.
    pub furnishing: usize,
    /// Place among the options.
    pub option: usize,
}

impl StockRoom {
    /// A room that nothing may stand in for, and every row of the stock gets into.
    #[must_use]
    pub const fn as_asked(answer: Answer) -> Self {
        Self { answer, others: Vec::new(), sets: Vec::new(), refused: Vec::new(), way: None, gets_in: Vec::new() }
    }

    /// The answers of all furnishings, as it was asked for first.
    pub fn answers(&self) -> impl Iterator<Item = &Answer> + Clone {
        std::iter::once(&self.answer).chain(&self.others)
    }

    /// The answers of all furnishings, then those of the solved sets.
    fn with_sets(&self) -> impl Iterator<Item = &Answer> + Clone {
        self.answers().chain(self.sets.iter().map(|set| &set.answer))
    }

    /// The options of all furnishings and solved sets, each with its answer.
    pub fn options(&self) -> impl Iterator<Item = (&Answer, &RankedOption)> + Clone {
        self.with_sets().flat_map(|answer| answer.options.iter().map(move |option| (answer, option)))
    }

    /// The options of all furnishings and solved sets by their places, in the order of [`options`](Self::options).
    pub(super) fn places(&self) -> impl Iterator<Item = Chosen> {
        let all = self.with_sets().enumerate();
        all.flat_map(|(furnishing, answer)| (0..answer.options.len()).map(move |option| Chosen { furnishing, option }))
    }

    /// An option with its answer.
    #[must_use]
    pub fn chosen(&self, chosen: Chosen) -> Option<(&Answer, &RankedOption)> {
        let answer = self.with_sets().nth(chosen.furnishing)?;
        Some((answer, answer.options.get(chosen.option)?))
    }

    /// The furnishing that an option is of, as it was asked for.
    #[must_use]
    pub fn furnishing(&self, chosen: Chosen) -> Option<&Answer> {
        self.answers().nth(self.set_of(chosen).map_or(chosen.furnishing, |set| set.furnishing))
    }

    /// The solved set that an option is of; `None` where it is one of the room's own.
    #[must_use]
    pub fn set_of(&self, chosen: Chosen) -> Option<&SolvedSet> {
        self.sets.get(chosen.furnishing.checked_sub(1 + self.others.len())?)
    }

    /// What these pieces, which are asked for as one, are where they are of `kind`; and whether that stands in for another kind.
    #[must_use]
    pub fn piece_of(&self, asked: &[PieceId], kind: PieceKind) -> Option<(&Piece, bool)> {
        let id = asked.first()?;
        let mut all = self.answers().filter_map(|answer| answer.asked.piece(*id)).enumerate();
        let (place, piece) = all.find(|(_, piece)| piece.kind == kind)?;
        Some((piece, place > 0))
    }

    /// The kinds that these pieces, which are asked for as one, can be; the one asked for first.
    #[must_use]
    pub fn kinds_of(&self, asked: &[PieceId]) -> Vec<PieceKind> {
        let first: Option<&PieceId> = asked.first();
        let all = first.into_iter().flat_map(|id| self.answers().filter_map(|answer| answer.asked.piece(*id)));
        let mut kinds = Vec::new();
        for kind in all.map(|piece| piece.kind) {
            if !kinds.contains(&kind) {
                kinds.push(kind);
            }
        }
        kinds
    }

    /// Whether the row of the stock at `row` can be carried in.
    pub(super) fn lets_in(&self, row: usize) -> bool {
        self.gets_in.get(row).copied().unwrap_or(true)
    }

    /// Nothing fits in any furnishing.
    #[must_use]
    pub fn has_no_option(&self) -> bool {
        self.options().next().is_none()
    }

    /// Of some arrangement it is not known whether it fits.
    #[must_use]
    pub fn is_undecided(&self) -> bool {
        self.answers().any(|answer| !is_decided(answer))
    }
}
