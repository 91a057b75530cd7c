//! Lengths as drawings tell them: coarser than a tape reads, and feet and inches as such.

use elbowroom_model::{Rounding, Unit};

use super::lengths::{feet, marks, sign};

/// `length` (mm) as drawings tell it, without a unit: whole centimetres, metres to two places, feet and inches.
pub(crate) fn drawn(unit: Unit, length: f64) -> String {
    match unit {
        Unit::Millimetre => format!("{}", marks(unit, length, Rounding::Nearest)),
        // Lengths of rooms are far below 2^53 centimetres; a cast saturates.
        Unit::Centimetre => format!("{}", (length / 10.0).round() as i64),
        Unit::Metre => format!("{:.2}", length / 1000.0),
        Unit::Inch | Unit::Foot => feet(marks(Unit::Foot, length, Rounding::Nearest)),
    }
}

/// The same with its unit.
pub(crate) fn drawn_with_unit(unit: Unit, length: f64) -> String {
    match unit {
        Unit::Inch | Unit::Foot => drawn(unit, length),
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => format!("{} {}", drawn(unit, length), sign(unit)),
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Unit;

    use super::drawn;

    #[test]
    fn centimetres_are_whole_and_feet_have_their_inches() {
        assert_eq!([drawn(Unit::Inch, 5257.8), drawn(Unit::Centimetre, 2686.0)], ["17'-3\"", "269"]);
        assert_eq!([drawn(Unit::Foot, 3657.6), drawn(Unit::Foot, 241.3)], ["12'-0\"", "9 1/2\""]);
    }
}
