//! The floor before a fixed thing that people use: a sink, a counter, the head of stairs.

use std::cmp::Ordering;

use crate::point::Point;
use crate::ring;
use crate::room::{Fixed, FixedId, Room};
use crate::used_at::UsedAt;

/// How far out of an edge one looks whether floor is there, mm: a hand's breadth.
const JUST_OUT: f64 = 100.0;

/// A thing is nearly as deep as it is wide where its edges are alike but for a quarter (ours, no source): a fridge of 60 cm is
/// 55 to 75 cm deep, and is opened from the room.
const NEARLY_AS_LONG: f64 = 0.75;

/// Cosine of the angle up to which an edge runs along a wall: some five degrees.
const SQUARE_ON: f64 = 0.996;

/// The floor before the edge at which a fixed thing is used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsedFloor {
    /// One end of the edge, plan coordinates, mm.
    pub from: Point,
    /// Its other end.
    pub to: Point,
    /// Unit vector away from the thing.
    pub out: Point,
    /// How deep the floor is that stays clear, mm.
    pub depth: f64,
}

impl UsedFloor {
    /// The same before an edge that lies further out, mm: a thing that is measured within so much may reach so far.
    #[must_use]
    pub fn moved_out(self, by: f64) -> Self {
        let shift = self.out * by;
        Self { from: self.from + shift, to: self.to + shift, ..self }
    }

    /// Middle of the edge.
    #[must_use]
    pub fn middle(&self) -> Point {
        (self.from + self.to) * 0.5
    }

    /// How long the edge is, mm.
    #[must_use]
    pub fn length(&self) -> f64 {
        (self.to - self.from).norm()
    }

    /// Its corners.
    #[must_use]
    pub fn corners(&self) -> [Point; 4] {
        let out = self.out * self.depth;
        [self.from, self.to, self.to + out, self.from + out]
    }
}

impl Room {
    /// The floor that stays clear before a fixed thing; `None` where nobody uses it, or no edge of it is free.
    ///
    /// ```
    /// use elbowroom_model::scenario;
    /// let well = "corners: [[0, -3], [0.9, -3], [0.9, -0.6], [0, -0.6]]";
    /// let room = |used_at: &str| format!(
    ///     "units: m\nwalls: [{{ length: 4 }}, {{ length: 5 }}, {{ length: 4 }}, {{ length: 5 }}]\n\
    ///      fixed: [{{ kind: stairs, {well}{used_at} }}]\npieces: [{{ kind: sofa }}]\n"
    /// );
    /// let middle = |used_at: &str| {
    ///     let brief = scenario::read(&room(used_at), None).expect("a sound room");
    ///     let (_, floor) = brief.room.used_floors().next().expect("stairs are used");
    ///     (floor.from + floor.to) * 0.5
    /// };
    /// assert_eq!(middle("").y, -3000.0);
    /// assert_eq!(middle(", used_at: [0.4, -0.5]").y, -600.0);
    /// ```
    #[must_use]
    pub fn used_floor(&self, id: FixedId) -> Option<UsedFloor> {
        let thing = self.fixed.get(id.0)?;
        let depth = thing.use_depth.filter(|depth| *depth > 0.0)?;
        let edge = |(from, to): (Point, Point)| {
            let floor = UsedFloor { from, to, out: (to - from).unit()?.right(), depth };
            self.is_floor(floor.middle() + floor.out * JUST_OUT, id).then_some(floor)
        };
        let free: Vec<UsedFloor> = ring::legs(&thing.corners).filter_map(edge).collect();
        let longest = free.iter().map(UsedFloor::length).fold(0.0, f64::max);
        let off = |floor: &UsedFloor| match thing.used_at {
            UsedAt::Longest if floor.length() < NEARLY_AS_LONG * longest => f64::INFINITY,
            UsedAt::Longest if self.is_across_from_a_wall(floor, thing) => 0.0,
            UsedAt::Longest => 1.0,
            UsedAt::Shortest => floor.length(),
            UsedAt::Place(place) => ring::distance(place, floor.from, floor.to),
        };
        // In whole millimetres: a tape is read so, and the order of the corners in the file decides nothing that it can tell.
        let key = |floor: &UsedFloor| {
            let is_named = matches!(thing.used_at, UsedAt::Place(_));
            let before = if is_named { 0.0 } else { -self.clear_before(floor, id).round() };
            let length = if thing.used_at == UsedAt::Longest { -floor.length().round() } else { 0.0 };
            [off(floor).round(), before, length]
        };
        let first = |one: &[f64; 3], other: &[f64; 3]| {
            one.iter()
                .zip(other)
                .map(|(one, other)| one.total_cmp(other))
                .find(|it| it.is_ne())
                .unwrap_or(Ordering::Equal)
        };
        free.into_iter()
            .map(|floor| (key(&floor), floor))
            .min_by(|one, other| first(&one.0, &other.0))
            .map(|(_, floor)| floor)
    }

    /// Whether a wall stands right behind the thing where one looks at it over this edge.
    fn is_across_from_a_wall(&self, floor: &UsedFloor, thing: &Fixed) -> bool {
        self.walls.iter().any(|wall| {
            let inward = wall.inward();
            let off =
                thing.corners.iter().map(|corner| (*corner - wall.start).dot(inward)).fold(f64::INFINITY, f64::min);
            let along = thing.corners.iter().map(|corner| (*corner - wall.start).dot(wall.along()));
            let (low, high) =
                along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
            inward.dot(floor.out) > SQUARE_ON && off.abs() < JUST_OUT && low < wall.length() && high > 0.0
        })
    }

    /// The fixed things that people use, each with the floor before it, in the file's order.
    pub fn used_floors(&self) -> impl Iterator<Item = (FixedId, UsedFloor)> {
        (0..self.fixed.len()).map(FixedId).filter_map(|id| Some((id, self.used_floor(id)?)))
    }

    /// How far the floor runs straight out from the middle of an edge, to a wall or another fixed thing, mm.
    pub(crate) fn clear_before(&self, floor: &UsedFloor, but: FixedId) -> f64 {
        let walls = self.walls.iter().map(|wall| (wall.start, wall.end));
        let others = self.fixed.iter().enumerate().filter(|(place, other)| *place != but.0 && other.step().is_none());
        let around = others.flat_map(|(_, other)| ring::legs(&other.corners));
        let reach = |(from, to): (Point, Point)| meets(floor.middle(), floor.out, from, to);
        walls.chain(around).filter_map(reach).fold(f64::INFINITY, f64::min)
    }

    /// Whether a place lies in the room and in no other fixed thing than `but`.
    fn is_floor(&self, at: Point, but: FixedId) -> bool {
        let outline: Vec<Point> = self.walls.iter().map(|wall| wall.start).collect();
        let others = self.fixed.iter().enumerate().filter(|(place, _)| *place != but.0);
        ring::holds(&outline, at) && !others.into_iter().any(|(_, other)| ring::holds(&other.corners, at))
    }
}

/// How far along a ray it meets a stretch, mm.
fn meets(start: Point, way: Point, from: Point, to: Point) -> Option<f64> {
    let along = to - from;
    let across = way.cross(along);
    let (ahead, share) = ((from - start).cross(along) / across, (from - start).cross(way) / across);
    (ahead > 0.0 && (0.0..=1.0).contains(&share)).then_some(ahead)
}
