//! What lies open to the eye from one place: the isovist (Benedikt 1979), and the floor that low things leave in sight.

use elbowroom_model::Point;

use super::obstacles::Obstacle;
use super::sight::Eye;
use super::tolerance::{ALONG_EDGE, NO_SLICE, SAME_REACH};
use crate::geometry::{HalfPlane, Ray, Segment};

/// Height of the eye of one who stands, mm: the reference height of EN 17037 (from memory).
pub const STANDING_EYE: f64 = 1700.0;

/// No slice of the round is wider, radians: a slice is halved where edges cross inside it, if its two ends show it.
const WIDEST_SLICE: f64 = 0.4;

/// How often a slice is halved at most: what is left unknown is then less than a ten-thousandth of the round.
const HALVINGS: u32 = 9;

/// Area of the plan that an eye at `from` sees inside `outline` when everything in `screens` reaches the ceiling, in the
/// outline's unit squared. In a convex room with nothing in it, it is the room.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::criteria::isovist::isovist_area;
/// let square = [(0.0, 0.0), (0.0, 2.0), (2.0, 2.0), (2.0, 0.0)].map(|(x, y)| Point::new(x, y));
/// assert!((isovist_area(Point::new(0.5, 1.0), &square, &[]) - 4.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn isovist_area(from: Point, outline: &[Point], screens: &[Obstacle]) -> f64 {
    Round::new(Eye { at: from, height: 0.0 }, outline, screens).seen()
}

/// Area of the floor that the eye sees: a thing as tall as the eye hides all that lies behind, a lower one hides what it
/// stands on and its shadow as if the eye were a lamp. mm2.
#[must_use]
pub fn floor_seen(eye: Eye, outline: &[Point], obstacles: &[Obstacle]) -> f64 {
    Round::new(eye, outline, obstacles).seen()
}

/// A look all round.
struct Round<'a> {
    eye: Eye,
    outline: &'a [Point],
    obstacles: &'a [Obstacle],
}

/// A straight edge across a slice, as seen from the eye: where the lines of sight at its start, middle and end meet it, and
/// the area between the eye and it.
#[derive(Clone, Copy)]
struct Edge {
    reach: [f64; 3],
    area: f64,
}

impl Edge {
    const AT_THE_EYE: Self = Self { reach: [0.0; 3], area: 0.0 };

    /// It lies nearer in the middle of the slice.
    fn is_nearer(&self, other: &Self) -> bool {
        self.reach[1] < other.reach[1]
    }

    /// It crosses the other inside the slice.
    fn crosses(&self, other: &Self) -> bool {
        let ahead = |i: usize| self.reach[i] - other.reach[i];
        let scale = SAME_REACH * (self.reach[1] + other.reach[1]);
        (ahead(0) > scale && ahead(2) < -scale) || (ahead(0) < -scale && ahead(2) > scale)
    }
}

impl<'a> Round<'a> {
    const fn new(eye: Eye, outline: &'a [Point], obstacles: &'a [Obstacle]) -> Self {
        Self { eye, outline, obstacles }
    }

    fn seen(&self) -> f64 {
        let marks = self.marks();
        let next = marks.iter().copied().cycle().skip(1);
        let spans = marks
            .iter()
            .copied()
            .zip(next)
            .map(|(from, to)| if to > from { (from, to) } else { (from, to + std::f64::consts::TAU) });
        spans.filter(|(from, to)| to - from > NO_SLICE).map(|(from, to)| self.seen_between(from, to)).sum()
    }

    /// Directions in which something begins or ends, in order.
    fn marks(&self) -> Vec<f64> {
        let corners = self.obstacles.iter().flat_map(|obstacle| obstacle.shape.corners());
        let direction = |corner: &Point| (corner.y - self.eye.at.y).atan2(corner.x - self.eye.at.x);
        let mut marks: Vec<f64> = self.outline.iter().chain(corners).map(direction).collect();
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        marks
    }

    fn seen_between(&self, from: f64, to: f64) -> f64 {
        // A cast from float to integer saturates; the span is at most a full turn.
        let count = ((to - from) / WIDEST_SLICE).ceil().max(1.0) as usize;
        let step = (to - from) / count as f64;
        (0..count).map(|slice| self.seen_in(from + slice as f64 * step, step, HALVINGS)).sum()
    }

    fn seen_in(&self, from: f64, step: f64, halvings: u32) -> f64 {
        let way = |angle: f64| Point::new(angle.cos(), angle.sin());
        let ways = [way(from), way(from + step / 2.0), way(from + step)];
        let Some(wall) = self.wall(ways) else { return 0.0 };
        let mut hidden: Vec<(Edge, Edge)> =
            self.obstacles.iter().filter_map(|obstacle| self.shadow(obstacle, ways, wall)).collect();
        hidden.sort_by(|a, b| a.0.reach[1].total_cmp(&b.0.reach[1]));
        let mut crossed = false;
        let mut lost = 0.0;
        let mut upto = Edge::AT_THE_EYE;
        for (near, far) in hidden {
            crossed |= far.crosses(&wall) || near.crosses(&upto) || far.crosses(&upto);
            let (near, far) =
                (if near.is_nearer(&upto) { upto } else { near }, if wall.is_nearer(&far) { wall } else { far });
            if near.is_nearer(&far) {
                lost += far.area - near.area;
                upto = far;
            }
        }
        if crossed && halvings > 0 {
            let half = step / 2.0;
            return self.seen_in(from, half, halvings - 1) + self.seen_in(from + half, half, halvings - 1);
        }
        (wall.area - lost).max(0.0)
    }

    /// The nearest wall in the middle of the slice.
    fn wall(&self, ways: [Point; 3]) -> Option<Edge> {
        let count = self.outline.len();
        let look = Ray { from: self.eye.at, way: ways[1] };
        let edges = (0..count).filter_map(|i| {
            let wall = Segment::new(self.outline[i], self.outline[(i + 1) % count]);
            look.meets(wall)?;
            let normal = wall.vector().left();
            edge(HalfPlane { normal, support: normal.dot(wall.start - self.eye.at) }, ways)
        });
        edges.min_by(|a, b| a.reach[1].total_cmp(&b.reach[1]))
    }

    /// What an obstacle hides in the slice: from its near side to the foot of the line of sight over its far side.
    fn shadow(&self, obstacle: &Obstacle, ways: [Point; 3], wall: Edge) -> Option<(Edge, Edge)> {
        let crossing = obstacle.crossing(Ray { from: self.eye.at, way: ways[1] })?;
        let side = |side: Option<usize>| {
            let side = obstacle.side(side?)?;
            edge(HalfPlane { support: -side.outside(self.eye.at), ..side }, ways)
        };
        let near = side(crossing.entry).filter(|near| near.is_nearer(&wall))?;
        if obstacle.height >= self.eye.height {
            return Some((near, wall));
        }
        let stretch = self.eye.height / (self.eye.height - obstacle.height);
        let far = side(crossing.exit)?;
        let reach = far.reach.map(|reach| reach * stretch);
        Some((near, Edge { reach, area: far.area * stretch * stretch }))
    }
}

/// The straight edge of a half-plane across a slice (the eye at the origin).
fn edge(side: HalfPlane, ways: [Point; 3]) -> Option<Edge> {
    let reach = |way: Point| {
        let closing = side.normal.dot(way);
        (closing.abs() > ALONG_EDGE).then(|| side.support / closing).filter(|reach| *reach >= 0.0)
    };
    let [first, middle, last] = ways;
    let reach = [reach(first)?, reach(middle)?, reach(last)?];
    Some(Edge { reach, area: 0.5 * (first * reach[0]).cross(last * reach[2]).abs() })
}
