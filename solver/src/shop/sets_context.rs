//! What all sets of a room share, and the room with some of its pieces decided.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, PieceId};

use super::found::SetPiece;
use super::rows::{Row, least_of, stand_in};
use super::trial::with;
use crate::refusal::without;

/// A candidate in a row: places of both.
pub(super) type Seat = (usize, usize);

/// What all sets of a room share.
#[derive(Debug)]
pub(super) struct SetsContext<'a> {
    pub(super) brief: &'a Brief,
    pub(super) rows: &'a [Row],
    pub(super) candidates: &'a [ListedPiece],
    /// Whether each candidate gets in.
    pub(super) gets_in: &'a [bool],
}

impl SetsContext<'_> {
    /// Whether no candidate is used more often than it is in hand.
    pub(super) fn are_in_hand(&self, seats: &[Seat]) -> bool {
        seats.iter().all(|(_, candidate)| {
            let used = seats.iter().filter(|(_, other)| other == candidate);
            let used: usize = used.filter_map(|(row, _)| self.rows.get(*row)).map(|row| row.pieces.len()).sum();
            self.candidates.get(*candidate).is_some_and(|it| it.count as usize >= used)
        })
    }

    /// The candidates for `row`.
    pub(super) fn candidates_for(&self, row: usize) -> Vec<usize> {
        let Some(of) = self.rows.get(row) else { return Vec::new() };
        let can_be = |(place, candidate): &(usize, &ListedPiece)| {
            self.gets_in.get(*place).copied().unwrap_or(true) && of.can_be(self.brief, candidate)
        };
        self.candidates.iter().enumerate().filter(can_be).map(|(place, _)| place).collect()
    }

    /// The brief with these rows decided, and each other one at the least of its candidates.
    pub(super) fn brief_of(&self, seats: &[Seat]) -> Brief {
        let mut brief = self.brief.clone();
        for (place, row) in self.rows.iter().enumerate() {
            let Some(piece) = row.piece(self.brief) else { continue };
            let seat = seats.iter().find(|(row, _)| *row == place);
            if let Some(candidate) = seat.and_then(|(_, candidate)| self.candidates.get(*candidate)) {
                brief = with(&brief, row, &stand_in(piece, candidate));
            } else {
                let all = self.candidates_for(place);
                let all: Vec<&ListedPiece> = all.iter().filter_map(|one| self.candidates.get(*one)).collect();
                if !all.is_empty() {
                    brief = with(&brief, row, &least_of(piece, &all));
                }
            }
        }
        brief
    }

    /// The brief with these rows decided, and each other one as it was asked for.
    pub(super) fn brief_as_asked(&self, seats: &[Seat]) -> Brief {
        seats.iter().fold(self.brief.clone(), |brief, (row, candidate)| {
            let decided = self.rows.get(*row).zip(self.candidates.get(*candidate));
            match decided.and_then(|(row, candidate)| Some((row, row.piece(self.brief)?, candidate))) {
                Some((row, piece, candidate)) => with(&brief, row, &stand_in(piece, candidate)),
                None => brief,
            }
        })
    }

    /// The brief of a whole set: each of these rows by its candidate, those without one left out.
    pub(super) fn brief_of_pieces(&self, pieces: &[SetPiece]) -> Brief {
        let mut brief = self.brief.clone();
        let mut gone: Vec<PieceId> = Vec::new();
        for SetPiece { row, candidate } in pieces {
            let Some(row) = self.rows.get(*row) else { continue };
            match candidate.and_then(|candidate| self.candidates.get(candidate)).zip(row.piece(self.brief)) {
                Some((candidate, piece)) => brief = with(&brief, row, &stand_in(piece, candidate)),
                None => gone.extend(&row.pieces),
            }
        }
        gone.sort_unstable();
        gone.into_iter().rev().fold(brief, |brief, id| without(&brief, id))
    }
}
