//! All that lies on one side of a line.

use elbowroom_model::Point;

use super::Ray;

/// All places `p` with `normal . p <= support`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfPlane {
    /// Unit vector out of it.
    pub normal: Point,
    /// How far it reaches in that direction, mm.
    pub support: f64,
}

impl HalfPlane {
    /// How far outside it a place lies, mm; negative where it lies inside.
    #[must_use]
    pub fn outside(&self, place: Point) -> f64 {
        self.normal.dot(place) - self.support
    }

    /// How a ray passes its edge.
    #[must_use]
    pub fn passed_by(&self, ray: Ray) -> Pass {
        Pass { outside: self.outside(ray.from), change: self.normal.dot(ray.way) }
    }
}

/// How a straight way passes the edge of a half-plane.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pass {
    /// How far outside the way starts, mm; negative where it starts inside.
    pub outside: f64,
    /// How much further outside its end lies than its start, mm.
    pub change: f64,
}
