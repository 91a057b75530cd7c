//! Figures as lists write them: decimal points or commas, thousands parted or not. What can be read in two ways is refused.

use crate::length::{LengthError, parse};

use crate::unit::Unit;

/// What parts the decimals of a list's figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decimals {
    /// `212,5`; a point then parts thousands.
    Comma,
    /// `212.5`; a comma then parts thousands.
    Point,
}

/// Why a cell is no figure.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum FigureError {
    /// It could be either of two figures.
    #[error("could be {0} or {1}")]
    TwoReadings(String, String),
    /// It is no number.
    #[error("is no number")]
    NotANumber,
    /// A length without a unit, where none is said elsewhere.
    #[error("has no unit")]
    NoUnit,
    /// Not above 0.
    #[error("is not above 0")]
    NotPositive,
    /// It is no length for a reason of its own.
    #[error(transparent)]
    Length(#[from] LengthError),
}

/// How the figures of one list are written, as far as that is known.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Style {
    /// As said by who asks.
    pub(super) said: Option<Decimals>,
    /// A figure of the list has a comma before its decimals beyond doubt, so its points may part thousands.
    pub(super) has_commas: bool,
}

/// The number in `text`, which is no length; `decimals`: what parts the decimals, where that is known.
///
/// # Errors
/// Why it is none.
///
/// ```
/// use elbowroom_model::listing::{Decimals, number};
/// assert_eq!(number("212,5", None), Ok(212.5));
/// assert_eq!(number("1.299,50", None), Ok(1299.5));
/// assert!(number("1,299", None).is_err());
/// assert_eq!(number("1,299", Some(Decimals::Point)), Ok(1299.0));
/// ```
pub fn number(text: &str, decimals: Option<Decimals>) -> Result<f64, FigureError> {
    plain_number(text, Style { said: decimals, has_commas: false })
}

pub(super) fn plain_number(text: &str, style: Style) -> Result<f64, FigureError> {
    let pointed = pointed(text.trim(), style)?.text;
    let number: f64 = pointed.parse().map_err(|_| FigureError::NotANumber)?;
    if number.is_finite() { Ok(number) } else { Err(FigureError::NotANumber) }
}

/// The length in `text`, mm, above 0; `units`: of a number that carries none.
pub(super) fn length(text: &str, units: Option<Unit>, style: Style) -> Result<f64, FigureError> {
    let pointed = pointed(text.trim(), style)?.text;
    // Two units that no number shares tell whether the text has one of its own.
    let length = parse(&pointed, units.unwrap_or(Unit::Millimetre))?;
    if units.is_none() && length != parse(&pointed, Unit::Foot)? {
        return Err(FigureError::NoUnit);
    }
    if length > 0.0 { Ok(length) } else { Err(FigureError::NotPositive) }
}

/// Whether a comma stands before decimals in `text` beyond doubt.
pub(super) fn has_decimal_comma(text: &str) -> bool {
    pointed(text, Style::default()).is_ok_and(|pointed| pointed.comma)
}

/// A text with its numerals as a program writes them.
struct Pointed {
    text: String,
    /// A comma stood before decimals.
    comma: bool,
}

fn pointed(text: &str, style: Style) -> Result<Pointed, FigureError> {
    let mut out = Pointed { text: String::with_capacity(text.len()), comma: false };
    let mut rest = text;
    let in_numeral = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
    while let Some(start) = rest.find(in_numeral) {
        let (before, from) = rest.split_at(start);
        let (numeral, after) = from.split_at(from.find(|c| !in_numeral(c)).unwrap_or(from.len()));
        out.text.push_str(before);
        let (number, comma) = numeral_of(numeral, style)?;
        out.text.push_str(&number);
        out.comma |= comma;
        rest = after;
    }
    out.text.push_str(rest);
    Ok(out)
}

/// A numeral with a point before its decimals and nothing between thousands; whether a comma stood before them.
fn numeral_of(numeral: &str, style: Style) -> Result<(String, bool), FigureError> {
    if !numeral.contains([',', '.']) || numeral.contains("..") {
        return Ok((numeral.to_owned(), false));
    }
    if let Some(said) = style.said {
        let (decimal, thousands) = if said == Decimals::Comma { (',', '.') } else { ('.', ',') };
        return split(numeral, Some(decimal), thousands).map(|number| (number, said == Decimals::Comma));
    }
    let (commas, points) = (numeral.matches(',').count(), numeral.matches('.').count());
    match (commas, points) {
        (0, 1) if style.has_commas && is_thousand(numeral, '.') => Err(two_readings(numeral, '.')),
        (0, 1) => split(numeral, Some('.'), ',').map(|number| (number, false)),
        (1, 0) if is_thousand(numeral, ',') => Err(two_readings(numeral, ',')),
        (1, 0) => split(numeral, Some(','), '.').map(|number| (number, true)),
        (0, _) => split(numeral, None, '.').map(|number| (number, false)),
        (_, 0) => split(numeral, None, ',').map(|number| (number, false)),
        _ => {
            let last_is_comma = numeral.rfind(',') > numeral.rfind('.');
            let (decimal, thousands) = if last_is_comma { (',', '.') } else { ('.', ',') };
            split(numeral, Some(decimal), thousands).map(|number| (number, last_is_comma))
        }
    }
}

/// `1,200`: the mark may part thousands or decimals.
pub(super) fn is_thousand(numeral: &str, mark: char) -> bool {
    numeral.split_once(mark).is_some_and(|(whole, part)| {
        let digits = whole.bytes().chain(part.bytes()).all(|byte| byte.is_ascii_digit());
        digits && (1..=3).contains(&whole.len()) && !whole.starts_with('0') && part.len() == 3
    })
}

pub(super) fn two_readings(numeral: &str, mark: char) -> FigureError {
    FigureError::TwoReadings(numeral.replace(mark, ""), numeral.replace(mark, "."))
}

/// Whole part and decimals, the thousands checked: groups of three after the first.
fn split(numeral: &str, decimal: Option<char>, thousands: char) -> Result<String, FigureError> {
    let (whole, part) = match decimal {
        Some(mark) => numeral.split_once(mark).map_or((numeral, None), |(whole, part)| (whole, Some(part))),
        None => (numeral, None),
    };
    let mut groups = whole.split(thousands);
    let first = groups.next().unwrap_or_default();
    let grouped = whole.contains(thousands);
    let sound = (!grouped || (1..=3).contains(&first.len())) && groups.all(|group| group.len() == 3);
    let digits = |text: &str| text.chars().all(|c| c.is_ascii_digit());
    let whole = whole.replace(thousands, "");
    if !sound || !digits(&whole) || part.is_some_and(|part| !digits(part) || part.is_empty()) {
        return Err(FigureError::NotANumber);
    }
    Ok(match part {
        Some(part) if whole.is_empty() => format!("0.{part}"),
        Some(part) => format!("{whole}.{part}"),
        None => whole,
    })
}
