//! Each part lies inside the room as moved in.

use super::SLACK;
use super::breach::Breach;
use super::scene::Scene;

pub(super) fn breaches(scene: &Scene<'_>) -> Vec<Breach> {
    let floor = &scene.ground.floor;
    let outside = |piece: &super::scene::InPlace<'_>| {
        let past = piece.tight.iter().filter(|part| !floor.covers(part)).map(|part| floor.overshoot(part) + SLACK);
        let worst = past.fold(0.0, f64::max);
        (worst > 0.0).then(|| Breach::new("room", &[piece.name()], worst, "reaches past a wall"))
    };
    scene.pieces.iter().filter_map(outside).collect()
}
