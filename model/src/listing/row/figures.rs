//! Cells that hold a figure: lengths with their units, counts, scores, prices.

use super::reading::Reading;
use crate::length::LengthError;
use crate::listing::columns::{Column, Which};
use crate::listing::figure::{FigureError, Style, length, plain_number};
use crate::listing::grid::GridRow;
use crate::listing::headers::NEEDED;
use crate::listing::{Money, Part};
use crate::quote::quoted;
use crate::unit::Unit;

impl Reading<'_> {
    pub(super) fn units(&mut self, row: &GridRow) -> Option<Unit> {
        let word = self.usual(row, Column::Units).to_owned();
        if word.is_empty() {
            return None;
        }
        let found = Unit::of(&word);
        if found.is_none() {
            let message = format!("`{}` is no known unit of length.", quoted(&word));
            let remedy = match crate::length::nearest_unit(&word) {
                Some(near) => format!("Did you mean `{near}`?"),
                None => "Units are mm, cm, m, in, ft.".to_owned(),
            };
            self.tell(row, Column::Units, "unknown_unit", "", message, remedy);
        }
        found
    }

    /// The unit of a bare number: the row's, the header's, the table's, the asker's.
    pub(super) fn unit_of(&self, column: Column, of_row: Option<Unit>) -> Option<Unit> {
        let of_header = self.places.get(&Which::Usual(column)).and_then(|(_, meant)| meant.unit);
        of_row.or(of_header).or(self.grid.units).or(self.asked.units)
    }

    pub(super) fn length(&mut self, row: &GridRow, column: Column, name: &str, units: Option<Unit>) -> Option<f64> {
        let text = self.usual(row, column);
        if text.is_empty() {
            if NEEDED.contains(&column) && self.places.contains_key(&Which::Usual(column)) {
                self.missing(row, column, name);
            }
            return None;
        }
        match length(text, self.unit_of(column, units), self.style_of(row, column)) {
            Ok(length) => Some(length),
            Err(error) => {
                let text = text.to_owned();
                self.no_figure(row, column, &text, name, &error);
                None
            }
        }
    }

    /// Tells of each column that its numbers lack a unit: once, however many they are.
    pub(super) fn no_units(&mut self) {
        for (column, (count, first)) in std::mem::take(&mut self.bare) {
            let place = self.places.get(&Which::Usual(column)).map(|(place, _)| *place);
            let header = place.and_then(|place| self.grid.headers.get(place)).map_or(column.key(), String::as_str);
            let (line, where_first) = match self.grid.header_line {
                0 => (first, String::new()),
                line => (line, format!(", the first on {}", self.told.called(first))),
            };
            let numbers = if count == 1 { "number has" } else { "numbers have" };
            let message = format!("Under `{}` {count} {numbers} no unit{where_first}.", quoted(header));
            let key = column.key();
            let remedy = format!(
                "Write the unit in the header, `{key} (cm)` or `{key} (in)`, or in each cell: mm, cm, m, in, ft."
            );
            self.told.add(line, "no_unit", "", message, remedy);
        }
    }

    /// Tells of prices that name no currency beside others that do.
    pub(super) fn no_currencies(&mut self) {
        let Some((currency, first)) = self.currency.clone() else { return };
        for (line, name, text) in std::mem::take(&mut self.unpriced) {
            let message = format!(
                "The price of {}, `{}`, names no currency; {} has `{}`.",
                quoted(&name),
                quoted(&text),
                self.told.called(first),
                quoted(&currency)
            );
            let remedy = "Write the currency in the header, `price EUR`, or beside every price.".to_owned();
            self.told.add(line, "no_currency", &name, message, remedy);
        }
    }

    pub(super) fn missing(&mut self, row: &GridRow, column: Column, name: &str) {
        let message = format!("{} has no {}.", quoted(name), column.key());
        let remedy =
            format!("Measure it and give its {}: what does not say how large it is cannot be fitted.", column.key());
        self.tell(row, column, "missing_value", name, message, remedy);
    }

    pub(super) fn no_figure(&mut self, row: &GridRow, column: Column, text: &str, name: &str, error: &FigureError) {
        if matches!(error, FigureError::NoUnit) {
            let (count, _) = self.bare.entry(column).or_insert((0, row.line));
            *count += 1;
            return;
        }
        let (code, remedy) = remedy(error, column);
        let error = crate::quote::clean(&error.to_string());
        let message = format!("The {} of {}, `{}`, {error}.", column.key(), quoted(name), quoted(text));
        self.tell(row, column, code, name, message, remedy);
    }

    pub(super) fn parts(&mut self, row: &GridRow, name: &str, units: Option<Unit>) -> Vec<Part> {
        let text = self.usual(row, Column::Parts).to_owned();
        let units = self.unit_of(Column::Parts, units);
        let mut parts = Vec::new();
        for part in text.split([';', '+']).map(str::trim).filter(|part| !part.is_empty()) {
            match part_of(part, units, self.style_of(row, Column::Parts)) {
                Ok(part) => parts.push(part),
                Err(error) => self.no_figure(row, Column::Parts, part, name, &error),
            }
        }
        parts
    }

    pub(super) fn whole(&mut self, row: &GridRow, column: Column, name: &str) -> Option<u32> {
        let text = self.usual(row, column).to_owned();
        if text.is_empty() {
            return None;
        }
        let found = text.parse::<u32>().ok().filter(|number| *number <= 1_000_000);
        if found.is_none() {
            let message = format!("The {} of {}, `{}`, is no whole number.", column.key(), quoted(name), quoted(&text));
            self.tell(row, column, "wrong_type", name, message, "Write a whole number, 0 or more.".to_owned());
        }
        found
    }

    pub(super) fn score(&mut self, row: &GridRow, name: &str) -> Option<f64> {
        let text = self.usual(row, Column::Score).to_owned();
        if text.is_empty() {
            return None;
        }
        match plain_number(&text, self.style_of(row, Column::Score)) {
            Ok(score) if (0.0..=100.0).contains(&score) => Some(score),
            Ok(_) => {
                let message =
                    format!("The score of {}, `{}`, does not lie between 0 and 100.", quoted(name), quoted(&text));
                self.tell(row, Column::Score, "score_out_of_range", name, message, "Score from 0 to 100.".to_owned());
                None
            }
            Err(error) => {
                self.no_figure(row, Column::Score, &text, name, &error);
                None
            }
        }
    }

    pub(super) fn price(&mut self, row: &GridRow, name: &str) -> Option<Money> {
        let text = self.usual(row, Column::Price).to_owned();
        if text.is_empty() {
            return None;
        }
        let (price, currency) = match Money::styled(&text, self.style_of(row, Column::Price)) {
            Ok(read) => read,
            Err(error) => {
                let error = crate::quote::clean(&error.to_string());
                let message = format!("The price of {}, `{}`, {error}.", quoted(name), quoted(&text));
                let remedy = "Write it with both decimals and nothing between thousands: `1299.00` or `1299,00`.";
                self.tell(row, Column::Price, "not_a_price", name, message, remedy.to_owned());
                return None;
            }
        };
        let of_header =
            self.places.get(&Which::Usual(Column::Price)).is_some_and(|(_, meant)| meant.currency.is_some());
        if currency.is_none() && !of_header {
            self.unpriced.push((row.line, name.to_owned(), text.clone()));
        }
        if let Some(currency) = currency.map(|currency| currency.to_uppercase()) {
            let (first, line) = self.currency.get_or_insert((currency.clone(), row.line));
            if *first != currency {
                let message = format!(
                    "{} is priced in `{}`, {} in `{}`.",
                    quoted(name),
                    quoted(&currency),
                    self.told.called(*line),
                    quoted(first)
                );
                let remedy = "Price all rows in one currency: what a change costs is not guessed.".to_owned();
                self.tell(row, Column::Price, "two_currencies", name, message, remedy);
            }
        }
        Some(price)
    }
}

/// `230 x 100 x 80 cm`: a unit after the last side holds for all.
fn part_of(text: &str, units: Option<Unit>, style: Style) -> Result<Part, FigureError> {
    let sides: Vec<&str> = text.split(['x', 'X', '×']).map(str::trim).collect();
    let [one, two, three] = sides.as_slice() else { return Err(LengthError::NotALength.into()) };
    let word = three.trim_start_matches(|c: char| !c.is_alphabetic());
    let units = Unit::of(word).or(units);
    Ok(Part { sides: [length(one, units, style)?, length(two, units, style)?, length(three, units, style)?] })
}

fn remedy(error: &FigureError, column: Column) -> (&'static str, String) {
    match error {
        FigureError::TwoReadings(..) => (
            "two_readings",
            "Write it without a mark between thousands and with a point before decimals, or say which mark parts the \
             decimals of this list."
                .to_owned(),
        ),
        FigureError::NoUnit => {
            ("no_unit", "Write the unit in the header or in the cell: mm, cm, m, in, ft.".to_owned())
        }
        FigureError::NotPositive => ("not_positive", "Give a length above 0.".to_owned()),
        FigureError::Length(LengthError::UnknownUnit { nearest: Some(near), .. }) => {
            ("unknown_unit", format!("Did you mean `{near}`?"))
        }
        FigureError::Length(LengthError::Range) => {
            ("not_a_length", "A real piece has one size; give each size a row of its own.".to_owned())
        }
        FigureError::NotANumber | FigureError::Length(_) if column == Column::Parts => {
            ("not_a_length", "Write each part as `230 x 100 x 80 cm`, parts parted by a semicolon.".to_owned())
        }
        FigureError::NotANumber | FigureError::Length(_) => {
            ("not_a_length", "Write a number, or a text such as `2.12 m`, `58 in`, `6 ft 11 in`.".to_owned())
        }
    }
}
