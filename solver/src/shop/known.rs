//! What is known of candidates that were looked at, so that no room is solved twice: those alike in all that the room sees
//! are one.

use std::collections::BTreeMap;
use std::sync::Mutex;

use super::choices::Choices;
use super::found::SetPiece;
use super::node::NoSet;
use super::rows::stand_in;
use super::sets_context::{Seat, SetsContext};
use super::trial::may_fit;

/// What is known so far.
#[derive(Debug, Default)]
pub(super) struct Known {
    /// Of each candidate in its row the first that the room cannot tell from it.
    alike: BTreeMap<Seat, usize>,
    /// Whether these may stand in one set.
    may_go: Mutex<BTreeMap<Vec<Seat>, bool>>,
    /// The best scores of whole sets.
    scores: Mutex<BTreeMap<Vec<SetPiece>, Result<f64, NoSet>>>,
}

impl Known {
    /// Nothing so far, but which of the candidates are alike.
    pub(super) fn of(context: &SetsContext<'_>, choices: &[Choices]) -> Self {
        let mut alike = BTreeMap::new();
        for choice in choices {
            let Some(piece) = context.rows.get(choice.row).and_then(|row| row.piece(context.brief)) else { continue };
            let stands = |place: usize| Some((place, stand_in(piece, context.candidates.get(place)?)));
            let mut firsts = Vec::new();
            for (place, stand_in) in choice.of.iter().flatten().filter_map(|place| stands(*place)) {
                let known = firsts.iter().find(|(_, first)| *first == stand_in).map(|(first, _)| *first);
                alike.insert((choice.row, place), known.unwrap_or(place));
                if known.is_none() {
                    firsts.push((place, stand_in));
                }
            }
        }
        Self { alike, ..Self::default() }
    }

    fn first_alike(&self, row: usize, candidate: usize) -> usize {
        self.alike.get(&(row, candidate)).copied().unwrap_or(candidate)
    }

    /// Whether these may stand in one set, all other rows at the least of their candidates.
    pub(super) fn may_go(&self, context: &SetsContext<'_>, seats: &[Seat]) -> bool {
        let mut seats: Vec<Seat> = seats.iter().map(|(row, it)| (*row, self.first_alike(*row, *it))).collect();
        seats.sort_unstable();
        if let Some(known) = self.may_go.lock().ok().and_then(|known| known.get(&seats).copied()) {
            return known;
        }
        let may = may_fit(&context.brief_of(&seats));
        if let Ok(mut known) = self.may_go.lock() {
            known.insert(seats, may);
        }
        may
    }

    /// A set as the room sees it.
    pub(super) fn as_solved(&self, pieces: &[SetPiece]) -> Vec<SetPiece> {
        let first = |SetPiece { row, candidate }: &SetPiece| SetPiece {
            row: *row,
            candidate: candidate.map(|candidate| self.first_alike(*row, candidate)),
        };
        pieces.iter().map(first).collect()
    }

    /// The best score of a set as the room sees it, where it is known.
    pub(super) fn score(&self, as_solved: &[SetPiece]) -> Option<Result<f64, NoSet>> {
        self.scores.lock().ok()?.get(as_solved).copied()
    }

    /// Keeps the best score of a set.
    pub(super) fn keep_score(&self, as_solved: Vec<SetPiece>, score: Result<f64, NoSet>) {
        if let Ok(mut known) = self.scores.lock() {
            known.insert(as_solved, score);
        }
    }
}
