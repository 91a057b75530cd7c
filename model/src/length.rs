//! Lengths as people write them; inside, always millimetres.

use serde::{Deserialize, Serialize};

/// A unit of length that a scenario may speak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, schemars::JsonSchema)]
pub enum Unit {
    /// Millimetres.
    #[serde(rename = "mm")]
    Millimetre,
    /// Centimetres.
    #[default]
    #[serde(rename = "cm")]
    Centimetre,
    /// Metres.
    #[serde(rename = "m")]
    Metre,
    /// Inches of exactly 25.4 mm.
    #[serde(rename = "in")]
    Inch,
    /// Feet of twelve inches.
    #[serde(rename = "ft")]
    Foot,
}

/// Which way a length is rounded when it is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest: what is measured.
    Nearest,
    /// Down: a most.
    Down,
    /// Up: a least.
    Up,
}

impl Unit {
    /// Millimetres in one of this unit.
    #[must_use]
    pub const fn millimetres(self) -> f64 {
        match self {
            Self::Millimetre => 1.0,
            Self::Centimetre => 10.0,
            Self::Metre => 1000.0,
            Self::Inch => 25.4,
            Self::Foot => 304.8,
        }
    }

    /// The step that a shopper reads on a tape: 1 cm for metric units, half an inch for feet and inches.
    #[must_use]
    pub const fn shopping_step(self) -> f64 {
        match self {
            Self::Millimetre | Self::Centimetre | Self::Metre => 10.0,
            Self::Inch | Self::Foot => 12.7,
        }
    }

    /// `length` (mm) in words, rounded to the shopper's step: `64 cm`, `1460 mm`, `1.46 m`, `25 1/2 in`, `11 ft 6 in`.
    ///
    /// ```
    /// use elbowroom_model::length::{Rounding, Unit};
    /// assert_eq!(Unit::Centimetre.words(643.9, Rounding::Down), "64 cm");
    /// assert_eq!(Unit::Inch.words(643.9, Rounding::Up), "25 1/2 in");
    /// assert_eq!(Unit::Foot.words(3505.2, Rounding::Nearest), "11 ft 6 in");
    /// ```
    #[must_use]
    pub fn words(self, length: f64, rounding: Rounding) -> String {
        let steps = self.steps(length, rounding);
        match self {
            Self::Millimetre => format!("{} mm", steps * 10),
            Self::Centimetre => format!("{steps} cm"),
            Self::Metre => {
                format!("{}{}.{:02} m", if steps < 0 { "-" } else { "" }, steps.abs() / 100, steps.abs() % 100)
            }
            Self::Inch => inches(steps),
            Self::Foot if steps.abs() < 24 => inches(steps),
            Self::Foot if steps % 24 == 0 => format!("{} ft", steps / 24),
            Self::Foot => format!("{} ft {}", steps / 24, inches(steps.abs() % 24)),
        }
    }

    /// `length` (mm) rounded to the shopper's step, mm.
    #[must_use]
    pub fn rounded(self, length: f64, rounding: Rounding) -> f64 {
        let step = self.shopping_step();
        let steps = self.steps(length, rounding);
        // Steps are whole numbers far below 2^53.
        steps as f64 * step
    }

    /// Whole shopping steps in `length`. A thousandth of a millimetre is forgiven: it is rounding, not size.
    fn steps(self, length: f64, rounding: Rounding) -> i64 {
        const FORGIVEN: f64 = 1e-3;
        let step = self.shopping_step();
        let steps = match rounding {
            Rounding::Nearest => (length / step).round(),
            Rounding::Down => ((length + FORGIVEN) / step).floor(),
            Rounding::Up => ((length - FORGIVEN) / step).ceil(),
        };
        // A cast from float to integer saturates, and NaN gives 0.
        steps as i64
    }
}

/// Half inches in words: `25 1/2 in`.
fn inches(halves: i64) -> String {
    match (halves / 2, halves % 2) {
        (0, 1) => "1/2 in".to_owned(),
        (whole, 0) => format!("{whole} in"),
        (whole, _) => format!("{whole} 1/2 in"),
    }
}
