//! A door that swings in needs the floor that its leaf sweeps.

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

/// Tells a leaf that cannot open by a quarter turn because a wall stands in its way. `slack`: how far the walls may be off.
pub(crate) fn tell_hit(item: &WallItem, door: &Door, walls: &[Wall], slack: f64, at: &Trail, report: &mut Report<'_>) {
    let (Swings::In, Some(hinge), Some(own)) = (door.swings, door.hinge, walls.get(item.wall.0)) else { return };
    let sweep = Sweep::of(item, hinge, own);
    for (place, wall) in walls.iter().enumerate().filter(|(place, _)| *place != item.wall.0) {
        let depth = sweep.depth(wall);
        if depth > slack.max(PLAY) {
            let message = format!(
                "{} cannot swing in by a quarter turn: {} reaches {} into what its leaf of {} sweeps.",
                item.name,
                walls[place].name,
                report.words(depth),
                report.words(item.width)
            );
            let remedy = format!("Check `at`, `width`, `hinge` and `swings` of {}, and the walls about it.", item.name);
            report.add(at, "swing_hits_wall", &item.name, message, remedy);
            return;
        }
    }
}

/// The quarter disc of a leaf.
struct Sweep {
    hinge: Point,
    along: Point,
    inward: Point,
    radius: f64,
}

impl Sweep {
    fn of(item: &WallItem, hinge: Hinge, wall: &Wall) -> Self {
        let (at, along) = match hinge {
            Hinge::Left => (item.at, wall.along()),
            Hinge::Right => (item.at + item.width, -wall.along()),
        };
        Self { hinge: wall.point_at(at), along, inward: wall.inward(), radius: item.width }
    }

    /// How deep a wall reaches into the quarter disc, mm; below 0 where it does not.
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
        from.dot(self.along).min(from.dot(self.inward)).min(self.radius - from.norm())
    }
}
