//! Lengths as a page tells them.
//!
//! Two ways: what one shops by is rounded to the tape's step, the safe way (that is the model's); what was measured or
//! what a rule asks for is told as exactly as a tape reads: to a millimetre, or an eighth of an inch.

use crate::words::tolerance::FORGIVEN;
use elbowroom_model::{Rounding, Unit};
use elbowroom_solver::answer::DimensionRange;

/// The finest step of a tape, mm, for metric units.
const MILLIMETRE: f64 = 1.0;
/// The same for inches: an eighth.
const EIGHTH: f64 = 25.4 / 8.0;
/// Eighths of an inch in a foot.
const FOOT: i64 = 96;

/// The unit that furniture is sold in, where rooms are measured in `unit`: inches beside feet.
pub(crate) const fn shop_unit(unit: Unit) -> Unit {
    match unit {
        Unit::Foot => Unit::Inch,
        other => other,
    }
}

/// The unit as tables head it.
pub(crate) const fn sign(unit: Unit) -> &'static str {
    match unit {
        Unit::Millimetre => "mm",
        Unit::Centimetre => "cm",
        Unit::Metre => "m",
        Unit::Inch => "in",
        Unit::Foot => "ft",
    }
}

/// `length` (mm) in the shopper's unit and step, without the unit's sign.
pub(crate) fn shopped(unit: Unit, length: f64, rounding: Rounding) -> String {
    let unit = shop_unit(unit);
    bare(&unit.words(length, rounding), unit)
}

/// A range of sizes to shop by, mm, and how finely its ends are told. The least goes up and the most goes down, so that
/// whatever lies between the ends as told lies between them as they are.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Ends {
    unit: Unit,
    least: f64,
    most: f64,
    fine: Fine,
}

/// How finely a range is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Fine {
    /// By the shopper's step: that leaves a choice.
    Step,
    /// As a tape reads: the shopper's step would leave no choice.
    Tape,
    /// To the nearest mark of a tape: no mark lies between the ends, so they are one size.
    OneSize,
}

impl Ends {
    /// The ends of a range where rooms are measured in `unit`.
    pub(crate) fn of(unit: Unit, least: f64, most: f64) -> Self {
        let unit = shop_unit(unit);
        let fine = if unit.rounded(least, Rounding::Up) < unit.rounded(most, Rounding::Down) {
            Fine::Step
        } else if marks(unit, least, Rounding::Up) <= marks(unit, most, Rounding::Down) {
            Fine::Tape
        } else {
            Fine::OneSize
        };
        Self { unit, least, most, fine }
    }

    /// The least, with its unit.
    pub(crate) fn least(&self) -> String {
        self.told(self.least, Rounding::Up)
    }

    /// The most, with its unit.
    pub(crate) fn most(&self) -> String {
        self.told(self.most, Rounding::Down)
    }

    /// A size between the ends, with its unit: rounded down, but to no less than the least as told.
    pub(crate) fn planned(&self, planned: f64) -> String {
        let (down, up) = (Rounding::Down, Rounding::Up);
        let is_under = match self.fine {
            Fine::Step => self.unit.rounded(planned, down) < self.unit.rounded(self.least, up),
            Fine::Tape => marks(self.unit, planned, down) < marks(self.unit, self.least, up),
            Fine::OneSize => true,
        };
        if is_under { self.least() } else { self.told(planned, down) }
    }

    /// A most that may go beyond this one where all else gives way, told as finely.
    pub(crate) fn most_alone(&self, alone: f64) -> String {
        if alone > self.most { self.told(alone, Rounding::Down) } else { self.most() }
    }

    /// An end without its unit's sign.
    pub(crate) fn bare(&self, end: &str) -> String {
        bare(end, self.unit)
    }

    fn told(&self, length: f64, rounding: Rounding) -> String {
        match self.fine {
            Fine::Step => self.unit.words(length, rounding),
            Fine::Tape => marked(self.unit, marks(self.unit, length, rounding)),
            Fine::OneSize if length > self.most => marked(self.unit, marks(self.unit, length, Rounding::Down)),
            Fine::OneSize => taped(self.unit, f64::midpoint(self.least, self.most)),
        }
    }
}

/// The size as planned (mm), then least and most to shop by: `230 (190-255)`; one figure where there is no choice.
pub(crate) fn planned_range(unit: Unit, found: &DimensionRange) -> String {
    let ends = Ends::of(unit, found.least, found.together);
    let [least, planned, most] = [ends.least(), ends.planned(found.planned), ends.most()].map(|end| ends.bare(&end));
    if least == most { most } else { format!("{planned} ({least}-{most})") }
}

/// What there is and what is wanted (mm), side by side: the first without its unit's sign, `31` and `35 cm`.
pub(crate) fn given_and_wanted(unit: Unit, given: f64, wanted: f64) -> [String; 2] {
    let unit = shop_unit(unit);
    let [given, wanted] = unit.side_by_side(given, wanted);
    [bare(&given, unit), wanted]
}

/// `length` (mm) as exactly as a tape reads, with its unit: `91.4 cm`, `35 7/8 in`, `11'-6 1/8"`.
pub(crate) fn taped(unit: Unit, length: f64) -> String {
    marked(unit, marks(unit, length, Rounding::Nearest))
}

/// Marks of a tape in `length` (mm). A thousandth of a millimetre is forgiven, as where one shops: it is rounding, not size.
pub(super) fn marks(unit: Unit, length: f64, rounding: Rounding) -> i64 {
    let mark = match unit {
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => MILLIMETRE,
        Unit::Inch | Unit::Foot => EIGHTH,
    };
    let marks = match rounding {
        Rounding::Nearest => (length / mark).round(),
        Rounding::Down => ((length + FORGIVEN) / mark).floor(),
        Rounding::Up => ((length - FORGIVEN) / mark).ceil(),
    };
    // Lengths of rooms are far below 2^53 marks; a cast saturates, and NaN gives 0.
    marks as i64
}

/// So many marks of a tape, with the unit.
fn marked(unit: Unit, marks: i64) -> String {
    match unit {
        Unit::Millimetre => format!("{marks} mm"),
        Unit::Centimetre => format!("{} cm", decimal(marks, 1)),
        Unit::Metre => format!("{} m", decimal(marks, 3)),
        Unit::Inch => eighths(marks),
        Unit::Foot if marks >= FOOT && marks % FOOT == 0 => format!("{} ft", marks / FOOT),
        Unit::Foot => feet(marks),
    }
}

/// The same without the unit's sign.
pub(crate) fn taped_bare(unit: Unit, length: f64) -> String {
    let unit = shop_unit(unit);
    bare(&taped(unit, length), unit)
}

/// The same of a least: rounded up.
pub(crate) fn taped_up_bare(unit: Unit, length: f64) -> String {
    let unit = shop_unit(unit);
    bare(&marked(unit, marks(unit, length, Rounding::Up)), unit)
}

/// `words` without the sign of `unit`.
fn bare(words: &str, unit: Unit) -> String {
    words.strip_suffix(sign(unit)).map_or(words, str::trim_end).to_owned()
}

/// `count` of the last of `places` decimals, zeros at the end left off.
pub(super) fn decimal(count: i64, places: u32) -> String {
    let scale = 10_i64.pow(places);
    let (sign, count) = (if count < 0 { "-" } else { "" }, count.saturating_abs());
    let fraction = format!("{:0width$}", count % scale, width = places as usize);
    match fraction.trim_end_matches('0') {
        "" => format!("{sign}{}", count / scale),
        fraction => format!("{sign}{}.{fraction}", count / scale),
    }
}

/// `count` eighths of an inch: `35 7/8 in`.
fn eighths(count: i64) -> String {
    let (sign, count) = (if count < 0 { "-" } else { "" }, count.saturating_abs());
    let (whole, part) = (count / 8, count % 8);
    let fraction = match part {
        2 | 6 => format!("{}/4", part / 2),
        4 => "1/2".to_owned(),
        part => format!("{part}/8"),
    };
    match (whole, part) {
        (whole, 0) => format!("{sign}{whole} in"),
        (0, _) => format!("{sign}{fraction} in"),
        (whole, _) => format!("{sign}{whole} {fraction} in"),
    }
}

/// `count` eighths of an inch in feet and inches as drawings write them: `17'-3"`; inches alone under a foot, `9 1/2"`.
pub(super) fn feet(count: i64) -> String {
    let (sign, count) = (if count < 0 { "-" } else { "" }, count.saturating_abs());
    let words = eighths(count % FOOT);
    let inches = words.strip_suffix(" in").unwrap_or(&words);
    match count / FOOT {
        0 => format!("{sign}{inches}\""),
        feet => format!("{sign}{feet}'-{inches}\""),
    }
}

#[cfg(test)]
mod tests {
    use super::{EIGHTH, Ends, given_and_wanted, planned_range, taped};
    use elbowroom_model::Unit;
    use elbowroom_model::length::parse;
    use elbowroom_solver::answer::DimensionRange;
    use proptest::prelude::*;

    fn shopped_range(unit: Unit, least: f64, most: f64) -> String {
        let ends = Ends::of(unit, least, most);
        let [least, most] = [ends.least(), ends.most()].map(|end| ends.bare(&end));
        if least == most { most } else { format!("{least}-{most}") }
    }

    #[test]
    fn a_tape_reads_to_a_millimetre_or_an_eighth() {
        assert_eq!(taped(Unit::Centimetre, 914.4), "91.4 cm");
        assert_eq!(taped(Unit::Metre, 4860.0), "4.86 m");
        assert_eq!(taped(Unit::Inch, 911.0), "35 7/8 in");
        assert_eq!(taped(Unit::Foot, 3505.2), "11'-6\"");
        assert_eq!([taped(Unit::Foot, 609.6), taped(Unit::Foot, 241.3)], ["2 ft", "9 1/2\""]);
        assert_eq!(taped(Unit::Centimetre, -4.0), "-0.4 cm");
    }

    #[test]
    fn a_least_goes_up_and_a_most_goes_down() {
        assert_eq!(shopped_range(Unit::Centimetre, 1901.0, 2358.9), "191-235");
        assert_eq!(shopped_range(Unit::Foot, 1900.0, 2358.9), "75-92 1/2");
        assert_eq!(shopped_range(Unit::Centimetre, 2032.0, 2032.0), "203.2");
        assert_eq!(shopped_range(Unit::Centimetre, 2032.0, 2038.0), "203.2-203.8");
        // Narrower than a step: 90 to 91 cm would be no range, and 90.3 and 90.7 lie outside it.
        assert_eq!(shopped_range(Unit::Centimetre, 903.2, 906.8), "90.4-90.6");
        // 32 3/8 in are 822.3 mm, 32 5/8 in 828.7.
        assert_eq!(shopped_range(Unit::Inch, 820.0, 829.0), "32 3/8-32 5/8");
        assert_eq!(shopped_range(Unit::Centimetre, 903.2, 904.6), "90.4");
        // Narrower than a tape reads.
        assert_eq!(shopped_range(Unit::Centimetre, 903.2, 903.8), "90.4");
        assert_eq!(shopped_range(Unit::Inch, 2400.0, 2400.0), "94 1/2");
    }

    #[test]
    fn a_size_as_planned_stands_before_its_range() {
        let told = |least, planned, together| {
            let found = DimensionRange { least, aim: None, planned, together, alone: None, most: together };
            planned_range(Unit::Centimetre, &found)
        };
        assert_eq!(told(2000.0, 2309.0, 2551.0), "230 (200-255)");
        // Rounded down it would lie under the least as told.
        assert_eq!(told(2004.0, 2004.0, 2551.0), "201 (201-255)");
        assert_eq!(told(903.2, 904.0, 906.8), "90.4 (90.4-90.6)");
        assert_eq!(told(2032.0, 2032.0, 2032.0), "203.2");
    }

    #[test]
    fn what_is_given_and_wanted_is_told_alike() {
        assert_eq!(given_and_wanted(Unit::Centimetre, 312.0, 350.0), ["31", "35 cm"]);
        assert_eq!(given_and_wanted(Unit::Foot, 304.8, 355.6), ["12", "14 in"]);
    }

    #[test]
    fn what_one_size_could_be_alone_is_told_as_finely() {
        let ends = Ends::of(Unit::Centimetre, 903.2, 906.8);
        assert_eq!([ends.least(), ends.most(), ends.most_alone(950.9)], ["90.4 cm", "90.6 cm", "95 cm"]);
        assert_eq!(ends.most_alone(906.8), ends.most());
        let fixed = Ends::of(Unit::Centimetre, 2032.0, 2032.0);
        assert_eq!([fixed.least(), fixed.most(), fixed.most_alone(2032.0)], ["203.2 cm"; 3]);
    }

    proptest! {
        /// A piece bought by the range as told is in the range as it is, wherever a mark of the tape is.
        #[test]
        fn no_range_is_told_wider_than_it_is(least in 300.0..3000.0, more in 0.0..40.0, unit in 0..Unit::ALL.len()) {
            let (unit, most) = (Unit::ALL[unit], least + more);
            let told = Ends::of(unit, least, most);
            let [low, high] = [told.least(), told.most()].map(|end| parse(&end, Unit::Millimetre).unwrap());
            prop_assert!(low <= high, "{least} {most}: {told:?}");
            if more > EIGHTH {
                prop_assert!(least - 0.01 <= low && high <= most + 0.01, "{least} {most}: {low} {high}");
            }
        }
    }
}
