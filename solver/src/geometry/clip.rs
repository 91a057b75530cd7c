//! A straight way clipped to what several half-planes have in common.

use super::half_plane::Pass;
use super::tolerance::ALONG_SIDE;
use super::{Convex, HalfPlane, Ray, Segment};

/// The stretch of a way inside a convex region, in lengths of the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clip {
    /// Where it goes in; 0 where the way starts inside.
    pub from: f64,
    /// Where it comes out; infinite where it does not.
    pub to: f64,
    /// By which side it goes in; `None` where the way starts inside.
    pub entry: Option<usize>,
    /// By which side it comes out.
    pub exit: Option<usize>,
}

/// The stretch of a way that lies inside all sides that it passes; `None` where there is none.
#[must_use]
pub fn clip(sides: impl IntoIterator<Item = Pass>) -> Option<Clip> {
    let mut clip = Clip { from: 0.0, to: f64::INFINITY, entry: None, exit: None };
    for (side, Pass { outside, change }) in sides.into_iter().enumerate() {
        if change.abs() < ALONG_SIDE {
            if outside > 0.0 {
                return None;
            }
        } else if change < 0.0 && outside / -change > clip.from {
            (clip.from, clip.entry) = (outside / -change, Some(side));
        } else if change > 0.0 && -outside / change < clip.to {
            (clip.to, clip.exit) = (-outside / change, Some(side));
        }
    }
    (clip.from < clip.to).then_some(clip)
}

impl Ray {
    /// The stretch of the ray that lies inside all half-planes.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::{Convex, Ray};
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let cupboard = block(100.0, 0.0, 800.0, 500.0);
    /// let look = Ray { from: Point::new(0.0, 250.0), way: Point::new(100.0, 0.0) };
    /// assert!(look.clipped(&cupboard.half_planes()).is_some_and(|clip| (clip.from, clip.to) == (1.0, 9.0)));
    /// ```
    #[must_use]
    pub fn clipped(self, half_planes: &[HalfPlane]) -> Option<Clip> {
        clip(half_planes.iter().map(|side| side.passed_by(self)))
    }
}

impl Segment {
    /// Length of the part of it that lies inside a convex shape, mm.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::{Convex, Segment};
    /// let table = [(0.0, 0.0), (800.0, 0.0), (800.0, 500.0), (0.0, 500.0)].map(|(x, y)| Point::new(x, y));
    /// let table = Convex::counter_clockwise(table);
    /// assert_eq!(Segment::new(Point::new(-200.0, 250.0), Point::new(600.0, 250.0)).length_inside(&table), 600.0);
    /// assert_eq!(Segment::new(Point::new(-200.0, 600.0), Point::new(600.0, 600.0)).length_inside(&table), 0.0);
    /// ```
    #[must_use]
    pub fn length_inside(self, shape: &Convex) -> f64 {
        let ray = Ray { from: self.start, way: self.vector() };
        ray.clipped(&shape.half_planes()).map_or(0.0, |clip| (clip.to.min(1.0) - clip.from).max(0.0) * self.length())
    }
}
