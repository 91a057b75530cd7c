//! A stretch that one looks out from, and what lies ahead of it.

use crate::support::checker::plane::{
    P, Polygon, add, common, counter_clockwise, dot, extent, left, length, minus, unit,
};
use crate::support::checker::stand::Stand;

/// What lies behind by less is taken for touching, mm.
const TOUCHES: f64 = 1.0;
/// What reaches over an end by less lies beside, mm.
const BESIDE: f64 = 0.5;
/// Further than any room reaches, mm.
pub(super) const FAR: f64 = 1e6;

/// A stretch about its middle.
#[derive(Clone, Copy)]
pub(super) struct Look {
    pub(super) middle: P,
    pub(super) along: P,
    pub(super) out: P,
    pub(super) half: f64,
}

impl Look {
    pub(super) fn new(a: P, b: P, out: P) -> Self {
        let middle = add(a, minus(b, a), 0.5);
        Self { middle, along: left(out), out: unit(out), half: length(minus(b, a)) / 2.0 }
    }

    pub(super) fn less(self, by: f64) -> Self {
        Self { half: self.half - by, ..self }
    }

    /// Ahead of it, and along it from its middle.
    pub(super) fn place(&self, p: P) -> (f64, f64) {
        let from = minus(p, self.middle);
        (dot(from, self.out), dot(from, self.along))
    }

    /// What of a shape lies between two distances ahead, over its length.
    pub(super) fn part(&self, shape: &[P], (near, far): (f64, f64)) -> Polygon {
        let half = self.half - BESIDE;
        if half <= 0.0 {
            return Vec::new();
        }
        let at = |x: f64, y: f64| add(add(self.middle, self.along, x), self.out, y);
        common(shape, &counter_clockwise(vec![at(-half, near), at(half, near), at(half, far), at(-half, far)]))
    }

    /// How far ahead the nearest of the shapes begins, over its length.
    pub(super) fn clear(&self, shapes: &[Polygon]) -> Option<f64> {
        let parts = shapes.iter().map(|shape| self.part(shape, (-TOUCHES, FAR))).filter(|part| !part.is_empty());
        let clear = parts.map(|part| extent(&part, self.out).0 - dot(self.middle, self.out));
        clear.min_by(f64::total_cmp).map(|clear| clear.max(0.0))
    }

    /// From where to where along it a shape reaches that begins and ends so far ahead.
    pub(super) fn covers(&self, shape: &[P], between: (f64, f64)) -> Option<(f64, f64)> {
        let part = self.part(shape, between);
        let (from, to) = extent(&part, self.along);
        let middle = dot(self.middle, self.along);
        (!part.is_empty()).then_some((from - middle, to - middle))
    }
}

impl Stand<'_> {
    fn at(&self, x: f64, y: f64) -> P {
        add(add(self.anchor, self.along(), x), self.facing, y)
    }

    /// Its front; of a corner sofa the bay's.
    pub(super) fn looks(&self) -> Look {
        let (from, to) = if self.away.is_some() { self.bay() } else { self.across() };
        Look::new(self.at(from, self.depth), self.at(to, self.depth), self.facing)
    }

    /// The front of its return.
    pub(super) fn return_looks(&self) -> Option<Look> {
        let (away, run) = (self.away?, self.run?);
        let (from, _) = self.bay();
        Some(Look::new(self.at(from, self.depth), self.at(from, run), away))
    }

    /// The front of a second return, which looks back at the first.
    pub(super) fn second_return_looks(&self) -> Option<Look> {
        let (away, run, (_, to)) = (self.away?, self.second?, self.bay());
        Some(Look::new(self.at(to, self.depth), self.at(to, run), minus([0.0, 0.0], away)))
    }

    /// Its back, looking behind; of a corner sofa the main run's.
    pub(super) fn back(&self) -> Look {
        let (from, to) = self.across();
        Look::new(self.at(from, 0.0), self.at(to, 0.0), minus([0.0, 0.0], self.facing))
    }

    /// The back of its return.
    pub(super) fn return_back(&self) -> Option<Look> {
        let (away, run) = (self.away?, self.run?);
        Some(Look::new(self.at(0.0, 0.0), self.at(0.0, run), minus([0.0, 0.0], away)))
    }

    /// The back of a second return.
    pub(super) fn second_return_back(&self) -> Option<Look> {
        let (away, run) = (self.away?, self.second?);
        Some(Look::new(self.at(self.width, 0.0), self.at(self.width, run), away))
    }

    fn across(&self) -> (f64, f64) {
        if self.away.is_some() { (0.0, self.width) } else { (-self.width / 2.0, self.width / 2.0) }
    }
}

/// Whether two directions are within 10 degrees of opposite.
pub(super) fn opposite(a: P, b: P) -> bool {
    (-dot(a, b)).clamp(-1.0, 1.0).acos().to_degrees() <= 10.0 + 1e-6
}
