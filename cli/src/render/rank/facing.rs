//! What a seat faces: the wall straight ahead, and what of note is on it there.

use elbowroom_model::{ItemKind, Point, Room, ring};
use elbowroom_solver::geometry::Ray;

use crate::words::rank::Faced;

/// What lies straight ahead of the middle of `shape`, looking `degrees` counter-clockwise from +x.
pub(super) fn faced(room: &Room, shape: &[Point], degrees: f64) -> Option<Faced> {
    shape.first()?;
    let ahead = Ray { from: ring::middle(shape), way: Point::toward(degrees) };
    let hits = room.walls().filter_map(|(id, wall)| {
        let met = ahead.meets(wall.into())?;
        Some((met.reach, met.share * wall.length(), id))
    });
    let (_, at, id) = hits.min_by(|a, b| a.0.total_cmp(&b.0))?;
    let item = room.items().find(|(_, item)| {
        let of_note = !matches!(item.kind, ItemKind::Socket(_) | ItemKind::Radiator(_));
        item.wall == id && of_note && (item.at..=item.at + item.width).contains(&at)
    });
    Some(Faced { wall: id, item: item.map(|(item, _)| item) })
}
