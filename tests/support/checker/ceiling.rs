//! Ceilings that fall toward a wall.

use elbowroom_model::Brief;

use super::placing::SLACK;
use super::plane::{P, along_edges, dot, minus};
use super::room::Ground;
use super::stand::Stand;

/// Where the ceiling falls, by places along the edges of each part: it is as high there as the piece.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<String> {
    let mut all = Vec::new();
    for slope in &brief.room.slopes {
        let wall = &ground.walls[slope.wall.0];
        let length = dot(minus(wall.ends[1], wall.ends[0]), wall.along);
        let height_at = |p: P| {
            let off = minus(p, wall.ends[0]);
            let (out, along) = (dot(off, wall.inward) + SLACK, dot(off, wall.along));
            let beside = along <= SLACK || along >= length - SLACK || out >= slope.over;
            if beside { f64::INFINITY } else { slope.to + (slope.from - slope.to) * out / slope.over }
        };
        for stand in stands.iter().filter(|stand| !stand.is_flat()) {
            let height = stand.piece.height_with_screen();
            let places = stand.parts().into_iter().flat_map(|part| along_edges(&part, 20.0));
            if places.map(height_at).fold(f64::INFINITY, f64::min) < height {
                all.push(format!("4 ceiling: {} is higher than it is before {}", stand.name(), wall.name));
            }
        }
    }
    all
}
