//! The store's list: pieces that are owned, where they are, what they are worth and when they are out.

use std::io::Read;
use std::path::Path;

use elbowroom_model::Fault;
use elbowroom_model::Place;
use elbowroom_model::listing::{Asked, Extra, Faults, ListedPiece, Listing, Money, OddSize};
use elbowroom_solver::stock::Owned;

use super::days::{NotAway, away};
use crate::process::failure::Failure;
use crate::process::listed;
use crate::words::stock_faults as words;

/// Most rows of a stock.
const MOST_ROWS: usize = 100_000;
/// Most that a piece of furniture may be said to weigh, kg.
const MOST_MASS: f64 = 2000.0;
/// Most people that carry one piece.
const MOST_PEOPLE: f64 = 20.0;
/// Columns beyond those that every list of pieces has, in the order that they are handed on.
const EXTRA: [Extra; 6] = [
    Extra { key: "where", also: &["place", "location", "shelf", "bay"] },
    Extra { key: "out", also: &["dates out", "away"] },
    Extra { key: "value", also: &["worth"] },
    Extra { key: "mass", also: &["mass kg", "weight", "weight kg"] },
    Extra { key: "people", also: &["people to carry", "carriers"] },
    Extra {
        key: "mass lb",
        also: &["mass (lb)", "mass (lbs)", "mass lbs", "weight lb", "weight (lb)", "weight (lbs)", "weight lbs"],
    },
];
/// Place of what a piece is worth among them.
const VALUE: usize = 2;
/// Kilograms of a pound (exact: international yard and pound agreement of 1959, published).
const POUND: f64 = 0.453_592_37;

/// What is owned.
#[derive(Debug)]
pub(crate) struct Store {
    /// Row by row.
    pub owned: Vec<Owned>,
    /// Row by row, where it is and what one of it is worth.
    pub kept: Vec<KeptAt>,
    /// What its list is called.
    pub name: String,
    /// Columns that say nothing here.
    pub passed_over: Vec<String>,
    /// Sizes that no shop has.
    pub odd: Vec<OddSize>,
}

/// Where a row of the stock is, and what one of it is worth.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct KeptAt {
    /// Where it is.
    pub place: String,
    /// What one of it is worth.
    pub value: Option<Money>,
    /// What one of it weighs, kg; `None` where the list does not say.
    pub mass: Option<f64>,
    /// How many people carry one of it; `None` where the list does not say.
    pub people: Option<u32>,
}

/// Reads the store's list.
pub(crate) fn read(path: &Path, stdin: &mut dyn Read) -> Result<Store, Failure> {
    let asked = Asked { most_rows: MOST_ROWS, extra: &EXTRA, ..Asked::default() };
    let list = listed::read(path, stdin, &asked)?;
    let Listing { pieces, passed_over, odd, sheet, .. } = list.listing;
    let (owned, kept) = (Vec::new(), Vec::new());
    let (mut store, mut told) = (Store { owned, kept, name: list.name.clone(), passed_over, odd }, Vec::new());
    told.extend(of_one_currency(&pieces));
    for piece in pieces {
        let cell = |place: usize| piece.more.get(place).map_or("", |cell| cell.trim());
        let out = away(cell(1), piece.count).map_err(|why| match why {
            NotAway::NoSpan(span) => words::no_span(&piece.name, span),
            NotAway::WrongCount(span) => words::not_so_many(&piece.name, span, piece.count),
        });
        let value = match cell(VALUE) {
            "" => Ok(None),
            text => Money::read(text, None)
                .map(|(value, _)| Some(value))
                .map_err(|why| words::no_value(&piece.name, text, &why.to_string())),
        };
        let mass = mass([cell(3), cell(5)]).map_err(|text| words::no_mass(&piece.name, text));
        let people = figure(cell(4), MOST_PEOPLE).filter(|people| people.is_none_or(|people| people.fract() == 0.0));
        let people = people.ok_or_else(|| words::no_people(&piece.name, cell(4)));
        match (out, value, mass, people) {
            (Ok(away), Ok(value), Ok(mass), Ok(people)) => {
                // At most a hundred.
                let people = people.map(|people| people as u32);
                store.kept.push(KeptAt { place: cell(0).to_owned(), value, mass, people });
                store.owned.push(Owned { piece, away });
            }
            (out, value, mass, people) => {
                let faults = [out.err(), value.err(), mass.err(), people.err()];
                told.extend(faults.into_iter().flatten().map(|fault| at_line(*fault, piece.line)));
            }
        }
    }
    told.sort_by(Fault::before);
    if told.is_empty() {
        Ok(store)
    } else {
        Err(Failure::ListFaults { name: list.name, faults: Faults { told, beyond: 0, sheet } })
    }
}

/// The faults of values that are not all in one currency, or not all in none.
fn of_one_currency(pieces: &[ListedPiece]) -> Vec<Fault> {
    let each = pieces.iter().filter_map(|piece| {
        let text = piece.more.get(VALUE)?.trim();
        let (_, currency) = Money::read(text, None).ok().filter(|_| !text.is_empty())?;
        Some((piece, text, currency.map(|currency| currency.to_uppercase())))
    });
    let each: Vec<(&ListedPiece, &str, Option<String>)> = each.collect();
    let first = each
        .iter()
        .find_map(|(piece, _, currency)| Some(words::Valued { name: &piece.name, currency: currency.as_deref()? }));
    let Some(first) = first else { return Vec::new() };
    let fault = |(piece, text, own): &(&ListedPiece, &str, Option<String>)| {
        let fault = match own.as_deref() {
            None => words::no_currency(&piece.name, text, &first),
            Some(own) if own != first.currency => words::two_currencies(&piece.name, own, &first),
            Some(_) => return None,
        };
        Some(at_line(*fault, piece.line))
    };
    each.iter().filter_map(fault).collect()
}

/// What a piece weighs by its columns of kilograms and of pounds, kg; the text that is no mass otherwise.
fn mass([kilograms, pounds]: [&str; 2]) -> Result<Option<f64>, &str> {
    let in_pounds = figure(pounds.trim_end_matches("lb").trim(), MOST_MASS / POUND).ok_or(pounds)?;
    let in_kilograms = figure(kilograms, MOST_MASS).ok_or(kilograms)?;
    Ok(in_kilograms.or(in_pounds.map(|pounds| pounds * POUND)))
}

/// A figure above 0 and of at most `most`; `None` inside where the cell is empty, and outside where it is none.
#[expect(clippy::option_option, reason = "no figure is known apart from no cell")]
fn figure(text: &str, most: f64) -> Option<Option<f64>> {
    let text = text.strip_suffix("kg").map_or(text, str::trim);
    if text.is_empty() {
        return Some(None);
    }
    let figure = text.replacen(',', ".", 1).parse::<f64>().ok();
    figure.filter(|figure| *figure > 0.0 && *figure <= most).map(Some)
}

/// The fault with the line it is on.
pub(super) fn at_line(fault: Fault, line: usize) -> Fault {
    at_cell(fault, line, 0)
}

/// The fault with the line it is on and its column, from 1.
pub(super) fn at_cell(fault: Fault, line: usize, column: usize) -> Fault {
    Fault { place: Some(Place { line, column, offset: 0, length: 0 }), ..fault }
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::read;

    /// 110 lb are 49.895 kg: 110 x 0.45359237 (published: international yard and pound agreement of 1959).
    #[test]
    fn pounds_are_told_in_kilograms() {
        let mass = |header: &str| {
            let list = format!("kind,name,width (cm),depth (cm),{header}\nsofa,Hazel,200,90,110\n");
            let store = read(Path::new("-"), &mut list.as_bytes()).unwrap();
            store.kept[0].mass.map(|mass| (mass * 1e3).round())
        };
        assert_eq!(mass("mass (kg)"), Some(110_000.0));
        assert_eq!(mass("mass (lb)"), Some(49_895.0));
        assert_eq!(mass("Weight lbs"), Some(49_895.0));
    }
}
