//! A number as people write lengths: `352`, `3.52`, `1/2`, `5 1/2`, `5½`.

use std::iter::Peekable;
use std::str::CharIndices;

use super::error::LengthError;

/// What is left of a text.
pub(super) type Chars<'a> = Peekable<CharIndices<'a>>;

/// Passes over what is blank.
pub(super) fn skip_space(chars: &mut Chars<'_>) {
    while chars.next_if(|(_, c)| c.is_whitespace()).is_some() {}
}

/// `352`, `3.52`, `1/2`, `5 1/2`, `½`, `5½`.
pub(super) fn number(text: &str, chars: &mut Chars<'_>) -> Result<f64, LengthError> {
    let whole = match decimal(text, chars) {
        None => return vulgar(chars).ok_or(LengthError::NotALength),
        Some(whole) => whole,
    };
    if chars.next_if(|(_, c)| *c == '/').is_some() {
        return fraction(whole, decimal(text, chars));
    }
    if let Some(part) = vulgar(chars) {
        return Ok(whole + part);
    }
    // `5 1/2`: look ahead past the space for a second number with a stroke after it.
    let mut ahead = chars.clone();
    skip_space(&mut ahead);
    if let Some(part) = vulgar(&mut ahead) {
        *chars = ahead;
        return Ok(whole + part);
    }
    if let Some(above) = decimal(text, &mut ahead)
        && ahead.next_if(|(_, c)| *c == '/').is_some()
    {
        let part = fraction(above, decimal(text, &mut ahead))?;
        *chars = ahead;
        return Ok(whole + part);
    }
    Ok(whole)
}

fn fraction(above: f64, below: Option<f64>) -> Result<f64, LengthError> {
    match below {
        Some(below) if below > 0.0 => Ok(above / below),
        _ => Err(LengthError::NotALength),
    }
}

fn decimal(text: &str, chars: &mut Chars<'_>) -> Option<f64> {
    let (start, _) = *chars.peek()?;
    let mut end = start;
    while let Some((at, c)) = chars.next_if(|(_, c)| c.is_ascii_digit() || *c == '.') {
        end = at + c.len_utf8();
    }
    text.get(start..end)?.parse().ok()
}

fn vulgar(chars: &mut Chars<'_>) -> Option<f64> {
    let value = match chars.peek()?.1 {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    };
    chars.next();
    Some(value)
}
