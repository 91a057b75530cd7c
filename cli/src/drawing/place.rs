//! Places and areas on a sheet, mm.

use std::ops::{Add, Mul, Sub};

use super::tolerance::TOUCH;

/// A place on the sheet, or the way from one to another.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct At {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl At {
    /// The place `x` from the left and `y` from the top.
    pub(crate) const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// How far it is to get there.
    pub(crate) fn length(self) -> f64 {
        self.x.hypot(self.y)
    }

    /// The same way, 1 long.
    pub(crate) fn unit(self) -> Self {
        let length = self.length();
        if length > 0.0 { self * (1.0 / length) } else { Self::new(1.0, 0.0) }
    }

    /// The way square to it, to the right of one who looks along it on the sheet.
    pub(crate) const fn right(self) -> Self {
        Self::new(-self.y, self.x)
    }

    /// Half way between two places.
    pub(crate) fn middle(self, other: Self) -> Self {
        (self + other) * 0.5
    }

    /// Whether it lies in an outline, which may be any simple one.
    pub(crate) fn is_in(self, outline: &[Self]) -> bool {
        let crossed = edges(outline).filter(|[start, end]| {
            let spans = (start.y > self.y) != (end.y > self.y);
            spans && self.x < start.x + (end.x - start.x) * (self.y - start.y) / (end.y - start.y)
        });
        crossed.count() % 2 == 1
    }

    /// Product of the lengths along one another.
    pub(crate) fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }
}

impl Add for At {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl Sub for At {
    type Output = Self;

    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl Mul<f64> for At {
    type Output = Self;

    fn mul(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by)
    }
}

/// An upright rectangle.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Area {
    /// Its corner at the left and the top.
    pub at: At,
    /// To the right.
    pub width: f64,
    /// Down.
    pub height: f64,
}

impl Area {
    /// The area of this size whose left top corner is there.
    pub(crate) const fn new(x: f64, y: f64, width: f64, height: f64) -> Self {
        Self { at: At::new(x, y), width, height }
    }

    /// The area of this size round a middle.
    pub(crate) fn round(middle: At, width: f64, height: f64) -> Self {
        Self::new(middle.x - width / 2.0, middle.y - height / 2.0, width, height)
    }

    /// The least area that holds all `places`.
    pub(crate) fn of(places: impl IntoIterator<Item = At>) -> Self {
        let (mut low, mut high) =
            (At::new(f64::INFINITY, f64::INFINITY), At::new(f64::NEG_INFINITY, f64::NEG_INFINITY));
        for place in places {
            low = At::new(low.x.min(place.x), low.y.min(place.y));
            high = At::new(high.x.max(place.x), high.y.max(place.y));
        }
        Self { at: low, width: high.x - low.x, height: high.y - low.y }
    }

    /// Its right edge.
    pub(crate) fn right(&self) -> f64 {
        self.at.x + self.width
    }

    /// Its lower edge.
    pub(crate) fn bottom(&self) -> f64 {
        self.at.y + self.height
    }

    /// Its middle.
    pub(crate) fn middle(&self) -> At {
        At::new(self.at.x + self.width / 2.0, self.at.y + self.height / 2.0)
    }

    /// Its corners, round from the left top one.
    pub(crate) fn corners(&self) -> [At; 4] {
        let Self { at, width, height } = *self;
        [at, at + At::new(width, 0.0), at + At::new(width, height), at + At::new(0.0, height)]
    }

    /// Larger by `by` on every side; smaller where that is negative.
    pub(crate) fn grown(&self, by: f64) -> Self {
        Self::new(self.at.x - by, self.at.y - by, self.width + 2.0 * by, self.height + 2.0 * by)
    }

    /// Whether `other` lies in it whole.
    pub(crate) fn holds(&self, other: &Self) -> bool {
        self.at.x <= other.at.x + TOUCH
            && self.at.y <= other.at.y + TOUCH
            && self.right() >= other.right() - TOUCH
            && self.bottom() >= other.bottom() - TOUCH
    }
}

/// The edges of a ring, each from one corner to the next.
pub(crate) fn edges(ring: &[At]) -> impl Iterator<Item = [At; 2]> {
    ring.iter().zip(ring.iter().cycle().skip(1)).map(|(start, end)| [*start, *end])
}
