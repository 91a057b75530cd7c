//! What stands on a floor, with the gaps between it: measured once, for all the routes of a layout.

use super::mouth::Mouth;
use super::stop::Stop;
use super::{ShapeId, cut};
use crate::geometry::{Gap, gap};

/// The places of two stops, and how far they are apart.
type Between = ([usize; 2], Gap);

/// Walls and things before any mouth cuts them, and which of them stand near each other.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Obstacles {
    pub(super) stops: Vec<Stop>,
    /// Each two that stand nearer than the limit, and their gap.
    gaps: Vec<Between>,
    /// The first so many stand for good.
    fixed: usize,
}

/// What mouths that stay where they are make of what stands for good: the same under every layout.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct FixedCut {
    /// The mouths, widened.
    pub(super) mouths: Vec<Mouth>,
    /// Whether each of what stands for good is not cut.
    whole: Vec<bool>,
    /// As in [`Met`].
    cut: Vec<Stop>,
    /// Each two that stand nearer than the limit and were not both there before.
    gaps: Vec<Between>,
}

/// What one route meets: obstacles that it leaves as they are, and what its mouths make of the others.
pub(super) struct Met<'a> {
    obstacles: &'a Obstacles,
    /// Whether an obstacle counts on this way and is not cut.
    whole: Vec<bool>,
    /// Both ends and the back of each mouth (three for each, in that order), then what is left of cut obstacles.
    cut: Vec<Stop>,
    /// Gaps with what the mouths made that are known before.
    known: Vec<Between>,
    /// Which of what the mouths made those gaps are between, as places in `cut`.
    known_cut: [std::ops::Range<usize>; 2],
}

impl Obstacles {
    /// Walls (as whole stretches) and things, and every gap below `limit` between them.
    pub(super) fn new(walls: &[Stop], things: impl IntoIterator<Item = Stop>, limit: f64) -> Self {
        let nothing = Self { stops: Vec::new(), gaps: Vec::new(), fixed: 0 };
        nothing.with(walls.iter().cloned().chain(things), limit)
    }

    /// These, which stand for good, and more things among them.
    pub(super) fn with(&self, things: impl IntoIterator<Item = Stop>, limit: f64) -> Self {
        let fixed = self.stops.len();
        let mut all = Self { fixed, ..self.clone() };
        for second in things {
            let j = all.stops.len();
            for (i, first) in all.stops.iter().enumerate() {
                all.gaps.extend(gap_below(first, &second, limit).map(|gap| ([i, j], gap)));
            }
            all.stops.push(second);
        }
        all
    }

    /// What a route between these mouths meets of those that count on its way.
    pub(super) fn met(&self, mouths: &[Mouth], counts: impl Fn(ShapeId) -> bool) -> Met<'_> {
        let mut whole = vec![true; self.stops.len()];
        let mut cut = cut::mouth_stops(mouths);
        self.cut(&mut whole, &mut cut, |_| mouths, counts);
        Met { obstacles: self, whole, cut, known: Vec::new(), known_cut: [0..0, 0..0] }
    }

    /// The same where the first mouths are those of `before`, and `mouths` are all of them; `None` where a later one cuts what
    /// an earlier one cut.
    pub(super) fn met_after(
        &self,
        before: &FixedCut,
        mouths: &[Mouth],
        counts: impl Fn(ShapeId) -> bool,
    ) -> Option<Met<'_>> {
        let ends = 3 * before.mouths.len();
        let moving = mouths.get(before.mouths.len()..)?;
        let (of_mouths, parts) = before.cut.split_at_checked(ends)?;
        if parts.iter().any(|part| cut::left_of(part, moving).is_some()) {
            return None;
        }
        let mut whole = before.whole.clone();
        whole.resize(self.stops.len(), true);
        let mut cut = Vec::with_capacity(before.cut.len() + 3 * moving.len() + 4);
        cut.extend_from_slice(of_mouths);
        cut.append(&mut cut::mouth_stops(moving));
        let first_part = cut.len();
        cut.extend_from_slice(parts);
        let known_cut = [0..ends, first_part..cut.len()];
        self.cut(&mut whole, &mut cut, |place| if place < self.fixed { moving } else { mouths }, counts);
        let (fixed, all) = (self.fixed, self.stops.len());
        let place = |place: usize| match place.checked_sub(fixed) {
            None => place,
            Some(cut) if cut < ends => all + cut,
            Some(cut) => all + cut + 3 * moving.len(),
        };
        let known = before.gaps.iter().map(|(between, gap)| (between.map(place), *gap)).collect();
        Some(Met { obstacles: self, whole, cut, known, known_cut })
    }

    /// Cuts what is still `whole` at the mouths that cut what stands at its place, and takes out what does not count. What is
    /// left of it goes to `cut`.
    fn cut<'m>(
        &self,
        whole: &mut [bool],
        cut: &mut Vec<Stop>,
        mouths: impl Fn(usize) -> &'m [Mouth],
        counts: impl Fn(ShapeId) -> bool,
    ) {
        for (place, (stop, whole)) in self.stops.iter().zip(whole).enumerate().filter(|(_, (_, whole))| **whole) {
            if !counts(stop.id) {
                *whole = false;
            } else if let Some(mut left) = cut::left_of(stop, mouths(place)) {
                *whole = false;
                cut.append(&mut left);
            }
        }
    }
}

impl FixedCut {
    /// What these mouths make of `fixed`, with every gap below `limit`.
    pub(super) fn new(fixed: &Obstacles, mouths: Vec<Mouth>, limit: f64) -> Self {
        let met = fixed.met(&mouths, |_| true);
        let gaps = met.fresh_gaps(limit).collect();
        let Met { whole, cut, .. } = met;
        Self { mouths, whole, cut, gaps }
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
    pub(super) fn gaps(&self, limit: f64) -> impl Iterator<Item = Between> + '_ {
        let counts = |place: &usize| self.whole.get(*place) != Some(&false);
        let known = self.obstacles.gaps.iter().chain(&self.known);
        let known = known.filter(move |(between, gap)| gap.clear < limit && between.iter().all(counts));
        known.copied().chain(self.fresh_gaps(limit))
    }

    /// Each two that stand nearer than `limit` and were not measured before.
    fn fresh_gaps(&self, limit: f64) -> impl Iterator<Item = Between> + '_ {
        let whole = self.whole.len();
        (whole..self.places()).flat_map(move |j| {
            // What is fixed, and what is known of it, was measured with one another.
            let from = if self.is_known(j - whole) { self.obstacles.fixed } else { 0 };
            let measured = move |i: usize| from > 0 && i >= whole && self.is_known(i - whole);
            (from..j)
                .filter(move |i| !measured(*i))
                .filter_map(move |i| Some(([i, j], gap_below(self.stop(i)?, self.stop(j)?, limit)?)))
        })
    }

    fn is_known(&self, cut: usize) -> bool {
        self.known_cut.iter().any(|known| known.contains(&cut))
    }
}

fn gap_below(first: &Stop, second: &Stop, limit: f64) -> Option<Gap> {
    if first.bounds.apart_by(&second.bounds, limit) {
        return None;
    }
    Some(gap(&first.shape, &second.shape)).filter(|gap| gap.clear < limit)
}
