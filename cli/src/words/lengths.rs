//! Lengths as a page tells them.
//!
//! Two ways: what one shops by is rounded to the tape's step, the safe way (that is the model's); what was measured or
//! what a rule asks for is told as exactly as a tape reads: to a millimetre, or an eighth of an inch.

use elbowroom_model::{Rounding, Unit};

/// The finest step of a tape, mm, for metric units.
const MILLIMETRE: f64 = 1.0;
/// The same for inches: an eighth.
const EIGHTH: f64 = 25.4 / 8.0;

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

/// Least and most that one shops by: `190-235`; one figure where there is no choice between them.
pub(crate) fn shopped_range(unit: Unit, least: f64, most: f64) -> String {
    let shop = shop_unit(unit);
    if shop.rounded(least, Rounding::Up) < shop.rounded(most, Rounding::Down) {
        format!("{}-{}", shopped(unit, least, Rounding::Up), shopped(unit, most, Rounding::Down))
    } else if most - least < MILLIMETRE {
        bare(&taped(shop, most), shop)
    } else {
        format!("{}-{}", bare(&taped(shop, least), shop), bare(&taped(shop, most), shop))
    }
}

/// `length` (mm) as exactly as a tape reads, with its unit: `91.4 cm`, `35 7/8 in`, `11 ft 6 1/8 in`.
pub(crate) fn taped(unit: Unit, length: f64) -> String {
    // Lengths of rooms are far below 2^53 steps; a cast saturates, and NaN gives 0.
    match unit {
        Unit::Millimetre => format!("{} mm", (length / MILLIMETRE).round() as i64),
        Unit::Centimetre => format!("{} cm", decimal((length / MILLIMETRE).round() as i64, 1)),
        Unit::Metre => format!("{} m", decimal((length / MILLIMETRE).round() as i64, 3)),
        Unit::Inch => eighths((length / EIGHTH).round() as i64),
        Unit::Foot => feet((length / EIGHTH).round() as i64),
    }
}

/// The same without the unit's sign.
pub(crate) fn taped_bare(unit: Unit, length: f64) -> String {
    let unit = shop_unit(unit);
    bare(&taped(unit, length), unit)
}

/// `words` without the sign of `unit`.
fn bare(words: &str, unit: Unit) -> String {
    words.strip_suffix(sign(unit)).map_or(words, str::trim_end).to_owned()
}

/// `count` of the last of `places` decimals, zeros at the end left off.
fn decimal(count: i64, places: u32) -> String {
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

/// `count` eighths of an inch in feet and inches; inches alone under two feet.
fn feet(count: i64) -> String {
    const FOOT: i64 = 96;
    match (count / FOOT, count % FOOT) {
        (-1..=1, _) => eighths(count),
        (feet, 0) => format!("{feet} ft"),
        (feet, rest) => format!("{feet} ft {}", eighths(rest.abs())),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Unit;

    use super::{shopped_range, taped};

    #[test]
    fn a_tape_reads_to_a_millimetre_or_an_eighth() {
        assert_eq!(taped(Unit::Centimetre, 914.4), "91.4 cm");
        assert_eq!(taped(Unit::Metre, 4860.0), "4.86 m");
        assert_eq!(taped(Unit::Inch, 911.0), "35 7/8 in");
        assert_eq!(taped(Unit::Foot, 3505.2), "11 ft 6 in");
        assert_eq!(taped(Unit::Centimetre, -4.0), "-0.4 cm");
    }

    #[test]
    fn a_least_goes_up_and_a_most_goes_down() {
        assert_eq!(shopped_range(Unit::Centimetre, 1901.0, 2358.9), "191-235");
        assert_eq!(shopped_range(Unit::Foot, 1900.0, 2358.9), "75-92 1/2");
        assert_eq!(shopped_range(Unit::Centimetre, 2032.0, 2032.0), "203.2");
        assert_eq!(shopped_range(Unit::Centimetre, 2032.0, 2038.0), "203.2-203.8");
    }
}
