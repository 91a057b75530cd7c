//! A piece from the street to the room: in which way each part of it can be held at each point, and where it fails.

use elbowroom_model::way_in::{Load, LoadPart, PointKind, Way, WayPoint};

use super::clear::{Asks, Clear, clear};
use super::held::{Pose, held, to_turn_over};
use crate::best_by;

/// Whether a piece gets in.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    /// Its name.
    pub name: String,
    /// Every part gets in.
    pub gets_in: bool,
    /// Each part; none: it comes rolled.
    pub parts: Vec<PartCarried>,
}

/// Whether a part gets in.
#[derive(Debug, Clone, PartialEq)]
pub struct PartCarried {
    /// Its name.
    pub name: String,
    /// Width, depth, height, mm.
    pub sides: [f64; 3],
    /// It gets in: in one of the poses, or turned over on the way.
    pub gets_in: bool,
    /// Each pose kept from the street to the room.
    pub poses: Vec<PoseTried>,
    /// How it is held at each point where it gets in, the pose changed as seldom as can be.
    pub held: Vec<Pose>,
    /// Where least is left when held so.
    pub tightest: Option<Tight>,
    /// Where no pose that it can come in gets it further.
    pub fails: Option<Failed>,
}

/// A pose kept all the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PoseTried {
    /// The pose.
    pub pose: Pose,
    /// Where it fails first; `None`: it gets in like this.
    pub fails: Option<Failed>,
}

/// Where a piece fails, and by how much.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Failed {
    /// The point, by its place on the way.
    pub at: usize,
    /// The pose that is nearest to passing.
    pub pose: Pose,
    /// What it does not meet.
    pub asks: Asks,
    /// mm; `None`: it would pass in this pose, and cannot be brought into it on the way.
    pub short_by: Option<f64>,
}

/// Where least is left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tight {
    /// The point, by its place on the way.
    pub at: usize,
    /// What leaves least.
    pub asks: Asks,
    /// mm.
    pub spare: f64,
}

/// Whether `load` gets in by `way`.
#[must_use]
pub fn carried(way: &Way, load: &Load) -> Carried {
    let parts: Vec<PartCarried> = load.parts.iter().map(|part| Trial { way, part }.carried()).collect();
    Carried { name: load.name.clone(), gets_in: parts.iter().all(|part| part.gets_in), parts }
}

/// How a part may have come to a point.
#[derive(Clone, Default)]
struct Brought {
    /// How often it was turned over.
    turns: usize,
    /// Its pose at each point so far.
    poses: Vec<Pose>,
}

/// One part on one way.
struct Trial<'a> {
    way: &'a Way,
    part: &'a LoadPart,
}

impl Trial<'_> {
    fn carried(&self) -> PartCarried {
        let poses = Pose::ALL.iter().copied().filter(|pose| held(self.part, *pose).is_some());
        let poses = poses.map(|pose| PoseTried { pose, fails: self.kept(pose) }).collect();
        let (held, fails) = match self.followed() {
            Ok(held) => (held, None),
            Err(failed) => (Vec::new(), Some(failed)),
        };
        PartCarried {
            name: self.part.name.clone(),
            sides: self.part.sides,
            gets_in: fails.is_none(),
            poses,
            tightest: self.tightest(&held),
            held,
            fails,
        }
    }

    fn clear(&self, point: &WayPoint, pose: Pose) -> Option<Clear> {
        held(self.part, pose).map(|held| clear(point, held, self.way.measured_within))
    }

    /// Where the part fails first when `pose` is kept all the way.
    fn kept(&self, pose: Pose) -> Option<Failed> {
        let failed = |(at, point): (usize, &WayPoint)| {
            let clear = self.clear(point, pose)?;
            let fails = Failed { at, pose, asks: clear.asks, short_by: Some(-clear.spare) };
            (!clear.passes()).then_some(fails)
        };
        self.way.points.iter().enumerate().find_map(failed)
    }

    /// The pose at each point, changed as seldom as can be; or where it fails.
    fn followed(&self) -> Result<Vec<Pose>, Failed> {
        // One for each pose that it can be in so far.
        let mut ways: Vec<Brought> = Vec::new();
        for (place, point) in self.way.points.iter().enumerate() {
            let mut next = Vec::new();
            for &pose in Pose::ALL {
                if !self.clear(point, pose).is_some_and(|clear| clear.passes()) {
                    continue;
                }
                let best = if place == 0 { Some(Brought::default()) } else { self.brought(&ways, place, pose) };
                if let Some(mut brought) = best {
                    brought.poses.push(pose);
                    next.push(brought);
                }
            }
            if next.is_empty() {
                return Err(self.failed(&ways, place, point));
            }
            ways = next;
        }
        Ok(ways.into_iter().min_by_key(|brought| brought.turns).unwrap_or_default().poses)
    }

    /// The best of `ways` to come to the point at `place` in `pose`.
    fn brought(&self, ways: &[Brought], place: usize, pose: Pose) -> Option<Brought> {
        let brought = ways.iter().filter_map(|Brought { turns, poses }| {
            let last = *poses.last()?;
            let turns = turns + usize::from(last != pose);
            self.can_turn_over(place, last, pose).then(|| Brought { turns, poses: poses.clone() })
        });
        brought.min_by_key(|brought| brought.turns)
    }

    /// Whether it can be brought from one pose into another between the point before `place` and that at it. Where no
    /// hall lies between them nothing is known of the place, and it is taken to be possible.
    fn can_turn_over(&self, place: usize, from: Pose, to: Pose) -> bool {
        let points = &self.way.points;
        let around = [place.checked_sub(1), Some(place)].into_iter().flatten().filter_map(|at| points.get(at));
        let halls: Vec<(f64, f64)> = around.filter_map(|point| self.room_of(point)).collect();
        let direct = |(width, high): &(f64, f64), from: Pose, to: Pose| {
            let (upward, across) = to_turn_over(self.part, from, to);
            *width >= across && *high >= upward
        };
        // Over its back, where that takes less room than at once.
        let by = |hall: &(f64, f64), middle: Pose| direct(hall, from, middle) && direct(hall, middle, to);
        let turns = |hall| direct(hall, from, to) || by(hall, Pose::Lying) || by(hall, Pose::Upright);
        from == to || halls.is_empty() || halls.iter().any(turns)
    }

    /// Clear width and height of a point where a piece can be set down.
    fn room_of(&self, point: &WayPoint) -> Option<(f64, f64)> {
        let within = self.way.measured_within;
        let (width, ceiling) = match point.kind {
            PointKind::Hall { width, ceiling } => (width, ceiling),
            PointKind::Turn { from, to, ceiling } => (from.max(to), ceiling),
            PointKind::Landing { depth, ceiling, .. } => (depth, ceiling),
            PointKind::Door { .. } | PointKind::Stairs { .. } | PointKind::Lift { .. } => return None,
        };
        Some((width - within, ceiling.map_or(f64::INFINITY, |ceiling| ceiling - within)))
    }

    /// Why nothing gets past `point`: the pose that misses least, or one that it cannot be brought into.
    fn failed(&self, ways: &[Brought], at: usize, point: &WayPoint) -> Failed {
        let tried: Vec<(Pose, Clear)> =
            Pose::ALL.iter().copied().filter_map(|pose| self.clear(point, pose).map(|clear| (pose, clear))).collect();
        let reached = |pose: Pose| at == 0 || self.brought(ways, at, pose).is_some();
        if let Some((pose, clear)) = tried.iter().find(|(pose, clear)| clear.passes() && !reached(*pose)) {
            return Failed { at, pose: *pose, asks: clear.asks, short_by: None };
        }
        let nearest = best_by(tried, |(_, clear)| clear.spare);
        let (pose, clear) = nearest.unwrap_or((Pose::Upright, Clear { asks: Asks::Width, spare: 0.0 }));
        Failed { at, pose, asks: clear.asks, short_by: Some(-clear.spare) }
    }

    fn tightest(&self, poses: &[Pose]) -> Option<Tight> {
        let tight = |(at, (point, pose)): (usize, (&WayPoint, &Pose))| {
            let clear = self.clear(point, *pose)?;
            Some(Tight { at, asks: clear.asks, spare: clear.spare })
        };
        let all = self.way.points.iter().zip(poses).enumerate().filter_map(tight);
        best_by(all, |tight| -tight.spare)
    }
}
