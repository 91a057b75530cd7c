//! Units of length, and how a length is told in one; inside, always millimetres.

use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

/// A unit of length that a scenario may speak.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Default,
    Serialize,
    Deserialize,
    schemars::JsonSchema,
    EnumString,
    IntoStaticStr,
    VariantArray,
)]
pub enum Unit {
    /// Millimetres.
    #[serde(rename = "mm")]
    #[strum(serialize = "mm")]
    Millimetre,
    /// Centimetres.
    #[default]
    #[serde(rename = "cm")]
    #[strum(serialize = "cm")]
    Centimetre,
    /// Metres.
    #[serde(rename = "m")]
    #[strum(serialize = "m")]
    Metre,
    /// Inches of exactly 25.4 mm.
    #[serde(rename = "in")]
    #[strum(serialize = "in")]
    Inch,
    /// Feet of twelve inches.
    #[serde(rename = "ft")]
    #[strum(serialize = "ft")]
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

/// Lengths that differ by less are the same, mm: it is rounding, not size.
const FORGIVEN: f64 = 1e-3;

/// Decimals of a millimetre to which a length is told finely.
const TENTHS: usize = 1;
/// Decimals of a millimetre below which nothing is told apart.
const MICROMETRES: usize = 3;

impl Unit {
    /// Every unit, the smaller of each system first.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The unit as a scenario writes it: `cm`.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }

    /// The unit that is written `key`.
    #[must_use]
    pub fn of(key: &str) -> Option<Self> {
        key.parse().ok()
    }

    /// `length` (mm) in words, to a tenth of a millimetre: what was measured or is amiss, not what to shop for.
    ///
    /// ```
    /// use elbowroom_model::Unit;
    /// assert_eq!(Unit::Centimetre.finely(643.9), "64.39 cm");
    /// assert_eq!(Unit::Foot.finely(3517.9), "11 ft 6.5 in");
    /// ```
    #[must_use]
    pub fn finely(self, length: f64) -> String {
        self.to_places(length, TENTHS)
    }

    /// `length` (mm) in words, to so many decimals of a millimetre; of an inch one more.
    fn to_places(self, length: f64, places: usize) -> String {
        let more = match self {
            Self::Millimetre => 0,
            Self::Centimetre | Self::Inch => 1,
            Self::Metre => 3,
            Self::Foot => return feet_to_places(length, places + 1),
        };
        format!("{} {}", trimmed(length / self.millimetres(), places + more), self.key())
    }

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

    /// `number` of this unit, mm. Feet are turned into inches first: whole inches then come out without a rounding.
    #[must_use]
    pub fn length(self, number: f64) -> f64 {
        match self {
            Self::Foot => number * 12.0 * Self::Inch.millimetres(),
            _ => number * self.millimetres(),
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
    /// use elbowroom_model::{Rounding, Unit};
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

    /// What there is and what is asked for (mm), told side by side: both to the nearest shopper's step, and more finely where
    /// that shows no difference and there is one. So what is told as less is less, and what is told as equal is equal.
    ///
    /// ```
    /// use elbowroom_model::Unit;
    /// assert_eq!(Unit::Centimetre.side_by_side(609.6, 609.6), ["61 cm", "61 cm"]);
    /// assert_eq!(Unit::Centimetre.side_by_side(695.0, 609.6), ["70 cm", "61 cm"]);
    /// assert_eq!(Unit::Centimetre.side_by_side(607.0, 609.6), ["60.7 cm", "60.96 cm"]);
    /// ```
    #[must_use]
    pub fn side_by_side(self, has: f64, asked: f64) -> [String; 2] {
        let both = |told: &dyn Fn(f64) -> String| [told(has), told(asked)];
        let coarse = both(&|length| self.words(length, Rounding::Nearest));
        if coarse[0] != coarse[1] || (has - asked).abs() <= FORGIVEN {
            return coarse;
        }
        let finer = (TENTHS..=MICROMETRES).map(|places| both(&|length| self.to_places(length, places)));
        finer.into_iter().find(|[has, asked]| has != asked).unwrap_or(coarse)
    }

    /// What a rule asks for and how much of that is missing (mm): what is asked exactly, what is missing rounded up to the
    /// shopper's step, but never beyond what is asked.
    ///
    /// ```
    /// use elbowroom_model::Unit;
    /// assert_eq!(Unit::Centimetre.asked_and_missing(609.6, 23.0), ["60.96 cm", "3 cm"]);
    /// assert_eq!(Unit::Centimetre.asked_and_missing(609.6, 609.6), ["60.96 cm", "60.96 cm"]);
    /// ```
    #[must_use]
    pub fn asked_and_missing(self, asked: f64, missing: f64) -> [String; 2] {
        let missing = if self.rounded(missing, Rounding::Up) > asked {
            self.finely(missing)
        } else {
            self.words(missing, Rounding::Up)
        };
        [self.finely(asked), missing]
    }

    /// `length` (mm) rounded to the shopper's step, mm.
    #[must_use]
    pub fn rounded(self, length: f64, rounding: Rounding) -> f64 {
        let step = self.shopping_step();
        let steps = self.steps(length, rounding);
        // Steps are whole numbers far below 2^53.
        steps as f64 * step
    }

    /// Whole shopping steps in `length`. What is [`FORGIVEN`] is rounding, not size.
    fn steps(self, length: f64, rounding: Rounding) -> i64 {
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

/// `number` with at most so many decimal places, none that are 0.
fn trimmed(number: f64, places: usize) -> String {
    let text = format!("{number:.places$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// `length` (mm) in feet and inches, to so many decimals of an inch.
fn feet_to_places(length: f64, places: usize) -> String {
    // A few places: the power is exact, and parts of an inch are whole numbers far below 2^53.
    let in_an_inch = 10_f64.powi(places as i32);
    let parts = (length.abs() * in_an_inch / 25.4).round();
    let (feet, inches) = ((parts / (12.0 * in_an_inch)).floor(), parts.rem_euclid(12.0 * in_an_inch) / in_an_inch);
    let sign = if length < 0.0 && parts > 0.0 { "-" } else { "" };
    match (feet == 0.0, inches == 0.0) {
        (true, _) => format!("{sign}{} in", trimmed(inches, places)),
        (false, true) => format!("{sign}{} ft", trimmed(feet, 0)),
        (false, false) => format!("{sign}{} ft {} in", trimmed(feet, 0), trimmed(inches, places)),
    }
}
