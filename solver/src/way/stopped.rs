//! What is said of a needed piece that does not get in at its least sizes, and the least change that would bring it in.

use elbowroom_model::{Brief, Dimension, Rounding, Rule};

use super::cap::Blocked;
use super::clear::Asks;
use crate::outcome::{Change, Refused};

impl Blocked {
    /// Why there is no option.
    pub(crate) fn refused(&self, brief: &Brief) -> Option<Refused> {
        let piece = brief.piece(self.piece)?;
        let by = self.fails.short_by.map(|short| format!("{} ", brief.units.words(short, Rounding::Up)));
        let too = match self.fails.asks {
            Asks::Width => "too wide",
            Asks::Height | Asks::Headroom => "too high",
            Asks::Turn => "too long to turn",
            Asks::Length => "too long",
        };
        let why = match by {
            Some(by) => {
                format!("{}: does not get in at its least sizes, {by}{too} at {}.", piece.name, self.fails.at)
            }
            None => format!(
                "{}: does not get in at its least sizes; it cannot be turned over before {}.",
                piece.name, self.fails.at
            ),
        };
        Some(Refused { key: "way".to_owned(), why, rule: Rule::Way, short_by: self.fails.short_by })
    }
}

/// For a single piece that does not get in: the brief with the least of its sizes lowered to what would, and that change.
/// Of several stopped pieces no single change helps.
pub(crate) fn eased(brief: &Brief, blocked: &[Blocked]) -> Option<(Brief, Change, String)> {
    let [one] = blocked else { return None };
    let (piece, (dimension, to)) = (brief.piece(one.piece)?, one.remedy?);
    let to = brief.units.rounded(to, Rounding::Down);
    let now = piece.range(dimension)?.least;
    let mut eased = brief.clone();
    let lowered = eased.piece_mut(one.piece)?;
    let range = match dimension {
        Dimension::Width => &mut lowered.width,
        Dimension::Return => lowered.return_length.as_mut()?,
        Dimension::Depth => &mut lowered.depth,
    };
    range.least = to;
    let change = Change { what: format!("{}.{}", piece.name, dimension.key()), to: Some(to), by: Some(now - to) };
    let size = brief.units.words(to, Rounding::Down);
    Some((eased, change, format!("{} gets in with a {} of {size} or less", piece.name, dimension.key())))
}
