//! The joints between what stops a disc: how near each two stand, and on which side of them the route runs.

use elbowroom_model::Point;
use elbowroom_model::ring::passes_right_of;

use super::ShapeId;
use super::mouth::{FromMouth, Mouth, Side};
use super::obstacles::Met;
use super::stop::Stop;
use super::tolerance::{AT_END, ON_LINE};
use crate::geometry::Gap;

/// Two stops that stand nearer to each other than the widest disc that is asked about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Joint {
    /// Places of the two in the list of stops.
    pub(super) between: [usize; 2],
    /// How far they are apart, mm.
    pub(super) gap: f64,
    /// Nearest place on each.
    pub(super) at: [Point; 2],
    /// A path from heart to heart across the gap crosses the curve between the two starts an odd number of times.
    pub(super) odd: bool,
}

impl Joint {
    /// The two shapes in the order in which a chain goes over them from `stop`, with the places.
    pub(super) fn ids(&self, met: &Met<'_>, stop: usize) -> Option<([ShapeId; 2], [Point; 2])> {
        let [first, second] = self.between;
        let ids = [met.stop(first)?.id, met.stop(second)?.id];
        Some(if first == stop { (ids, self.at) } else { ([ids[1], ids[0]], [self.at[1], self.at[0]]) })
    }
}

/// A route's mouths as the joints need them, and where the route starts and ends.
pub(super) struct Course<'a> {
    mouths: Vec<(&'a Mouth, Point, f64)>,
    starts: [Point; 2],
}

impl<'a> Course<'a> {
    pub(super) fn new(mouths: &'a [Mouth], starts: [Point; 2]) -> Self {
        let mouths = mouths.iter().map(|mouth| (mouth, mouth.along(), mouth.width())).collect();
        Self { mouths, starts }
    }

    /// Every joint with a gap below `limit` that stops a disc.
    pub(super) fn joints(&self, met: &Met<'_>, limit: f64) -> Vec<Joint> {
        let joint = |(between, gap): ([usize; 2], Gap)| {
            let (first, second) = (met.stop(between[0])?, met.stop(between[1])?);
            if self.is_void(gap.at, [first, second]) {
                return None;
            }
            let path = [first.heart, gap.at[0], gap.at[1], second.heart];
            Some(Joint { between, gap: gap.clear, at: gap.at, odd: self.is_odd(&path) })
        };
        met.gaps(limit).filter_map(joint).collect()
    }

    /// Whether the path crosses the curve between the two starts an odd number of times. The curve runs from each
    /// start level to the right, and joins up beyond everything.
    pub(super) fn is_odd(&self, path: &[Point]) -> bool {
        let crossings = |start: Point| path.windows(2).filter(|leg| passes_right_of(start, leg[0], leg[1])).count();
        self.starts.iter().map(|start| crossings(*start)).sum::<usize>() % 2 == 1
    }

    /// Whether a nearest segment stops nobody, since it passes through a mouth or touches one from behind.
    fn is_void(&self, at: [Point; 2], stops: [&Stop; 2]) -> bool {
        self.mouths.iter().any(|&(mouth, along, width)| {
            let [from, to] = at.map(|at| mouth.place(along, at));
            if runs_through(from, to, width) {
                return true;
            }
            let (touches, runs_along) = (touches(from, width) || touches(to, width), runs_along(from, to, width));
            if !touches && !runs_along {
                return false;
            }
            let sides = stops.map(|stop| mouth.side(&stop.shape));
            let behind = sides.contains(&Side::Behind);
            (touches && behind) || (runs_along && (behind || sides == [Side::InLine; 2]))
        })
    }
}

fn runs_through(from: FromMouth, to: FromMouth, width: f64) -> bool {
    let (low, high) = if from.before <= to.before { (from, to) } else { (to, from) };
    if low.before >= -ON_LINE || high.before <= ON_LINE {
        return false;
    }
    let along = low.along + (high.along - low.along) * (low.before / (low.before - high.before));
    (-AT_END..=width + AT_END).contains(&along)
}

fn touches(place: FromMouth, width: f64) -> bool {
    place.before.abs() <= ON_LINE && place.along > AT_END && place.along < width - AT_END
}

fn runs_along(from: FromMouth, to: FromMouth, width: f64) -> bool {
    let in_line = from.before.abs() <= ON_LINE && to.before.abs() <= ON_LINE;
    in_line && from.along.min(to.along).max(AT_END) < from.along.max(to.along).min(width - AT_END)
}
