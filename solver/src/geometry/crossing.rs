//! Where the lines of two segments cross.

use elbowroom_model::Point;

use super::Segment;
use super::tolerance::{END, PARALLEL};

/// Where the lines of two segments cross, as a share of the length of each: 0 at its start, 1 at its end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crossing {
    /// Share of the first.
    pub of_first: f64,
    /// Share of the second.
    pub of_second: f64,
}

impl Segment {
    /// Where the lines of this and of `other` cross; `None` where they are parallel.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Segment;
    /// let segment = |from: (f64, f64), to: (f64, f64)| Segment::new(Point::new(from.0, from.1), Point::new(to.0, to.1));
    /// let wall = segment((0.0, 0.0), (4000.0, 0.0));
    ///
    /// let across = wall.crossing(segment((1000.0, -500.0), (1000.0, 1500.0)));
    /// assert!(across.is_some_and(|crossing| crossing.is_proper() && crossing.of_first == 0.25 && crossing.of_second == 0.25));
    ///
    /// let up_to = wall.crossing(segment((1000.0, 0.0), (1000.0, 1500.0)));
    /// assert!(up_to.is_some_and(|crossing| crossing.is_on_both() && crossing.is_inside_first() && !crossing.is_proper()));
    ///
    /// assert_eq!(wall.crossing(segment((0.0, 900.0), (4000.0, 900.0))), None);
    /// ```
    #[must_use]
    pub fn crossing(self, other: Self) -> Option<Crossing> {
        of_lines(other.start - self.start, self.vector(), other.vector())
    }
}

/// Where two lines cross that run along `first` and `second`, in lengths of these; the second starts `apart` from the first.
pub(super) fn of_lines(apart: Point, first: Point, second: Point) -> Option<Crossing> {
    let turn = first.cross(second);
    if turn * turn <= PARALLEL * first.dot(first) * second.dot(second) {
        return None;
    }
    Some(Crossing { of_first: apart.cross(second) / turn, of_second: apart.cross(first) / turn })
}

impl Crossing {
    /// Whether the segments themselves have it in common, their ends included, to the last digit.
    #[must_use]
    pub fn is_on_both(self) -> bool {
        let whole = 0.0..=1.0;
        whole.contains(&self.of_first) && whole.contains(&self.of_second)
    }

    /// The same where ends that meet but for rounding count as meeting.
    #[must_use]
    pub fn is_near_both(self) -> bool {
        is_on(self.of_first) && is_on(self.of_second)
    }

    /// Whether it lies between the ends of the first and on the second, whose ends are included: what starts or ends at a wall
    /// does not go through it.
    #[must_use]
    pub fn is_inside_first(self) -> bool {
        is_inside(self.of_first) && is_on(self.of_second)
    }

    /// Whether it lies between the ends of both (a proper crossing).
    #[must_use]
    pub fn is_proper(self) -> bool {
        is_inside(self.of_first) && is_inside(self.of_second)
    }
}

/// The share is that of a place on a segment, or past its end by rounding alone.
pub(super) fn is_on(share: f64) -> bool {
    (-END..=1.0 + END).contains(&share)
}

fn is_inside(share: f64) -> bool {
    share > END && share < 1.0 - END
}
