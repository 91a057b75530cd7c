//! Sofas by how many sit on them: `seats: 2` is a two-seater, of the sizes that those are sold in.

use crate::kind::PieceKind;
use crate::report::Report;
use crate::sits::{Sits, SitsFrom};
use crate::tables::{KindSizes, TableRange};
use crate::yaml::Trail;

/// A row that says how many sit on a sofa.
pub(super) struct SofaOf<'a> {
    pub(super) kind: PieceKind,
    pub(super) name: &'a str,
    pub(super) seats: Option<u32>,
    /// Where the number stands in the file.
    pub(super) at: &'a Trail,
}

impl SofaOf<'_> {
    /// The width that such a sofa is sold in; `None` where the row says nothing, or is of another kind.
    pub(super) fn width(&self, sizes: &KindSizes, report: &mut Report<'_>) -> Option<TableRange> {
        let seats = self.seats.filter(|seats| *seats > 0 && self.kind.is_sold_by_places())?;
        let found = sizes.by_places.iter().find(|row| row.seats == seats);
        if found.is_none() && !sizes.by_places.is_empty() {
            let known: Vec<String> = sizes.by_places.iter().map(|row| row.seats.to_string()).collect();
            let message = format!("{} is to seat {seats}; the table knows sizes for {}.", self.name, known.join(", "));
            let remedy = "Give its width instead (27 in, 690 mm, a place, and its arms).".to_owned();
            report.add(self.at, "too_many_seats", self.name, message, remedy);
        }
        found.map(|row| row.width.clone())
    }

    /// How many sit on it from which width on: as many as the row says, or as the table has it.
    pub(super) fn sits(&self, sizes: &KindSizes) -> Sits {
        if !self.kind.is_sold_by_places() {
            return Sits::default();
        }
        Sits(match self.seats {
            Some(seats) => vec![SitsFrom { seats, width: 0.0 }],
            None => sizes.by_places.iter().map(|row| SitsFrom { seats: row.seats, width: row.width.least }).collect(),
        })
    }
}
