//! What stands on a floor, with the gaps between it: measured once, for all the routes of a layout.

use super::joint::Joint;
use super::mouth::Mouth;
use super::stop::Stop;
use super::{ShapeId, cut};
use crate::geometry::{Gap, gap};

/// Walls and things before any mouth cuts them, and which of them stand near each other.
#[derive(Debug, Clone)]
pub(super) struct Obstacles {
    pub(super) stops: Vec<Stop>,
    /// Each two that stand nearer than the limit, and their gap.
    gaps: Vec<([usize; 2], Gap)>,
}

/// What one route meets: obstacles that it leaves as they are, and what its mouths make of the others.
pub(super) struct Met<'a> {
    obstacles: &'a Obstacles,
    /// Whether an obstacle counts on this way and is not cut.
    whole: Vec<bool>,
    /// Both ends and the back of each mouth (three for each, in that order), then what is left of cut obstacles.
    cut: Vec<Stop>,
}

impl Obstacles {
    /// Walls (as whole stretches) and things, and every gap below `limit` between them.
    pub(super) fn new(walls: &[Stop], things: Vec<Stop>, limit: f64) -> Self {
        let mut stops = walls.to_vec();
        stops.extend(things);
        let mut gaps = Vec::new();
        for (j, second) in stops.iter().enumerate() {
            for (i, first) in stops[..j].iter().enumerate() {
                gaps.extend(gap_below(first, second, limit).map(|gap| ([i, j], gap)));
            }
        }
        Self { stops, gaps }
    }

    /// What a route between these mouths meets of those that count on its way.
    pub(super) fn met(&self, mouths: &[Mouth], counts: impl Fn(ShapeId) -> bool) -> Met<'_> {
        let mut whole = vec![true; self.stops.len()];
        let mut cut = cut::mouth_stops(mouths);
        for (stop, whole) in self.stops.iter().zip(&mut whole) {
            if !counts(stop.id) {
                *whole = false;
            } else if let Some(mut left) = cut::left_of(stop, mouths) {
                *whole = false;
                cut.append(&mut left);
            }
        }
        Met { obstacles: self, whole, cut }
    }
}

impl Met<'_> {
    /// How many places there are for stops; some are empty.
    pub(super) fn places(&self) -> usize {
        self.whole.len() + self.cut.len()
    }

    /// The place of the stops of a mouth: its two ends, then its back.
    pub(super) fn mouth(&self, mouth: usize) -> usize {
        self.whole.len() + 3 * mouth
    }

    /// The stop at a place; `None` where there is none on this way.
    pub(super) fn stop(&self, place: usize) -> Option<&Stop> {
        match self.whole.get(place) {
            Some(true) => self.obstacles.stops.get(place),
            Some(false) => None,
            None => self.cut.get(place - self.whole.len()),
        }
    }

    /// Each two that stand nearer than `limit`: those known before, then those with what the mouths made.
    pub(super) fn gaps(&self, limit: f64) -> impl Iterator<Item = ([usize; 2], Gap)> + '_ {
        let counts = |place: &usize| self.whole.get(*place) == Some(&true);
        let known =
            self.obstacles.gaps.iter().filter(move |(between, gap)| gap.clear < limit && between.iter().all(counts));
        let fresh = (self.whole.len()..self.places()).flat_map(move |j| {
            (0..j).filter_map(move |i| Some(([i, j], gap_below(self.stop(i)?, self.stop(j)?, limit)?)))
        });
        known.copied().chain(fresh)
    }

    /// The two shapes of a joint in the order in which a chain goes over it from `stop`, with the places.
    pub(super) fn ids(&self, joint: &Joint, stop: usize) -> Option<([ShapeId; 2], [elbowroom_model::Point; 2])> {
        let [first, second] = joint.between;
        let ids = [self.stop(first)?.id, self.stop(second)?.id];
        Some(if first == stop { (ids, joint.at) } else { ([ids[1], ids[0]], [joint.at[1], joint.at[0]]) })
    }
}

fn gap_below(first: &Stop, second: &Stop, limit: f64) -> Option<Gap> {
    if first.bounds.apart_by(&second.bounds, limit) {
        return None;
    }
    Some(gap(&first.shape, &second.shape)).filter(|gap| gap.clear < limit)
}
