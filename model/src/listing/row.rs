//! From text cells to pieces: headers matched, every cell read, every fault told with its line.

use std::collections::BTreeMap;

use super::columns::{Column, Which};
use super::figure::{FigureError, Style, has_decimal_comma, length, plain_number};
use super::grid::{Grid, GridRow, Told};
use super::headers::{NEEDED, Places, headers};
use super::{Asked, ListedPiece, Listing, Money, Part};
use crate::corner::{Runs, TooShort};
use crate::fault::{is_control, quoted};
use crate::kind::PieceKind;
use crate::length::{LengthError, Unit};
use crate::nearest::nearest;
use crate::piece::{Dimension, Hand, SizeRange};

/// Longest name of a piece, characters.
const LONGEST_NAME: usize = 120;

/// The pieces of `grid`; all of its faults go to `told`.
pub(super) fn listing(grid: &Grid, asked: &Asked<'_>, told: &mut Told) -> Listing {
    let (places, passed_over) = headers(grid, asked, told);
    let style = Style { said: asked.decimals, has_commas: has_commas(grid, &places) };
    let mut reading = Reading { grid, asked, places: &places, style, currency: None, told };
    for meant in places.values() {
        if meant.1.which == Which::Usual(Column::Price) {
            reading.currency = meant.1.currency.clone().map(|currency| (currency, grid.header_line));
        }
    }
    let mut pieces: Vec<ListedPiece> = Vec::new();
    let mut lines: BTreeMap<String, usize> = BTreeMap::new();
    for row in &grid.rows {
        let Some(piece) = reading.piece(row) else { continue };
        if let Some(first) = lines.insert(piece.name.clone(), row.line) {
            let message = format!("{} stands on line {first} already.", piece.name);
            let remedy = "Give each row a name of its own; of one piece in hand several times give the `count`.";
            reading.told.add(row.line, "name_twice", &piece.name, message, remedy.to_owned());
        }
        pieces.push(piece);
    }
    let currency = reading.currency.map(|(currency, _)| currency);
    if pieces.is_empty() && told.is_empty() {
        let remedy = "Write a row for each piece under the header.".to_owned();
        told.add(grid.header_line, "empty_file", "", "The list has no rows.".to_owned(), remedy);
    }
    Listing { pieces, currency, passed_over }
}

fn has_commas(grid: &Grid, places: &Places) -> bool {
    let figures = places.iter().filter(|(which, _)| {
        matches!(which, Which::Usual(column) if column.is_length() || matches!(column, Column::Price | Column::Score))
    });
    let at: Vec<usize> = figures.map(|(_, (place, _))| *place).collect();
    grid.rows.iter().any(|row| at.iter().any(|place| row.cells.get(*place).is_some_and(|cell| has_decimal_comma(cell))))
}

/// Reads the rows of one list.
struct Reading<'a> {
    grid: &'a Grid,
    asked: &'a Asked<'a>,
    places: &'a Places,
    style: Style,
    /// The currency so far, and the line that said it.
    currency: Option<(String, usize)>,
    told: &'a mut Told,
}

impl Reading<'_> {
    fn piece(&mut self, row: &GridRow) -> Option<ListedPiece> {
        let before = self.told.count();
        let kind = self.kind(row);
        let name = self.name(row, kind);
        let units = self.units(row);
        let mut size = |column| self.length(row, column, &name, units);
        let (width, depth, return_length) = (size(Column::Width), size(Column::Depth), size(Column::Return));
        let (height, screen) = (size(Column::Height), size(Column::Screen));
        let (legs_off, diagonal_depth) = (size(Column::LegsOff), size(Column::DiagonalDepth));
        let parts = self.parts(row, &name, units);
        let hands = self.hands(row, kind, &name);
        let chaise = self.truth(row, Column::Chaise, &name);
        let seats = self.whole(row, Column::Seats, &name);
        let count = self.whole(row, Column::Count, &name).unwrap_or(1);
        let score = self.score(row, &name);
        let price = self.price(row, &name);
        self.fits_its_kind(row, kind, &name);
        if kind.is_some_and(PieceKind::has_return)
            && let [Some(width), Some(depth), Some(return_length)] = [width, depth, return_length]
        {
            self.runs_are_long_enough(row, &name, [width, return_length, depth].map(SizeRange::fixed));
        }
        let more = (0..self.asked.extra.len()).map(|place| self.cell(row, Which::Extra(place)).to_owned()).collect();
        if self.told.count() > before {
            return None;
        }
        Some(ListedPiece {
            line: row.line,
            name,
            kind: kind?,
            width: width?,
            depth: depth?,
            return_length,
            height,
            hands,
            chaise,
            screen,
            seats,
            price,
            count,
            score,
            legs_off,
            diagonal_depth,
            parts,
            more,
        })
    }

    fn cell<'b>(&self, row: &'b GridRow, which: Which) -> &'b str {
        let place = self.places.get(&which).map(|(place, _)| *place);
        place.and_then(|place| row.cells.get(place)).map_or("", String::as_str)
    }

    fn usual<'b>(&self, row: &'b GridRow, column: Column) -> &'b str {
        self.cell(row, Which::Usual(column))
    }

    fn kind(&mut self, row: &GridRow) -> Option<PieceKind> {
        let word = self.usual(row, Column::Kind).to_owned();
        let plain = word.to_lowercase().replace([' ', '_'], "-");
        let found = plain.parse::<PieceKind>().ok();
        if found.is_none() && self.places.contains_key(&Which::Usual(Column::Kind)) {
            let keys: Vec<&str> = PieceKind::ALL.iter().map(|kind| kind.key()).collect();
            let remedy = match nearest(&plain, keys.iter().copied()) {
                Some(near) => format!("Did you mean `{near}`?"),
                None => format!("Kinds are {}.", keys.join(", ")),
            };
            let message = match word.as_str() {
                "" => "The row says no kind.".to_owned(),
                word => format!("`{}` is no known kind of piece.", quoted(word)),
            };
            let name = quoted(self.usual(row, Column::Name));
            self.told.add(row.line, "unknown_kind", &name, message, remedy);
        }
        found
    }

    fn name(&mut self, row: &GridRow, kind: Option<PieceKind>) -> String {
        let name = self.usual(row, Column::Name);
        if name.is_empty() {
            let words = kind.map_or_else(|| "piece".to_owned(), PieceKind::words);
            return format!("{words}, line {}", row.line);
        }
        if name.chars().any(is_control) {
            let message = format!("The name `{}` holds control characters.", quoted(name));
            let remedy = "Write it on one line, with plain characters alone.".to_owned();
            self.told.add(row.line, "control_character", name, message, remedy);
        } else if name.chars().count() > LONGEST_NAME {
            let message = format!("The name `{}` is longer than {LONGEST_NAME} characters.", quoted(name));
            self.told.add(row.line, "name_too_long", name, message, "Shorten it.".to_owned());
        }
        name.to_owned()
    }

    fn units(&mut self, row: &GridRow) -> Option<Unit> {
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
            self.told.add(row.line, "unknown_unit", "", message, remedy);
        }
        found
    }

    /// The unit of a bare number: the row's, the header's, the table's, the asker's.
    fn unit_of(&self, column: Column, of_row: Option<Unit>) -> Option<Unit> {
        let of_header = self.places.get(&Which::Usual(column)).and_then(|(_, meant)| meant.unit);
        of_row.or(of_header).or(self.grid.units).or(self.asked.units)
    }

    fn length(&mut self, row: &GridRow, column: Column, name: &str, units: Option<Unit>) -> Option<f64> {
        let text = self.usual(row, column);
        if text.is_empty() {
            if NEEDED.contains(&column) && self.places.contains_key(&Which::Usual(column)) {
                self.missing(row, column, name);
            }
            return None;
        }
        match length(text, self.unit_of(column, units), self.style) {
            Ok(length) => Some(length),
            Err(error) => {
                let text = text.to_owned();
                self.no_figure(row, (column, &text), name, &error);
                None
            }
        }
    }

    fn missing(&mut self, row: &GridRow, column: Column, name: &str) {
        let message = format!("{} has no {}.", quoted(name), column.key());
        let remedy =
            format!("Measure it and give its {}: what does not say how large it is cannot be fitted.", column.key());
        self.told.add(row.line, "missing_value", name, message, remedy);
    }

    fn no_figure(&mut self, row: &GridRow, (column, text): (Column, &str), name: &str, error: &FigureError) {
        let (code, remedy) = remedy(error, column);
        let error = crate::fault::clean(&error.to_string());
        let message = format!("The {} of {}, `{}`, {error}.", column.key(), quoted(name), quoted(text));
        self.told.add(row.line, code, name, message, remedy);
    }

    fn parts(&mut self, row: &GridRow, name: &str, units: Option<Unit>) -> Vec<Part> {
        let text = self.usual(row, Column::Parts).to_owned();
        let units = self.unit_of(Column::Parts, units);
        let mut parts = Vec::new();
        for part in text.split([';', '+']).map(str::trim).filter(|part| !part.is_empty()) {
            match part_of(part, units, self.style) {
                Ok(part) => parts.push(part),
                Err(error) => self.no_figure(row, (Column::Parts, part), name, &error),
            }
        }
        parts
    }

    fn hands(&mut self, row: &GridRow, kind: Option<PieceKind>, name: &str) -> Vec<Hand> {
        let word = self.usual(row, Column::Hand).to_lowercase();
        match word.as_str() {
            "left" => vec![Hand::Left],
            "right" => vec![Hand::Right],
            "" | "either" if kind.is_some_and(PieceKind::has_return) => Hand::ALL.to_vec(),
            "" => Vec::new(),
            _ => {
                let message =
                    format!("The hand of {}, `{}`, is neither left, right nor either.", quoted(name), quoted(&word));
                let remedy = "Write the side of the return as you SIT on the main run: left, right or either.";
                self.told.add(row.line, "unknown_name", name, message, remedy.to_owned());
                Vec::new()
            }
        }
    }

    fn truth(&mut self, row: &GridRow, column: Column, name: &str) -> Option<bool> {
        let word = self.usual(row, column).to_lowercase();
        match word.as_str() {
            "" => None,
            "true" | "yes" | "y" | "1" => Some(true),
            "false" | "no" | "n" | "0" => Some(false),
            _ => {
                let message =
                    format!("The {} of {}, `{}`, is neither yes nor no.", column.key(), quoted(name), quoted(&word));
                self.told.add(row.line, "wrong_type", name, message, "Write yes or no.".to_owned());
                None
            }
        }
    }

    fn whole(&mut self, row: &GridRow, column: Column, name: &str) -> Option<u32> {
        let text = self.usual(row, column).to_owned();
        if text.is_empty() {
            return None;
        }
        let found = text.parse::<u32>().ok().filter(|number| *number <= 1_000_000);
        if found.is_none() {
            let message = format!("The {} of {}, `{}`, is no whole number.", column.key(), quoted(name), quoted(&text));
            self.told.add(row.line, "wrong_type", name, message, "Write a whole number, 0 or more.".to_owned());
        }
        found
    }

    fn score(&mut self, row: &GridRow, name: &str) -> Option<f64> {
        let text = self.usual(row, Column::Score).to_owned();
        if text.is_empty() {
            return None;
        }
        match plain_number(&text, self.style) {
            Ok(score) if (0.0..=100.0).contains(&score) => Some(score),
            Ok(_) => {
                let message =
                    format!("The score of {}, `{}`, does not lie between 0 and 100.", quoted(name), quoted(&text));
                self.told.add(row.line, "score_out_of_range", name, message, "Score from 0 to 100.".to_owned());
                None
            }
            Err(error) => {
                self.no_figure(row, (Column::Score, &text), name, &error);
                None
            }
        }
    }

    fn price(&mut self, row: &GridRow, name: &str) -> Option<Money> {
        let text = self.usual(row, Column::Price).to_owned();
        if text.is_empty() {
            return None;
        }
        let (price, currency) = match Money::styled(&text, self.style) {
            Ok(read) => read,
            Err(error) => {
                let error = crate::fault::clean(&error.to_string());
                let message = format!("The price of {}, `{}`, {error}.", quoted(name), quoted(&text));
                let remedy = "Write it with both decimals and nothing between thousands: `1299.00` or `1299,00`.";
                self.told.add(row.line, "not_a_price", name, message, remedy.to_owned());
                return None;
            }
        };
        if let Some(currency) = currency.map(|currency| currency.to_uppercase()) {
            let (first, line) = self.currency.get_or_insert((currency.clone(), row.line));
            if *first != currency {
                let message = format!(
                    "{} is priced in `{}`, line {line} in `{}`.",
                    quoted(name),
                    quoted(&currency),
                    quoted(first)
                );
                let remedy = "Price all rows in one currency: what a change costs is not guessed.".to_owned();
                self.told.add(row.line, "two_currencies", name, message, remedy);
            }
        }
        Some(price)
    }

    /// Tells a corner sofa of which a run is not longer than the other is deep.
    fn runs_are_long_enough(&mut self, row: &GridRow, name: &str, [width, return_length, depth]: [SizeRange; 3]) {
        let Some(short) = (Runs { width, return_length, depth }).too_short() else { return };
        let column = if short.which == Dimension::Return { Column::Return } else { Column::Width };
        let of_row = Unit::of(self.usual(row, Column::Units));
        let units = self.unit_of(column, of_row).unwrap_or_default();
        self.told.add(row.line, TooShort::CODE, name, short.message(&quoted(name), units), short.remedy(units));
    }

    /// Cells that belong to another kind, and a corner sofa without its return.
    fn fits_its_kind(&mut self, row: &GridRow, kind: Option<PieceKind>, name: &str) {
        let Some(kind) = kind else { return };
        for column in [Column::Return, Column::Hand, Column::Chaise] {
            let given = !self.usual(row, column).is_empty();
            if given && !kind.has_return() {
                let message = format!("{} is a {}, which has no {}.", quoted(name), kind.words(), column.key());
                let remedy = format!(
                    "Leave the cell empty, or make it a {}.",
                    PieceKind::keys_where(PieceKind::has_return).replace('-', " ")
                );
                self.told.add(row.line, "key_of_another_kind", name, message, remedy);
            }
        }
        if kind.has_return() && self.usual(row, Column::Return).is_empty() {
            self.missing(row, Column::Return, name);
        }
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
        FigureError::NoUnit => (
            "no_unit",
            format!("Write the unit in the header, `{} cm`, or in the cell: mm, cm, m, in, ft.", column.key()),
        ),
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
