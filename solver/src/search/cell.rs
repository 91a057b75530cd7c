//! What is asked of one piece or of two, with all that the bounds alone decide taken out.

use elbowroom_model::{PieceId, Rule};

use crate::program::Row;
use crate::rules::{Alternative, Cause, Requirement, TOLERANCE, With};

/// What is asked: rows that always hold, and choices.
#[derive(Debug, Clone, Default)]
pub(super) struct Cell {
    /// Rows with no choice.
    pub(super) always: Vec<(Row, Cause)>,
    /// Requirements with two or more alternatives left.
    pub(super) choices: Vec<Requirement>,
    /// What cannot be met whatever is chosen elsewhere.
    pub(super) dead: Option<Cause>,
}

/// Ranges of the variables: bounds, and narrower ones for some.
pub(super) struct Ranges<'a> {
    pub(super) bounds: &'a [(f64, f64)],
    pub(super) places: &'a [(usize, (f64, f64))],
}

impl Ranges<'_> {
    fn of(&self, variable: usize) -> (f64, f64) {
        let place = self.places.iter().find(|(place, _)| *place == variable);
        place.map_or(self.bounds[variable], |(_, range)| *range)
    }

    /// Least and most that the left-hand side can be.
    fn activity(&self, row: &Row) -> (f64, f64) {
        row.terms.iter().fold((0.0, 0.0), |(low, high), (variable, coefficient)| {
            let (least, most) = self.of(*variable);
            let (a, b) = (coefficient * least, coefficient * most);
            (low + a.min(b), high + a.max(b))
        })
    }

    fn is_impossible(&self, alternative: &Alternative) -> bool {
        let is_broken = |row: &Row| self.activity(row).0 > row.most + TOLERANCE;
        alternative.rows.iter().any(is_broken)
            || alternative.arc.as_ref().is_some_and(|arc| arc.rows().iter().any(is_broken))
    }

    /// Takes out what no point within the ranges can meet.
    pub(super) fn propagate(&self, requirement: &mut Requirement) {
        requirement.alternatives.retain(|alternative| !self.is_impossible(alternative));
    }

    /// The same of what is finer, down to the last: worth it where a requirement is asked again and again.
    fn propagate_finer(&self, requirement: &mut Requirement) {
        requirement.alternatives.retain_mut(|alternative| {
            let had_finer = !alternative.finer.is_empty();
            alternative.finer.retain(|finer| !self.is_impossible(finer));
            !had_finer || !alternative.finer.is_empty()
        });
    }

    fn is_certain(&self, alternative: &Alternative) -> bool {
        alternative.cost == 0.0
            && alternative.arc.is_none()
            && alternative.rows.iter().all(|row| self.activity(row).1 <= row.most)
            && (alternative.finer.is_empty() || alternative.finer.iter().any(|finer| self.is_certain(finer)))
    }
}

impl Cell {
    /// What is left of `requirements` within `ranges`.
    pub(super) fn of(requirements: impl Iterator<Item = Requirement>, ranges: &Ranges<'_>) -> Self {
        let mut cell = Self::default();
        for mut requirement in requirements {
            if requirement.alternatives.iter().any(|alternative| ranges.is_certain(alternative)) {
                continue;
            }
            ranges.propagate(&mut requirement);
            ranges.propagate_finer(&mut requirement);
            cell.take(requirement);
        }
        cell
    }

    /// Holds a piece with several stands to the place that this stand gives: bounds do it where there is one only.
    pub(super) fn keep_in(&mut self, places: &[(usize, (f64, f64))], piece: PieceId) {
        let cause = Cause { rule: Rule::Room, piece, with: With::Itself };
        for (variable, (least, most)) in places {
            self.always.push((Row::at_least([(*variable, 1.0)], *least), cause));
            self.always.push((Row::at_most([(*variable, 1.0)], *most), cause));
        }
    }

    fn take(&mut self, mut requirement: Requirement) {
        let cause = requirement.cause;
        match &mut requirement.alternatives[..] {
            [] => self.dead = self.dead.or(Some(cause)),
            [only] if only.arc.is_none() && only.cost == 0.0 => {
                self.always.extend(std::mem::take(&mut only.rows).into_iter().map(|row| (row, cause)));
                if !only.finer.is_empty() {
                    self.take(Requirement { cause, alternatives: std::mem::take(&mut only.finer) });
                }
            }
            _ => self.choices.push(requirement),
        }
    }
}
