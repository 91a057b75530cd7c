//! A door that swings in needs the floor that its leaf sweeps, as far as it opens.

use crate::opening::{Door, Hinge, Swings};
use crate::point::Point;
use crate::report::Report;
use crate::room::{Wall, WallItem};
use crate::yaml::Trail;

/// Rounds of the search for the deepest place; each leaves two thirds of the stretch.
const ROUNDS: usize = 60;

/// Rounds of the search for how far a leaf opens; each halves the turn.
const HALVINGS: usize = 40;

/// What a wall may reach into the leaf's sweep however exactly the room is said to be measured, mm: a tape is read to a
/// millimetre, and a leaf has more play than that in its frame.
const PLAY: f64 = 1.0;

/// What a leaf that is told how far it opens may not reach into what stops it, mm: rounding.
const TOUCHES: f64 = 1e-3;

/// The least that a leaf may be said to open, degrees.
const SQUARE: f64 = 90.0;

/// A stretch that a leaf may not turn over.
pub(super) type Stretch = [Point; 2];

/// A door, and the walls about it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Leaf<'a> {
    pub(crate) item: &'a WallItem,
    pub(crate) door: &'a Door,
    pub(crate) walls: &'a [Wall],
    /// How far what stands about it may be off, mm.
    pub(crate) slack: f64,
}

/// Where something stops a leaf.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stopped {
    /// How far the leaf opens, degrees.
    pub(super) at: f64,
    /// From the hinge to the nearest place that stands in its way, mm.
    from_hinge: f64,
}

impl Leaf<'_> {
    /// Tells a leaf that cannot open as far as it is to because a wall stands in its way, and whether there is one.
    pub(crate) fn tell_hit(&self, at: &Trail, report: &mut Report<'_>) -> bool {
        let Some(hinge) = self.swings_about() else { return false };
        for wall in self.other_walls() {
            if let Some(stopped) = self.stopped(hinge, &[[wall.start, wall.end]]) {
                let message = self.told(&wall.name, stopped, report);
                let check =
                    format!("`at`, `width`, `hinge` and `swings` of {}, and the walls about it.", self.item.name);
                let remedy = match self.opens_only_to(stopped) {
                    Some(opens_to) => format!("Write {opens_to} if it opens no further, or check {check}"),
                    None => format!("Check {check}"),
                };
                report.add(at, "swing_hits_wall", &self.item.name, message, remedy);
                return true;
            }
        }
        false
    }

    /// The side on which a leaf hangs that swings in.
    pub(super) fn swings_about(&self) -> Option<Hinge> {
        self.door.hinge.filter(|_| self.door.swings == Swings::In)
    }

    /// Whether the leaf hung on this side could open with the walls as they are.
    pub(super) fn is_free_of_walls(&self, hinge: Hinge) -> bool {
        let stretches: Vec<Stretch> = self.other_walls().map(|wall| [wall.start, wall.end]).collect();
        self.stopped(hinge, &stretches).is_none()
    }

    fn other_walls(&self) -> impl Iterator<Item = &Wall> {
        self.walls.iter().enumerate().filter(|(place, _)| *place != self.item.wall.0).map(|(_, wall)| wall)
    }

    /// Where these stretches stop the leaf if it hangs on this side; `None` where they do not.
    pub(super) fn stopped(&self, hinge: Hinge, stretches: &[Stretch]) -> Option<Stopped> {
        let sweeps = self.sweeps(hinge, self.door.opens_to())?;
        let deepest = |sweeps: &[Sweep]| {
            let depths = sweeps.iter().flat_map(|sweep| stretches.iter().map(|stretch| sweep.depth(stretch)));
            depths.fold(f64::NEG_INFINITY, f64::max)
        };
        if deepest(&sweeps) <= self.slack.max(PLAY) {
            return None;
        }
        let nearest = sweeps.iter().flat_map(|sweep| stretches.iter().filter_map(|stretch| sweep.off_hinge(stretch)));
        let from_hinge = nearest.fold(self.item.width, f64::min);
        let (mut free, mut stops) = (0.0, self.door.opens_to());
        for _ in 0..HALVINGS {
            let turn = f64::midpoint(free, stops);
            let hits = self.sweeps(hinge, turn).is_some_and(|sweeps| deepest(&sweeps) > TOUCHES);
            if hits { stops = turn } else { free = turn }
        }
        Some(Stopped { at: free, from_hinge })
    }

    /// What stands in the way, and how far the leaf opens for it.
    pub(super) fn told(&self, what: &str, stopped: Stopped, report: &Report<'_>) -> String {
        let turn = match self.door.opens_to {
            Some(degrees) => format!("open to {degrees} degrees"),
            None => "swing in by a quarter turn".to_owned(),
        };
        let leaf = report.words(self.item.width);
        let near = match stopped.from_hinge > PLAY {
            true => format!("{} from its hinge", report.words(stopped.from_hinge)),
            false => "right at its hinge".to_owned(),
        };
        let name = &self.item.name;
        format!(
            "{name} cannot {turn}: its leaf of {leaf} meets {what} at about {:.0} degrees, {near}.",
            stopped.at.floor()
        )
    }

    /// What the file may say of a leaf that is stopped only beyond a quarter turn: `` `opens_to: 136` ``.
    pub(super) fn opens_only_to(&self, stopped: Stopped) -> Option<String> {
        (stopped.at >= SQUARE).then(|| format!("`opens_to: {:.0}`", stopped.at.floor()))
    }

    fn sweeps(&self, hinge: Hinge, opens_to: f64) -> Option<Vec<Sweep>> {
        self.walls.get(self.item.wall.0).map(|wall| Sweep::of(self.item, hinge, wall, opens_to))
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
    /// The first quarter turn, or what there is of it, and what a leaf that opens further sweeps beyond it.
    fn of(item: &WallItem, hinge: Hinge, wall: &Wall, opens_to: f64) -> Vec<Self> {
        let (at, along) = match hinge {
            Hinge::Left => (item.at, wall.along()),
            Hinge::Right => (item.at + item.width, -wall.along()),
        };
        let (hinge, inward, radius) = (wall.point_at(at), wall.inward(), item.width);
        let (sine, cosine) = opens_to.to_radians().sin_cos();
        if opens_to < SQUARE {
            return vec![Self { hinge, sides: [along * sine - inward * cosine, inward], radius }];
        }
        let quarter = Self { hinge, sides: [along, inward], radius };
        let further = Self { hinge, sides: [-along, along * sine - inward * cosine], radius };
        std::iter::once(quarter).chain((opens_to > SQUARE).then_some(further)).collect()
    }

    /// How deep a stretch reaches into the sector, mm; below 0 where it does not.
    fn depth(&self, [start, end]: &Stretch) -> f64 {
        // Depth inside a convex shape is concave along a straight stretch: thirds close in on its most.
        let (mut low, mut high) = (0.0, 1.0);
        let at = |share: f64| self.depth_at(*start + (*end - *start) * share);
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

    /// From the hinge to the nearest place of a stretch between both sides of the sector, mm.
    fn off_hinge(&self, [start, end]: &Stretch) -> Option<f64> {
        let (from, way) = (*start - self.hinge, *end - *start);
        let (mut low, mut high) = (0.0_f64, 1.0_f64);
        for side in self.sides {
            let (at, by) = (from.dot(side), way.dot(side));
            let share = -at / by;
            match by {
                by if by > 0.0 => low = low.max(share),
                by if by < 0.0 => high = high.min(share),
                _ if at < 0.0 => return None,
                _ => {}
            }
        }
        let foot = -from.dot(way) / way.dot(way);
        (low <= high && foot.is_finite()).then(|| (from + way * foot.clamp(low, high)).norm())
    }
}
