//! How much of a window or an opening an eye sees: the plan angle it fills, and the share of it, less what stands between.

use elbowroom_model::{Brief, ItemKind, Point, WallItem};

use super::obstacles::{Obstacle, Whose};
use super::tolerance::{AT_THE_EYE, TURNS_OUT};
use crate::geometry::{Crossing, Ray, Segment};

/// Height taken for the head of a doorway or an opening, which the scenario does not measure, mm (common practice).
pub const DOOR_HEAD: f64 = 2000.0;

/// Half of the field that eyes and an easy turn of the head take in, degrees: 45 for the head and 15 for the eyes (from
/// memory of Panero and Zelnik 1979).
pub const EASY_FIELD: f64 = 60.0;

/// What lies beyond the easy field counts (common practice, no source).
const ASIDE: f64 = 0.5;

/// What counts as before a sitter at all, degrees either side of straight ahead.
pub const FRONT: f64 = 90.0;

/// An eye over a place on the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Eye {
    /// The place.
    pub at: Point,
    /// Height above the floor, mm.
    pub height: f64,
}

/// An upright rectangle to look at: a window, a doorway, an open side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Target {
    /// One end.
    pub left: Point,
    /// The other end.
    pub right: Point,
    /// Height of its lower edge, mm.
    pub foot: f64,
    /// Height of its upper edge, mm.
    pub head: f64,
}

impl Target {
    /// What a wall holds, as something to look at; `None` for what one does not look through.
    #[must_use]
    pub fn of(brief: &Brief, item: &WallItem) -> Option<Self> {
        let (left, right) = brief.room.ends(item)?;
        let (foot, head) = match &item.kind {
            ItemKind::Window(window) => (window.sill, window.head),
            ItemKind::Door(_) | ItemKind::Opening(_) => {
                (0.0, brief.room.ceiling.map_or(DOOR_HEAD, |c| c.min(DOOR_HEAD)))
            }
            ItemKind::Radiator(_) | ItemKind::Fireplace(_) | ItemKind::Socket(_) => return None,
        };
        (head > foot).then_some(Self { left, right, foot, head })
    }

    /// Its middle on the plan.
    #[must_use]
    pub fn middle(&self) -> Point {
        (self.left + self.right) * 0.5
    }

    fn at(&self, share: f64) -> Point {
        self.left + (self.right - self.left) * share
    }
}

/// What can hide a target: walls (none in a convex room, where no wall is in the way of another) and obstacles.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Barriers {
    walls: Vec<Segment>,
    /// What stands in the room.
    pub obstacles: Vec<Obstacle>,
}

impl Barriers {
    /// Barriers of a room with this outline (clockwise) and these obstacles.
    #[must_use]
    pub fn new(outline: &[Point], obstacles: Vec<Obstacle>) -> Self {
        let corner = |i: usize| outline[i % outline.len()];
        let count = outline.len();
        // Clockwise: a turn to the left is an outside corner.
        let outside = (0..count).any(|i| (corner(i + 1) - corner(i)).cross(corner(i + 2) - corner(i + 1)) > TURNS_OUT);
        let walls =
            if outside { (0..count).map(|i| Segment::new(corner(i), corner(i + 1))).collect() } else { Vec::new() };
        Self { walls, obstacles }
    }

    /// Height on the upright over `point` below which the eye sees nothing of it, and what hides it.
    fn hidden_below(&self, eye: Eye, point: Point) -> (f64, Option<Whose>) {
        let look = Segment::new(eye.at, point);
        if self.walls.iter().any(|wall| look.crossing(*wall).is_some_and(Crossing::is_inside_first)) {
            return (f64::INFINITY, None);
        }
        let mut worst = (f64::NEG_INFINITY, None);
        for obstacle in &self.obstacles {
            let hidden = hidden_by(obstacle, eye, point);
            if hidden > worst.0 {
                worst = (hidden, Some(obstacle.whose));
            }
        }
        worst
    }
}

/// What an eye sees of a target.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Seen {
    /// Plan angle that it fills before the eye, less what is hidden at the height of the eye, degrees.
    pub angle: f64,
    /// Plan angle that it would fill before the eye if nothing stood between, degrees.
    pub unhidden: f64,
    /// The angle as it counts: what lies beyond the easy field counts half, what is hidden of its height not at all, degrees.
    pub counted: f64,
    /// The same with nothing between.
    pub counted_unhidden: f64,
    /// Share of its width by height that lies before the eye and is seen, 0 to 1.
    pub share: f64,
    /// Share of its width that lies before the eye, seen or not, 0 to 1.
    pub before: f64,
    /// What hides the most of it.
    pub hidden_by: Option<Whose>,
}

/// What `eye` sees of `target` between the two half-angles of its field; `facing: None` looks all round.
#[must_use]
pub fn seen(eye: Eye, facing: Option<Point>, target: &Target, barriers: &Barriers) -> Seen {
    Look { eye, facing, target, barriers }.seen()
}

/// Angle between two directions, degrees, 0 to 180.
#[must_use]
pub fn angle_between(first: Point, second: Point) -> f64 {
    first.turn_to(second).abs().to_degrees()
}

/// An eye, its field, what it looks at and what may stand between.
struct Look<'a> {
    eye: Eye,
    facing: Option<Point>,
    target: &'a Target,
    barriers: &'a Barriers,
}

/// A stretch of a target before which nothing begins or ends.
struct Slice {
    /// Nothing hides it at the height of the eye.
    open: bool,
    /// Mean share of its height that is seen.
    share: f64,
    hidden_by: Option<Whose>,
}

impl Look<'_> {
    fn seen(&self) -> Seen {
        let cuts = self.cuts();
        let mut all = Seen::default();
        let mut most_hidden = 0.0;
        for pair in cuts.windows(2) {
            let (from, to) = (pair[0], pair[1]);
            let middle = self.to((from + to) / 2.0);
            let aside = self.facing.map_or(0.0, |facing| angle_between(facing, middle));
            if aside > FRONT || to - from <= 0.0 {
                continue;
            }
            let angle = angle_between(self.to(from), self.to(to));
            let weight = if aside > EASY_FIELD { ASIDE } else { 1.0 };
            let slice = self.slice(from, to);
            all.unhidden += angle;
            all.angle += if slice.open { angle } else { 0.0 };
            all.counted += angle * weight * slice.share;
            all.counted_unhidden += angle * weight;
            all.share += (to - from) * slice.share;
            all.before += to - from;
            let hidden = angle * (1.0 - slice.share);
            if hidden > most_hidden {
                (most_hidden, all.hidden_by) = (hidden, slice.hidden_by);
            }
        }
        all
    }

    /// From the eye to the place at this share of the target's width.
    fn to(&self, share: f64) -> Point {
        self.target.at(share) - self.eye.at
    }

    /// The stretch between two shares of the target's width.
    fn slice(&self, from: f64, to: f64) -> Slice {
        let Self { eye, target, .. } = *self;
        let at = |share: f64| self.barriers.hidden_below(eye, target.at(from + (to - from) * share));
        let height = target.head - target.foot;
        let seen = |hidden: f64| ((target.head - hidden.max(target.foot)) / height).clamp(0.0, 1.0);
        let (middle, whose) = at(0.5);
        // Three places of Gauss: exact for what bends as little as the foot of a line of sight over a straight edge.
        let aside = 0.5 * (0.6_f64).sqrt();
        let share = (5.0 * seen(at(0.5 - aside).0) + 8.0 * seen(middle) + 5.0 * seen(at(0.5 + aside).0)) / 18.0;
        Slice { open: middle <= eye.height, share, hidden_by: whose.filter(|_| middle > target.foot) }
    }

    /// Shares of the target's width where something begins or ends, 0 and 1 among them, in order.
    fn cuts(&self) -> Vec<f64> {
        let corners = self.barriers.obstacles.iter().flat_map(|obstacle| obstacle.shape.corners().iter().copied());
        let ends = self.barriers.walls.iter().map(|wall| wall.start);
        let field = self.facing.into_iter().flat_map(|facing| {
            [EASY_FIELD, -EASY_FIELD, FRONT, -FRONT].map(|degrees| facing.turned(degrees.to_radians()) + self.eye.at)
        });
        let mut cuts: Vec<f64> = corners.chain(ends).chain(field).filter_map(|mark| self.cut_by(mark)).collect();
        cuts.extend([0.0, 1.0]);
        cuts.sort_by(f64::total_cmp);
        cuts
    }

    /// Share of the target's width where the line of sight over `mark` meets it.
    fn cut_by(&self, mark: Point) -> Option<f64> {
        let across = Segment::new(self.target.left, self.target.right);
        let met = Segment::new(self.eye.at, mark).crossing(across)?;
        (met.of_first > 0.0 && met.of_second > 0.0 && met.of_second < 1.0).then_some(met.of_second)
    }
}

/// Height at `point` below which `obstacle` hides it.
fn hidden_by(obstacle: &Obstacle, eye: Eye, point: Point) -> f64 {
    let look = Ray { from: eye.at, way: point - eye.at };
    let Some(crossing) = obstacle.crossing(look).filter(|crossing| crossing.from < 1.0 - AT_THE_EYE) else {
        return f64::NEG_INFINITY;
    };
    // Over something lower than the eye the far edge decides, under something taller the near one.
    let over = obstacle.height - eye.height;
    let edge = if over < 0.0 { crossing.to.min(1.0) } else { crossing.from.max(AT_THE_EYE) };
    eye.height + over / edge
}
