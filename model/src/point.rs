//! A place or a direction on the plan.

use serde::Serialize;

/// A place on the plan, or a vector between two; plan coordinates in millimetres, x to the right, y up.
///
/// Written as `[x, y]`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Up the plan.
    pub y: f64,
}

impl Point {
    /// The point at (`x`, `y`).
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Scalar product.
    #[must_use]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// The third component of the vector product: positive where `other` lies to the left of `self`.
    #[must_use]
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    /// Length of the vector.
    #[must_use]
    pub fn norm(self) -> f64 {
        // No `hypot`: rooms are far from where squares run over, and roots are the same on every machine.
        self.dot(self).sqrt()
    }

    /// The vector of length one in this direction; `None` where it has no length.
    #[must_use]
    pub fn unit(self) -> Option<Self> {
        let norm = self.norm();
        (norm > 0.0 && norm.is_finite()).then(|| self * (1.0 / norm))
    }

    /// Turned a quarter to the left (counter-clockwise).
    #[must_use]
    pub const fn left(self) -> Self {
        Self::new(-self.y, self.x)
    }

    /// Turned a quarter to the right (clockwise).
    #[must_use]
    pub const fn right(self) -> Self {
        Self::new(self.y, -self.x)
    }

    /// The unit vector `degrees` counter-clockwise from +x.
    ///
    /// ```
    /// assert_eq!(elbowroom_model::Point::toward(0.0), elbowroom_model::Point::new(1.0, 0.0));
    /// ```
    #[must_use]
    pub fn toward(degrees: f64) -> Self {
        let (sine, cosine) = degrees.to_radians().sin_cos();
        Self::new(cosine, sine)
    }

    /// Turned counter-clockwise by this many radians.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// let east = Point::new(1.0, 0.0);
    /// assert!((east.turned(std::f64::consts::FRAC_PI_2) - east.left()).norm() < 1e-12);
    /// ```
    #[must_use]
    pub fn turned(self, radians: f64) -> Self {
        let (sine, cosine) = radians.sin_cos();
        self * cosine + self.left() * sine
    }

    /// The angle by which it is turned to point along `other`, radians: counter-clockwise above 0, at most half a turn.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// let east = Point::new(1.0, 0.0);
    /// assert_eq!(east.turn_to(east.left()), std::f64::consts::FRAC_PI_2);
    /// assert_eq!(east.turn_to(east.right()), -std::f64::consts::FRAC_PI_2);
    /// ```
    #[must_use]
    pub fn turn_to(self, other: Self) -> f64 {
        self.cross(other).atan2(self.dot(other))
    }

    /// Direction of the vector in degrees counter-clockwise from +x, in 0..360.
    #[must_use]
    pub fn degrees(self) -> f64 {
        let degrees = self.y.atan2(self.x).to_degrees();
        if degrees < 0.0 { degrees + 360.0 } else { degrees }
    }
}

impl std::ops::Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl std::ops::Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl std::ops::Mul<f64> for Point {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by)
    }
}

impl std::ops::Neg for Point {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y)
    }
}

impl Serialize for Point {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        [self.x, self.y].serialize(serializer)
    }
}
