//! What seats usually look like from their end.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::file::Tag;
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::unit::Unit;
use crate::yaml::typed;

const SECTIONS: &str = include_str!("../../data/sections.yaml");

static ROWS: LazyLock<BTreeMap<String, BTreeMap<String, Figure>>> =
    LazyLock::new(|| typed::of_own(SECTIONS).unwrap_or_default());

/// A figure of the data.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Figure {
    figure: Measure,
    /// Each figure has one; none is told.
    #[serde(rename = "tag")]
    _tag: Tag,
}

/// The usual cross-section of a seat, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsualSection {
    /// Of the seat above the floor.
    pub seat_height: f64,
    /// How high arms stand above the seat.
    pub arm_over_seat: f64,
    /// Of the back at its top.
    pub back_thickness: f64,
    /// The most that legs which come off are looked for at.
    pub leg_height: f64,
}

/// The usual cross-section of seats of `kind` (`model/data/sections.yaml`); `None` for what has none.
///
/// ```
/// use elbowroom_model::PieceKind;
/// use elbowroom_model::tables::usual_section;
/// assert_eq!(usual_section(PieceKind::Sofa).map(|usual| usual.seat_height), Some(450.0));
/// assert_eq!(usual_section(PieceKind::Bookcase), None);
/// ```
#[must_use]
pub fn usual_section(kind: PieceKind) -> Option<UsualSection> {
    let row = ROWS.get(kind.key())?;
    let figure = |key: &str| row.get(key)?.figure.length(Unit::Millimetre).ok();
    Some(UsualSection {
        seat_height: figure("seat_height")?,
        arm_over_seat: figure("arm_over_seat")?,
        back_thickness: figure("back_thickness")?,
        leg_height: figure("leg_height")?,
    })
}

#[cfg(test)]
mod tests {
    use super::{ROWS, usual_section};
    use crate::kind::PieceKind;

    #[test]
    fn every_row_reads_and_is_of_a_kind_that_there_is() {
        assert!(!ROWS.is_empty());
        let read = PieceKind::ALL.iter().filter(|kind| usual_section(**kind).is_some()).count();
        assert_eq!(read, ROWS.len());
    }
}
