//! Lengths in all units and forms, exact.

use elbowroom_model::length::{Extent, LengthError, parse, parse_extent};

use elbowroom_model::{Rounding, Unit};
use proptest::prelude::*;

fn mm(text: &str) -> f64 {
    parse(text, Unit::Centimetre).unwrap_or_else(|error| panic!("`{text}` {error}"))
}

#[test]
fn every_form_gives_its_length() {
    // 1 in = 25.4 mm exactly: international yard and pound agreement, 1959 (P).
    let forms = [
        ("352", 3520.0),
        ("3.52 m", 3520.0),
        ("352 cm", 3520.0),
        ("352cm", 3520.0),
        ("3520 mm", 3520.0),
        ("58 in", 1473.2),
        ("11 ft 6 in", 3505.2),
        ("11'6\"", 3505.2),
        ("11' 6 1/2\"", 3517.9),
        ("11′6″", 3505.2),
        ("5 1/2 in", 139.7),
        ("5½ in", 139.7),
        ("1/2 in", 12.7),
        (".5 m", 500.0),
        ("6 ft", 1828.8),
        (" +3 m ", 3000.0),
        ("-3 m", -3000.0),
        ("-1 ft 6 in", -457.2),
        ("0", 0.0),
    ];
    for (text, length) in forms {
        assert!((mm(text) - length).abs() < 1e-9, "{text}: {} is not {length}", mm(text));
    }
}

#[test]
fn a_bare_number_is_in_the_unit_of_the_file() {
    for &unit in Unit::ALL {
        assert!((parse("2", unit).unwrap() - 2.0 * unit.millimetres()).abs() < 1e-9);
        assert_eq!(parse("2 m", unit), Ok(2000.0));
    }
}

#[test]
fn a_bare_number_after_feet_is_inches() {
    for text in ["11 ft 6", "11'6", "11'-6", "11 ft 6 in"] {
        assert_eq!(parse(text, Unit::Centimetre), Ok(138.0 * 25.4), "{text}");
    }
    assert_eq!(parse("11 ft 6 1/2", Unit::Centimetre), Ok(138.5 * 25.4));
    // Where bare figures are feet, the second of two is inches.
    assert_eq!(parse("16 9", Unit::Foot), Ok(201.0 * 25.4));
    assert_eq!(parse("16 9 5/8", Unit::Foot), Ok(201.625 * 25.4));
    assert_eq!(parse("5 1/2", Unit::Foot), Ok(66.0 * 25.4));
}

#[test]
fn what_is_no_length_says_why() {
    let why = |text| parse(text, Unit::Centimetre).unwrap_err();
    assert_eq!(why(""), LengthError::Empty);
    assert_eq!(why("wide"), LengthError::NotALength);
    assert_eq!(why("3.5.2 m"), LengthError::NotALength);
    assert_eq!(why("1/0 in"), LengthError::NotALength);
    assert_eq!(why("3,5 m"), LengthError::Comma);
    assert_eq!(why("3 m 52 cm"), LengthError::Compound);
    assert_eq!(why("6 in 11 ft"), LengthError::Compound);
    assert_eq!(why("16 9"), LengthError::Compound);
    assert_eq!(why("6 in 11"), LengthError::Compound);
    for slip in ["11'12", "11 ft 12", "15 ft 99 in", "15 ft 12 in", "11'12\"", "-1 ft 12 1/2 in"] {
        assert_eq!(why(slip), LengthError::InchesBeyondAFoot, "{slip}");
    }
    assert_eq!(parse("3 ft 11 7/8 in", Unit::Inch), Ok(47.875 * 25.4));
    assert_eq!(why("1..2"), LengthError::Range);
    assert_eq!(why("11 km"), LengthError::UnknownUnit { unit: "km".into(), nearest: Some("mm") });
    assert_eq!(why("6 feet"), LengthError::UnknownUnit { unit: "feet".into(), nearest: Some("ft") });
    assert_eq!(why("99999999 m"), LengthError::OutOfBounds);
}

#[test]
fn every_form_of_a_range_gives_its_ends() {
    let between = |least, most| Ok(Extent::Between { least, most });
    let range = |text| parse_extent(text, Unit::Centimetre);
    assert_eq!(range("200..260"), between(Some(2000.0), Some(2600.0)));
    assert_eq!(range("..260"), between(None, Some(2600.0)));
    assert_eq!(range("200.."), between(Some(2000.0), None));
    assert_eq!(range("2..2.6 m"), between(Some(2000.0), Some(2600.0)));
    assert_eq!(range("72 .. 90 in"), between(Some(72.0 * 25.4), Some(90.0 * 25.4)));
    assert_eq!(range("200 cm..2.6 m"), between(Some(2000.0), Some(2600.0)));
    assert_eq!(range("200"), Ok(Extent::One(2000.0)));
    assert_eq!(range("6 ft 6 in"), Ok(Extent::One(78.0 * 25.4)));
    assert_eq!(range("6..7 ft 6 in"), Err(LengthError::CompoundInRange));
    assert_eq!(range("2 m..260"), Err(LengthError::UnitAtLowerEndAlone));
    assert_eq!(range(".."), Err(LengthError::Empty));
    assert_eq!(range("200-260"), Err(LengthError::Dash));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, failure_persistence: None, ..ProptestConfig::default() })]

    /// Inches in, inches out: no drift.
    #[test]
    fn half_inches_come_out_as_they_went_in(halves in 1_i64..2000) {
        let text = Unit::Inch.words(halves as f64 * 12.7, Rounding::Nearest);
        let length = mm(&text);
        prop_assert_eq!(length, halves as f64 / 2.0 * 25.4);
        for rounding in [Rounding::Nearest, Rounding::Down, Rounding::Up] {
            prop_assert_eq!(Unit::Inch.words(length, rounding), text.clone());
        }
    }

    #[test]
    fn feet_and_inches_come_out_as_they_went_in(halves in 1_i64..4000) {
        let text = Unit::Foot.words(halves as f64 * 12.7, Rounding::Nearest);
        prop_assert_eq!(mm(&text), halves as f64 / 2.0 * 25.4);
        prop_assert_eq!(Unit::Foot.words(mm(&text), Rounding::Down), text);
    }

    #[test]
    fn what_is_told_finely_reads_back_within_a_tenth_of_a_millimetre(length in -20_000.0..20_000.0_f64) {
        for &unit in Unit::ALL {
            let text = unit.finely(length);
            prop_assert!((mm(&text) - length).abs() < 0.13, "{} {}", text, length);
        }
    }

    /// Maxima round down, minima up, each by less than a step.
    #[test]
    fn rounding_never_passes_the_length(length in 0.0..20_000.0_f64) {
        for &unit in Unit::ALL {
            let (down, up) = (unit.rounded(length, Rounding::Down), unit.rounded(length, Rounding::Up));
            prop_assert!(down <= length + 1.1e-3 && length - down < unit.shopping_step());
            prop_assert!(up >= length - 1.1e-3 && up - length < unit.shopping_step());
        }
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,12}|[0-9./ '\"a-z½-]{0,16}") {
        let _ = parse(&text, Unit::Metre);
        let _ = parse_extent(&text, Unit::Metre);
    }
}

proptest! {
    /// What there is and what is asked for are read back in the order that they have: told as less where it is less, as
    /// equal where nobody could see a difference.
    #[test]
    fn side_by_side_less_reads_as_less(
        place in 0..Unit::ALL.len(), has in 0.0..9000.0_f64, by in prop_oneof![0.0..2000.0_f64, 0.0..20.0_f64, 0.0..0.2_f64],
    ) {
        let unit = Unit::ALL[place];
        let read = |has: f64, asked: f64| unit.side_by_side(has, asked).map(|text| parse(&text, unit).unwrap());
        let [less, more] = read(has, has + by);
        prop_assert!((less - has).abs() <= 6.35 && (more - has - by).abs() <= 6.35, "{:?}", unit.side_by_side(has, has + by));
        if by > 0.01 {
            prop_assert!(less < more, "{:?}", unit.side_by_side(has, has + by));
        } else {
            prop_assert!(less <= more);
        }
        let [more, less] = read(has + by, has);
        prop_assert!(less <= more);
        prop_assert_eq!(read(has, has)[0], read(has, has)[1]);
    }

    /// No more is missing than is asked for.
    #[test]
    fn no_more_is_told_to_be_missing_than_is_asked_for(
        place in 0..Unit::ALL.len(), asked in 1.0..3000.0_f64, share in 0.0..=1.0_f64,
    ) {
        let unit = Unit::ALL[place];
        let [asked, missing] = unit.asked_and_missing(asked, asked * share).map(|text| parse(&text, unit).unwrap());
        prop_assert!(missing <= asked + 1e-9, "{missing} of {asked}");
    }
}
