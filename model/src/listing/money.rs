//! Prices, in hundredths of whatever the list is priced in: sums are exact.

use serde::{Serialize, Serializer};

use crate::quote::is_control;

use super::figure::{FigureError, Style, is_thousand, plain_number, two_readings};

/// An amount of money, 0 or more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Money {
    /// In hundredths of the unit.
    pub hundredths: u64,
}

/// Why a cell is no price.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum MoneyError {
    /// Its figure is none.
    #[error(transparent)]
    Figure(#[from] FigureError),
    /// Below 0, or beyond what is sold.
    #[error("is no price that can be")]
    OutOfBounds,
    /// It has fractions of a hundredth.
    #[error("has more than two decimals")]
    TooFine,
}

/// How far from a whole number of hundredths an amount may lie and still be one: binary figures do not hold cents.
const A_HUNDREDTH: f64 = 1e-4;

/// The highest price that is taken.
const HIGHEST: f64 = 1e9;
/// Longest word for a currency, characters.
const LONGEST_CURRENCY: usize = 12;

impl Money {
    /// The amount in `text` and the currency that stands beside it, as written; no currency: `None`.
    ///
    /// # Errors
    /// Why it is none.
    ///
    /// ```
    /// use elbowroom_model::listing::Money;
    /// let (price, currency) = Money::read("€ 1.299,00", None)?;
    /// assert_eq!((price.hundredths, currency.as_deref()), (129_900, Some("€")));
    /// assert!(Money::read("1,299", None).is_err());
    /// # Ok::<(), elbowroom_model::listing::MoneyError>(())
    /// ```
    pub fn read(text: &str, decimals: Option<super::Decimals>) -> Result<(Self, Option<String>), MoneyError> {
        Self::styled(text, Style { said: decimals, has_commas: false })
    }

    pub(super) fn styled(text: &str, style: Style) -> Result<(Self, Option<String>), MoneyError> {
        let (before, figure, after) = parted(text.trim());
        let figure = without_spaces(figure);
        for mark in [',', '.'] {
            if style.said.is_none() && figure.matches([',', '.']).count() == 1 && is_thousand(&figure, mark) {
                return Err(two_readings(&figure, mark).into());
            }
        }
        if before.contains(['-', '−']) {
            return Err(MoneyError::OutOfBounds);
        }
        let amount = plain_number(&figure, style)?;
        let hundredths = (amount * 100.0).round();
        if amount > HIGHEST {
            return Err(MoneyError::OutOfBounds);
        }
        if (amount * 100.0 - hundredths).abs() > A_HUNDREDTH {
            return Err(MoneyError::TooFine);
        }
        let currency = match (before, after) {
            ("", "") => None,
            ("", mark) | (mark, "") if is_currency(mark) => Some(mark.to_owned()),
            _ => return Err(FigureError::NotANumber.into()),
        };
        // A whole number from 0 to 1e11.
        Ok((Self { hundredths: hundredths as u64 }, currency))
    }

    /// The amount in units: `1299.00`.
    #[must_use]
    pub fn words(self) -> String {
        format!("{}.{:02}", self.hundredths / 100, self.hundredths % 100)
    }

    /// The sum of both.
    #[must_use]
    pub const fn plus(self, other: Self) -> Self {
        Self { hundredths: self.hundredths.saturating_add(other.hundredths) }
    }
}

impl Serialize for Money {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        // Far below 2^53 hundredths.
        serializer.serialize_f64(self.hundredths as f64 / 100.0)
    }
}

/// Whether a mark beside a figure can be a currency: a sign, a code, a short word. What accounts or formulas write there
/// (`5-`, `5%`, `=5`) is none.
fn is_currency(mark: &str) -> bool {
    let is_sign =
        |c: char| c.is_alphabetic() || matches!(c, '$' | '.' | ' ') || (!c.is_ascii() && !is_control(c) && c != '−');
    mark.chars().count() <= LONGEST_CURRENCY && mark.chars().all(is_sign) && mark.chars().any(|c| c != '.' && c != ' ')
}

/// What stands before the figure, the figure, what stands after it. `1299,-` has no decimals.
fn parted(text: &str) -> (&str, &str, &str) {
    let is_digit = |c: char| c.is_ascii_digit();
    let Some(start) = text.find(is_digit) else { return ("", text, "") };
    let end = text.rfind(is_digit).map_or(start, |last| last + 1);
    let (before, rest) = text.split_at(start);
    let (figure, after) = rest.split_at(end - start);
    let after = after.strip_prefix([',', '.']).map_or(after, |rest| rest.trim_start_matches(['-', '–', '—']));
    (before.trim(), figure, after.trim())
}

/// Spaces that part thousands are left out: three digits stand after each.
fn without_spaces(figure: &str) -> String {
    let mut groups = figure.split([' ', '\u{a0}', '\u{202f}', '\'', '’']);
    let first = groups.next().unwrap_or_default();
    let rest: Vec<&str> = groups.collect();
    let whole = |group: &&str| group.split([',', '.']).next().is_some_and(|whole| whole.len() == 3);
    if !rest.is_empty() && (1..=3).contains(&first.len()) && rest.iter().all(whole) {
        return format!("{first}{}", rest.concat());
    }
    figure.to_owned()
}
