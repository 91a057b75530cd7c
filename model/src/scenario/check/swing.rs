//! A door that swings in needs the floor that its leaf sweeps, as far as it opens.

use crate::opening::{Door, Hinge, Swings};
use crate::point::Point;
use crate::report::Report;
use crate::room::{Wall, WallItem};
use crate::yaml::Trail;

/// Rounds of the search for the deepest place; each leaves two thirds of the stretch.
const ROUNDS: usize = 60;

/// What a wall may reach into the leaf's sweep however exactly the room is said to be measured, mm: a tape is read to a
/// millimetre, and a leaf has more play than that in its frame.
const PLAY: f64 = 1.0;

/// Tells a leaf that cannot open as far as it is to because a wall stands in its way. `slack`: how far the walls may be off.
pub(crate) fn tell_hit(item: &WallItem, door: &Door, walls: &[Wall], slack: f64, at: &Trail, report: &mut Report<'_>) {
    let (Swings::In, Some(hinge), Some(own)) = (door.swings, door.hinge, walls.get(item.wall.0)) else { return };
    let sweeps = Sweep::of(item, hinge, own, door.opens_to());
    for (place, wall) in walls.iter().enumerate().filter(|(place, _)| *place != item.wall.0) {
        let depth = sweeps.iter().map(|sweep| sweep.depth(wall)).fold(f64::NEG_INFINITY, f64::max);
        if depth > slack.max(PLAY) {
            let turn = match door.opens_to {
                Some(degrees) => format!("open to {degrees} degrees"),
                None => "swing in by a quarter turn".to_owned(),
            };
            let message = format!(
                "{} cannot {turn}: {} reaches {} into what its leaf of {} sweeps.",
                item.name,
                walls[place].name,
                report.words(depth),
                report.words(item.width)
            );
            let keys = if door.opens_to.is_some() { "`hinge`, `opens_to`" } else { "`hinge`" };
            let remedy = format!("Check `at`, `width`, {keys} and `swings` of {}, and the walls about it.", item.name);
            report.add(at, "swing_hits_wall", &item.name, message, remedy);
            return;
        }
    }
}

/// What a leaf sweeps, or a part of it: a sector of a quarter turn at most.
struct Sweep {
    hinge: Point,
    /// Inward unit normals of its two straight sides.
    sides: [Point; 2],
    radius: f64,
}

impl Sweep {
    /// The first quarter turn, and what a leaf that opens further sweeps beyond it.
    fn of(item: &WallItem, hinge: Hinge, wall: &Wall, opens_to: f64) -> Vec<Self> {
        let (at, along) = match hinge {
            Hinge::Left => (item.at, wall.along()),
            Hinge::Right => (item.at + item.width, -wall.along()),
        };
        let (hinge, inward, radius) = (wall.point_at(at), wall.inward(), item.width);
        let (sine, cosine) = opens_to.to_radians().sin_cos();
        let quarter = Self { hinge, sides: [along, inward], radius };
        let further = Self { hinge, sides: [-along, along * sine - inward * cosine], radius };
        std::iter::once(quarter).chain((opens_to > 90.0).then_some(further)).collect()
    }

    /// How deep a wall reaches into the sector, mm; below 0 where it does not.
    fn depth(&self, wall: &Wall) -> f64 {
        // Depth inside a convex shape is concave along a straight stretch: thirds close in on its most.
        let (mut low, mut high) = (0.0, 1.0);
        let at = |share: f64| self.depth_at(wall.start + (wall.end - wall.start) * share);
        for _ in 0..ROUNDS {
            let third = (high - low) / 3.0;
            if at(low + third) < at(high - third) { low += third } else { high -= third }
        }
        at(f64::midpoint(low, high))
    }

    fn depth_at(&self, point: Point) -> f64 {
        let from = point - self.hinge;
        from.dot(self.sides[0]).min(from.dot(self.sides[1])).min(self.radius - from.norm())
    }
}
