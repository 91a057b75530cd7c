//! The brief by which a room as it stands is judged.

use elbowroom_model::Brief;

use super::placement::Placement;

/// The brief with nothing taken off for what a measurement may be off, and each corner sofa with the hand that it has: where
/// pieces stand is measured too, and they stand clear of the walls.
pub(super) fn as_measured(brief: &Brief, placement: &Placement) -> Brief {
    let mut brief = brief.clone();
    brief.room.measured_within = 0.0;
    for placed in &placement.placed {
        if let (Some(piece), Some(hand)) = (brief.piece_mut(placed.piece), placed.hand) {
            piece.hands = vec![hand];
        }
    }
    brief
}
