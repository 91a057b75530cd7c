//! Linear expressions in the variables of a program, and points whose coordinates are such.

use elbowroom_model::Point;

use crate::program::{Row, Terms};

/// `constant + sum of coefficient x variable`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Linear {
    /// Variable and coefficient; each variable once.
    pub terms: Terms,
    /// What is added.
    pub constant: f64,
}

impl Linear {
    /// A constant.
    #[must_use]
    pub const fn constant(constant: f64) -> Self {
        Self { terms: Terms::new_const(), constant }
    }

    /// A variable by itself.
    #[must_use]
    pub fn variable(variable: usize) -> Self {
        Self { terms: Terms::from_iter([(variable, 1.0)]), constant: 0.0 }
    }

    /// This plus `by` times `other`.
    #[must_use]
    pub fn plus(mut self, other: &Self, by: f64) -> Self {
        if by != 0.0 {
            for (variable, coefficient) in &other.terms {
                match self.terms.iter_mut().find(|(own, _)| own == variable) {
                    Some((_, own)) => *own += coefficient * by,
                    None => self.terms.push((*variable, coefficient * by)),
                }
            }
            self.constant += other.constant * by;
        }
        self
    }

    /// This plus a constant.
    #[must_use]
    pub fn shifted(mut self, by: f64) -> Self {
        self.constant += by;
        self
    }

    /// Its value at a point of the program.
    #[must_use]
    pub fn at(&self, values: &[f64]) -> f64 {
        self.terms.iter().map(|(variable, coefficient)| coefficient * values[*variable]).sum::<f64>() + self.constant
    }

    /// The row `self >= least`.
    #[must_use]
    pub fn at_least(&self, least: f64) -> Row {
        Row::at_least(self.terms.iter().copied(), least - self.constant)
    }

    /// The row `self <= most`.
    #[must_use]
    pub fn at_most(&self, most: f64) -> Row {
        Row::at_most(self.terms.iter().copied(), most - self.constant)
    }
}

/// A place whose coordinates are linear in the variables.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LinearPoint {
    /// Plan coordinate to the right.
    pub x: Linear,
    /// Plan coordinate up.
    pub y: Linear,
}

impl LinearPoint {
    /// A fixed place.
    #[must_use]
    pub const fn fixed(point: Point) -> Self {
        Self { x: Linear::constant(point.x), y: Linear::constant(point.y) }
    }

    /// This place moved by `length` in `direction`.
    #[must_use]
    pub fn moved(self, direction: Point, length: &Linear) -> Self {
        Self { x: self.x.plus(length, direction.x), y: self.y.plus(length, direction.y) }
    }

    /// How far it lies in `direction`.
    #[must_use]
    pub fn along(&self, direction: Point) -> Linear {
        Linear::default().plus(&self.x, direction.x).plus(&self.y, direction.y)
    }

    /// The vector to it from `other`.
    #[must_use]
    pub fn from(&self, other: &Self) -> Self {
        Self { x: self.x.clone().plus(&other.x, -1.0), y: self.y.clone().plus(&other.y, -1.0) }
    }

    /// Where it lies at a point of the program.
    #[must_use]
    pub fn at(&self, values: &[f64]) -> Point {
        Point::new(self.x.at(values), self.y.at(values))
    }
}
