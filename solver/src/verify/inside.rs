//! Each part lies inside the room as moved in.

use elbowroom_model::Rule;

use super::breach::{Breach, Wrong};
use super::checked_layout::CheckedLayout;
use super::tolerance::SLACK;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let outline = &scene.checked.outline;
    let outside = |piece: &super::checked_layout::InPlace<'_>| {
        let past = piece.tight.iter().filter(|part| !outline.covers(part)).map(|part| outline.overshoot(part) + SLACK);
        let worst = past.fold(0.0, f64::max);
        (worst > 0.0).then(|| Breach::new(Rule::Room, Wrong::PastWall, &[piece.thing()], worst))
    };
    scene.pieces.iter().filter_map(outside).collect()
}
