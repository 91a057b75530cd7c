//! Lengths and ranges as text: `3.52 m`, `11 ft 6 in`, `11 ft 6`, `11'6"`, `5 1/2 in`, `200..260 cm`.

use super::error::LengthError;
use super::number::{Chars, number, skip_space};
use crate::unit::Unit;

/// The longest length that is taken, mm (10 km): what is longer is a slip of the pen, and would cost precision.
pub const LONGEST: f64 = 1e7;

/// One size, or a range of which either end may be missing; mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Extent {
    /// A size that is fixed.
    One(f64),
    /// A range as given.
    Between {
        /// Its lower end.
        least: Option<f64>,
        /// Its upper end.
        most: Option<f64>,
    },
}

impl Extent {
    /// The same with each of its lengths made anew.
    #[must_use]
    pub(super) fn map(self, anew: impl Fn(f64) -> f64) -> Self {
        match self {
            Self::One(length) => Self::One(anew(length)),
            Self::Between { least, most } => Self::Between { least: least.map(&anew), most: most.map(&anew) },
        }
    }
}

/// The length in `text`, mm; a number without a unit is in `units`. A leading minus sign is taken.
///
/// # Errors
/// A [`LengthError`] that says why the text is no length.
///
/// ```
/// use elbowroom_model::length::parse;
/// use elbowroom_model::Unit;
/// assert_eq!(parse("3.52 m", Unit::Inch), Ok(3520.0));
/// assert_eq!(parse("11'6\"", Unit::Centimetre), Ok(138.0 * 25.4));
/// assert_eq!(parse("11'-6\"", Unit::Centimetre), Ok(138.0 * 25.4));
/// assert_eq!(parse("11 ft 6", Unit::Centimetre), Ok(138.0 * 25.4));
/// assert_eq!(parse("5 1/2 in", Unit::Centimetre), Ok(139.7));
/// assert_eq!(parse("58", Unit::Inch), Ok(58.0 * 25.4));
/// ```
pub fn parse(text: &str, units: Unit) -> Result<f64, LengthError> {
    if text.contains("..") {
        return Err(LengthError::Range);
    }
    Quantity::of(text)?.millimetres(units)
}

/// The range or the one length in `text`, mm; a unit after a range holds for both of its ends.
///
/// # Errors
/// A [`LengthError`] that says why the text is no range. A range that runs backward is taken: the caller knows what to say.
///
/// ```
/// use elbowroom_model::length::{Extent, parse_extent};
/// use elbowroom_model::Unit;
/// let range = parse_extent("200..260 cm", Unit::Inch);
/// assert_eq!(range, Ok(Extent::Between { least: Some(2000.0), most: Some(2600.0) }));
/// ```
pub fn parse_extent(text: &str, units: Unit) -> Result<Extent, LengthError> {
    let Some((lower, upper)) = text.split_once("..") else {
        let has_dash = text.trim().chars().skip(1).any(|c| matches!(c, '-' | '–' | '—'));
        if has_dash && parse(text, units).is_err() {
            return Err(LengthError::Dash);
        }
        return parse(text, units).map(Extent::One);
    };
    let lower = end_of_range(lower)?;
    let upper = end_of_range(upper)?;
    if lower.is_none() && upper.is_none() {
        return Err(LengthError::Empty);
    }
    let lower_unit = lower.as_ref().and_then(Quantity::unit);
    let upper_unit = upper.as_ref().and_then(Quantity::unit);
    if lower_unit.is_some() && upper.is_some() && upper_unit.is_none() {
        return Err(LengthError::UnitAtLowerEndAlone);
    }
    let lower_units = upper_unit.unwrap_or(units);
    let least = lower.map(|end| end.millimetres(lower_units)).transpose()?;
    let most = upper.map(|end| end.millimetres(units)).transpose()?;
    Ok(Extent::Between { least, most })
}

/// The unit that the last number of `text` has of its own; `None` where it has none or is none.
pub(crate) fn own_unit(text: &str) -> Option<Unit> {
    let last = text.rsplit("..").find(|end| !end.trim().is_empty())?;
    Quantity::of(last).ok()?.unit()
}

/// A number that came without a unit, mm.
///
/// # Errors
/// [`LengthError::OutOfBounds`] where it is not finite or beyond [`LONGEST`].
pub fn bare(number: f64, units: Unit) -> Result<f64, LengthError> {
    within_bounds(units.length(number))
}

fn end_of_range(text: &str) -> Result<Option<Quantity>, LengthError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let end = Quantity::of(text)?;
    if end.parts.len() > 1 {
        return Err(LengthError::CompoundInRange);
    }
    Ok(Some(end))
}

fn within_bounds(length: f64) -> Result<f64, LengthError> {
    if length.is_finite() && length.abs() <= LONGEST { Ok(length) } else { Err(LengthError::OutOfBounds) }
}

/// A signed sum of numbers with their units, as written.
struct Quantity {
    negative: bool,
    parts: Vec<(f64, Option<Unit>)>,
}

impl Quantity {
    fn of(text: &str) -> Result<Self, LengthError> {
        let text = text.trim();
        if text.contains(',') {
            return Err(LengthError::Comma);
        }
        let (negative, rest) = match text.strip_prefix(['-', '−']) {
            Some(rest) => (true, rest),
            None => (false, text.strip_prefix('+').unwrap_or(text)),
        };
        let mut chars = rest.char_indices().peekable();
        let mut parts = Vec::new();
        skip_space(&mut chars);
        while chars.peek().is_some() {
            let number = number(rest, &mut chars)?;
            let unit = unit(rest, &mut chars)?;
            parts.push((number, unit));
            skip_space(&mut chars);
            // Drawings write a dash between feet and inches.
            if unit == Some(Unit::Foot) && chars.next_if(|(_, c)| *c == '-').is_some() && chars.peek().is_none() {
                return Err(LengthError::NotALength);
            }
        }
        if parts.is_empty() {
            return Err(if text.is_empty() { LengthError::Empty } else { LengthError::NotALength });
        }
        Ok(Self { negative, parts })
    }

    fn unit(&self) -> Option<Unit> {
        self.parts.first().and_then(|part| part.1)
    }

    fn millimetres(&self, units: Unit) -> Result<f64, LengthError> {
        let length = match self.parts.as_slice() {
            [(number, unit)] => unit.unwrap_or(units).length(*number),
            // A bare figure after feet is inches; of two bare ones the first is feet where the unit is.
            [(feet, of_feet), (inches, Some(Unit::Inch) | None)] if of_feet.unwrap_or(units) == Unit::Foot => {
                feet_and_inches(*feet, *inches)?
            }
            _ => return Err(LengthError::Compound),
        };
        within_bounds(if self.negative { -length } else { length })
    }
}

fn feet_and_inches(feet: f64, inches: f64) -> Result<f64, LengthError> {
    if inches >= 12.0 {
        return Err(LengthError::InchesBeyondAFoot);
    }
    // In inches first: one product, so that no rounding creeps in.
    Ok((feet * 12.0 + inches) * Unit::Inch.millimetres())
}

fn unit(text: &str, chars: &mut Chars<'_>) -> Result<Option<Unit>, LengthError> {
    skip_space(chars);
    let Some((start, first)) = chars.peek().copied() else { return Ok(None) };
    let mark = match first {
        '\'' | '′' | '’' => Some(Unit::Foot),
        '"' | '″' | '”' => Some(Unit::Inch),
        _ => None,
    };
    if mark.is_some() {
        chars.next();
        return Ok(mark);
    }
    let mut end = start;
    while let Some((at, c)) = chars.next_if(|(_, c)| c.is_alphabetic()) {
        end = at + c.len_utf8();
    }
    match text.get(start..end).unwrap_or_default() {
        // A digit or a mark that is no unit: the number's reader will have its say.
        "" => Ok(None),
        word => Unit::of(word)
            .map(Some)
            .ok_or_else(|| LengthError::UnknownUnit { unit: word.to_owned(), nearest: nearest_unit(word) }),
    }
}

/// The unit that someone who wrote `word` will have meant.
#[must_use]
pub fn nearest_unit(word: &str) -> Option<&'static str> {
    let word = word.to_lowercase();
    let known: [(&str, &str); 17] = [
        ("millimetre", "mm"),
        ("millimeter", "mm"),
        ("millimetres", "mm"),
        ("centimetre", "cm"),
        ("centimeter", "cm"),
        ("centimetres", "cm"),
        ("metre", "m"),
        ("meter", "m"),
        ("metres", "m"),
        ("meters", "m"),
        ("inch", "in"),
        ("inches", "in"),
        ("foot", "ft"),
        ("feet", "ft"),
        ("mm", "mm"),
        ("cm", "cm"),
        ("in", "in"),
    ];
    let near = |(name, unit): &(&str, &'static str)| (strsim::damerau_levenshtein(name, &word), *unit);
    let (distance, unit) = known.iter().map(near).min_by_key(|(distance, _)| *distance)?;
    (distance <= (word.chars().count() / 2).max(1)).then_some(unit)
}
