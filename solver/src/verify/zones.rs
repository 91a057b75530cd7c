//! No part enters a door's swing, a landing, a zone that is kept clear, a fixed thing, nor, if it is taller than the
//! sill, the floor before a window.

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::checked_shape::Zone;
use super::hung;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let mut found = Vec::new();
    for piece in &scene.pieces {
        for zone in scene.checked.zones.iter().filter(|zone| stops(zone, piece) && !hung::is_over(scene, zone, piece)) {
            let depth = piece.tight.iter().filter_map(|part| zone.shape.entered_by(part)).fold(0.0, f64::max);
            if depth > 0.0 {
                found.push(Breach::new(zone.rule, Wrong::InZone, &[piece.thing(), zone.of], depth));
            }
        }
    }
    found
}

fn stops(zone: &Zone, piece: &InPlace<'_>) -> bool {
    if piece.is_rug() {
        return zone.stops_rugs;
    }
    piece.piece.height_with_screen() > zone.above
}
