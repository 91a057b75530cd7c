//! The floor on which the centre of a disc can be.

use elbowroom_model::Point;
use smallvec::SmallVec;

use super::cut::stops_of;
use super::mouth::{Mouth, Side};
use super::stop::Stop;
use super::tolerance::{GIVES, LEAST_CHORD, ROUNDING};
use crate::geometry::{Bounds, Pass, Segment, clip, gap};

/// Chords that are drawn at most to find where a stretch becomes free; a dozen are usual.
const MOST_CHORDS: usize = 200;
/// A part of a mouth's stretch, as distances from its first end, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Doorstep {
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Doorstep {
    /// What is left of it on either side of another.
    fn without(self, lost: Self) -> impl Iterator<Item = Self> {
        let whole = lost.to < self.from || lost.from > self.to;
        let before = Self { to: if whole { self.to } else { lost.from }, ..self };
        let after = (!whole).then_some(Self { from: lost.to, ..self });
        std::iter::once(before).chain(after).filter(|left| left.from <= left.to)
    }
}

/// What stops a disc of one size on its way between two mouths.
pub(super) struct FreeFloor<'a> {
    pub(super) stops: Vec<Stop>,
    pub(super) mouths: &'a [Mouth; 2],
    /// Half the disc's diameter, less what it gives.
    pub(super) radius: f64,
    /// For each stop, whether it lies behind the one and the other mouth's line.
    behind: Vec<[bool; 2]>,
}

impl<'a> FreeFloor<'a> {
    pub(super) fn new(walls: &[Stop], mouths: &'a [Mouth; 2], things: &[Stop], diameter: f64) -> Self {
        let stops = stops_of(walls, mouths, things);
        let is_behind = |stop: &Stop, mouth: &Mouth| mouth.side(&stop.shape) == Side::Behind;
        let behind = stops.iter().map(|stop| [is_behind(stop, &mouths[0]), is_behind(stop, &mouths[1])]).collect();
        Self { stops, mouths, radius: (diameter / 2.0 - GIVES).max(GIVES), behind }
    }

    /// Whether the centre can be at each of these places, all on the arc round `corner`.
    pub(super) fn arc_is_free(&self, corner: Point, mut places: impl Iterator<Item = Point>) -> bool {
        let about = Bounds::of(&corner.into());
        let reach = 2.0 * self.radius;
        let near = (0..self.stops.len()).filter(|stop| !self.stops[*stop].bounds.apart_by(&about, reach));
        let near: SmallVec<[usize; 16]> = near.collect();
        places.all(|place| self.is_clear(near.iter().copied(), Segment::new(place, place)))
    }

    /// Whether the centre can go straight from one place to the other.
    pub(super) fn leg_is_free(&self, leg: Segment) -> bool {
        self.is_clear(0..self.stops.len(), leg)
    }

    /// Whether none of these stops keeps the centre from going straight from one place to the other.
    fn is_clear(&self, mut stops: impl Iterator<Item = usize>, leg: Segment) -> bool {
        let shape = leg.shape();
        let bounds = Bounds::of(&shape);
        let near = self.radius - ROUNDING;
        stops.all(|place| {
            let stop = &self.stops[place];
            stop.bounds.apart_by(&bounds, near)
                || gap(&stop.shape, &shape).clear >= near
                || self.is_passed(stop, self.behind[place], leg)
        })
    }

    /// Parts of a mouth's stretch where the centre can be.
    pub(super) fn doorsteps(&self, mouth: usize) -> Vec<Doorstep> {
        let own = &self.mouths[mouth];
        let along = own.along();
        let place = |off: f64| own.stretch[0] + along * off;
        let mut free = vec![Doorstep { from: 0.0, to: own.width() }];
        for (stop, behind) in self.stops.iter().zip(&self.behind) {
            if behind[mouth] || stop.shape.corners().is_empty() {
                continue;
            }
            let Some(shadow) = self.shadow(stop, own) else { continue };
            for kept in self.outside_strips(*behind, Segment::new(place(shadow.from), place(shadow.to))) {
                let [from, to] = [kept.start, kept.end].map(|at| along.dot(at - own.stretch[0]));
                free = free.into_iter().flat_map(|step| step.without(Doorstep { from, to })).collect();
            }
        }
        free
    }

    /// Whether a stop that is nearer to a leg than the radius still does not count, since it lies behind the mouth that
    /// the leg is straight before wherever it is that near.
    fn is_passed(&self, stop: &Stop, behind: [bool; 2], leg: Segment) -> bool {
        if behind == [false, false] {
            return false;
        }
        let near = self.radius - ROUNDING;
        let parts = self.outside_strips(behind, leg);
        parts.into_iter().all(|part| gap(&stop.shape, &part.shape()).clear >= near)
    }

    /// The parts of a leg that are not straight before a mouth that the stop lies behind.
    fn outside_strips(&self, behind: [bool; 2], leg: Segment) -> Vec<Segment> {
        let mut parts = vec![leg];
        for (mouth, _) in self.mouths.iter().zip(behind).filter(|(_, behind)| *behind) {
            parts = parts.into_iter().flat_map(|part| outside_strip(mouth, part)).collect();
        }
        parts
    }

    /// Where on a mouth's stretch a stop is nearer than the radius.
    fn shadow(&self, stop: &Stop, mouth: &Mouth) -> Option<Doorstep> {
        let (along, width) = (mouth.along(), mouth.width());
        let place = |off: f64| mouth.stretch[0] + along * off;
        let found = gap(&stop.shape, &Segment::new(place(0.0), place(width)).shape());
        if found.clear >= self.radius {
            return None;
        }
        let nearest = along.dot(found.at[1] - place(0.0)).clamp(0.0, width);
        let beyond = |off: f64| gap(&stop.shape, &place(off).into()).clear - self.radius;
        Some(Doorstep { from: edge(nearest, 0.0, &beyond), to: edge(nearest, width, &beyond) })
    }
}

/// The place between `inside` (nearer than it may be) and `outside` where `beyond` rises above 0; `outside` where it does not.
/// By chords, the end that stays put weighed half from the second time on (the Illinois rule).
fn edge(inside: f64, outside: f64, beyond: &impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = ((inside, beyond(inside)), (outside, beyond(outside)));
    if high.1 < 0.0 {
        return outside;
    }
    let mut low_stays = false;
    let mut high_stays = false;
    for _ in 0..MOST_CHORDS {
        if (high.0 - low.0).abs() <= ROUNDING {
            break;
        }
        let share = (-low.1 / (high.1 - low.1)).clamp(LEAST_CHORD, 1.0 - LEAST_CHORD);
        let at = low.0 + (high.0 - low.0) * share;
        let value = beyond(at);
        if value < 0.0 {
            low = (at, value);
            high.1 *= if high_stays { 0.5 } else { 1.0 };
        } else {
            high = (at, value);
            low.1 *= if low_stays { 0.5 } else { 1.0 };
        }
        (low_stays, high_stays) = (value >= 0.0, value < 0.0);
    }
    high.0
}

/// The parts of a leg that are not straight before the mouth: between the perpendiculars at its ends, before its line.
fn outside_strip(mouth: &Mouth, leg: Segment) -> Vec<Segment> {
    let along = mouth.along();
    let (start, end) = (mouth.place(along, leg.start), mouth.place(along, leg.end));
    let width = mouth.width();
    let sides = [(start.along, end.along), (width - start.along, width - end.along), (start.before, end.before)];
    let passes = sides.map(|(at_start, at_end)| {
        let (at_start, at_end) = (at_start + ROUNDING, at_end + ROUNDING);
        Pass { outside: -at_start, change: at_start - at_end }
    });
    let Some(inside) = clip(passes).filter(|inside| inside.from < 1.0) else { return vec![leg] };
    let before = (inside.from > 0.0).then(|| Segment::new(leg.start, leg.at(inside.from)));
    let after = (inside.to < 1.0).then(|| Segment::new(leg.at(inside.to), leg.end));
    before.into_iter().chain(after).collect()
}
