//! What a seat faces: the wall straight ahead, and what of note is on it there.

use elbowroom_model::{ItemKind, Point, Room, Wall};

use crate::words::rank::Faced;

/// What lies straight ahead of the middle of `shape`, looking `degrees` counter-clockwise from +x.
pub(super) fn faced(room: &Room, shape: &[Point], degrees: f64) -> Option<Faced> {
    let from = middle(shape)?;
    let ahead = Point::new(degrees.to_radians().cos(), degrees.to_radians().sin());
    let hits = room.walls().filter_map(|(id, wall)| {
        let (distance, at) = hit(wall, from, ahead)?;
        Some((distance, at, id, wall))
    });
    let (_, at, id, wall) = hits.min_by(|a, b| a.0.total_cmp(&b.0))?;
    let item = room.items.iter().find(|item| {
        let of_note = !matches!(item.kind, ItemKind::Socket(_) | ItemKind::Radiator(_));
        item.wall == id && of_note && (item.at..=item.at + item.width).contains(&at)
    });
    Some(Faced { wall: wall.name.clone(), item: item.map(|item| item.name.clone()) })
}

fn middle(shape: &[Point]) -> Option<Point> {
    let count = shape.len();
    let sum = shape.iter().fold(Point::new(0.0, 0.0), |sum, corner| sum + *corner);
    // A shape has a handful of corners.
    (count > 0).then(|| sum * (1.0 / count as f64))
}

/// Where a ray meets a wall: how far off, and how far along the wall.
fn hit(wall: &Wall, from: Point, ahead: Point) -> Option<(f64, f64)> {
    let along = wall.along();
    let turn = ahead.cross(along);
    if turn.abs() < 1e-9 {
        return None;
    }
    let to_start = wall.start - from;
    let (distance, at) = (to_start.cross(along) / turn, to_start.cross(ahead) / turn);
    (distance > 0.0 && (0.0..=wall.length()).contains(&at)).then_some((distance, at))
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Point, Wall};

    use super::hit;

    #[test]
    fn a_ray_meets_the_wall_ahead_and_none_behind() {
        let wall = Wall { name: "north".into(), start: Point::new(0.0, 0.0), end: Point::new(4000.0, 0.0) };
        let from = Point::new(1000.0, -3000.0);
        assert_eq!(hit(&wall, from, Point::new(0.0, 1.0)), Some((3000.0, 1000.0)));
        assert_eq!(hit(&wall, from, Point::new(0.0, -1.0)), None);
    }
}
