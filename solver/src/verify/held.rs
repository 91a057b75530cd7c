//! What the file holds in its place stands there.

use elbowroom_model::Rule;

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};

/// How far from its place a piece may stand that is held, mm: a tape is read no finer.
const WITHIN: f64 = 1.0;

/// It may face another way by so much, as a cosine: a degree.
const SAME_WAY: f64 = 0.999_8;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    scene.pieces.iter().filter(|piece| piece.piece.held).filter_map(|piece| breach(scene, piece)).collect()
}

fn breach(scene: &CheckedLayout<'_>, piece: &InPlace<'_>) -> Option<Breach> {
    let back = piece.piece.stands?.back(&scene.brief.room, piece.placed.size.width)?;
    let off = (piece.placed.back_middle() - back.middle).norm();
    let is_turned = back.facing.dot(piece.placed.facing) < SAME_WAY;
    // A wall may lie further in by what was measured wrongly, and its piece with it.
    let may_be_off = if piece.placed.at_wall.is_some() { scene.brief.room.measured_within } else { 0.0 };
    (off > WITHIN + may_be_off || is_turned)
        .then(|| Breach::new(Rule::Held, Wrong::NotInItsPlace, &[piece.thing()], off))
}
