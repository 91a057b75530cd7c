//! A length as a plain number, for spreadsheets.

use elbowroom_model::{Rounding, Unit};

use super::lengths::{decimal, marks, shop_unit};

/// `length` (mm) as a plain decimal number for a spreadsheet, in the unit that furniture is sold in and as exactly as a tape
/// reads: `230.5`, `35.875`.
pub(crate) fn number(unit: Unit, length: f64, rounding: Rounding) -> String {
    let unit = shop_unit(unit);
    let marks = marks(unit, length, rounding);
    match unit {
        Unit::Millimetre => marks.to_string(),
        Unit::Centimetre => decimal(marks, 1),
        Unit::Metre => decimal(marks, 3),
        // An eighth is 125 thousandths.
        Unit::Inch | Unit::Foot => decimal(marks.saturating_mul(125), 3),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Rounding, Unit};

    use super::number;

    #[test]
    fn a_length_for_a_spreadsheet_is_a_number() {
        let told = |unit, length| number(unit, length, Rounding::Down);
        assert_eq!([told(Unit::Millimetre, 2304.6), told(Unit::Centimetre, 2304.6)], ["2304", "230.4"]);
        assert_eq!(
            [told(Unit::Metre, 2300.0), told(Unit::Inch, 911.3), told(Unit::Foot, 2400.3)],
            ["2.3", "35.875", "94.5"]
        );
        assert_eq!(number(Unit::Centimetre, 2304.6, Rounding::Nearest), "230.5");
    }
}
