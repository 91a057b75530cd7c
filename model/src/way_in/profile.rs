//! What a seat looks like from its end.

use crate::listing::{ListedPiece, Section};
use crate::tables::usual_section;

/// What a seat looks like from its end: the back rises at the rear, and before it nothing is higher than the arms; legs
/// stand at its very front and rear.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Profile {
    /// How high it is at its front, mm.
    pub front: f64,
    /// How thick the back is at its top, mm.
    pub back: f64,
}

impl Profile {
    /// That of a listed seat of one run by `off` mm of legs lower, where its list says how thick its back is and how high its
    /// arms are. `None`: a box.
    pub(super) fn of(piece: &ListedPiece, off: f64) -> Option<Self> {
        usual_section(piece.kind).filter(|_| piece.return_length.is_none())?;
        let Section { arm_height, back_thickness, .. } = piece.section;
        Some(Self { front: (arm_height? - off).max(0.0), back: back_thickness? })
    }
}

impl ListedPiece {
    /// The piece with what is usual of its arms and its back where its list does not say; arms stand so far over the seat as is
    /// usual. `None` where nothing is taken: it is no seat, comes in parts, or the list says both.
    #[must_use]
    pub fn with_usual_section(&self) -> Option<Self> {
        let whole = self.parts.is_empty() && self.return_length.is_none();
        let usual = usual_section(self.kind).filter(|_| whole)?;
        let said = self.section;
        let arms = said.seat_height.unwrap_or(usual.seat_height) + usual.arm_over_seat;
        let section = Section {
            arm_height: said.arm_height.or(Some(arms)),
            back_thickness: said.back_thickness.or(Some(usual.back_thickness)),
            ..said
        };
        (section != said).then(|| Self { section, ..self.clone() })
    }
}
