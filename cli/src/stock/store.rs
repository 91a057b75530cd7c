//! The store's list: pieces that are owned, where they are, what they are worth and when they are out.

use std::io::Read;
use std::path::Path;

use elbowroom_model::Fault;
use elbowroom_model::Place;
use elbowroom_model::listing::{Asked, Extra, Faults, Money};
use elbowroom_solver::stock::Owned;

use super::days::{NotAway, away};
use crate::process::failure::Failure;
use crate::process::listed;
use crate::words::stock as words;

/// Most rows of a stock.
const MOST_ROWS: usize = 100_000;
/// Columns beyond those that every list of pieces has, in the order that they are handed on.
const EXTRA: [Extra; 3] = [
    Extra { key: "where", also: &["place", "location", "shelf", "bay"] },
    Extra { key: "out", also: &["dates out", "away"] },
    Extra { key: "value", also: &["worth"] },
];

/// What is owned.
#[derive(Debug)]
pub(crate) struct Store {
    /// Row by row.
    pub owned: Vec<Owned>,
    /// Row by row, where it is and what one of it is worth.
    pub kept: Vec<KeptAt>,
}

/// Where a row of the stock is, and what one of it is worth.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct KeptAt {
    /// Where it is.
    pub place: String,
    /// What one of it is worth.
    pub value: Option<Money>,
}

/// Reads the store's list.
pub(crate) fn read(path: &Path, stdin: &mut dyn Read) -> Result<Store, Failure> {
    let asked = Asked { most_rows: MOST_ROWS, extra: &EXTRA, ..Asked::default() };
    let list = listed::read(path, stdin, &asked)?;
    let (mut store, mut told) = (Store { owned: Vec::new(), kept: Vec::new() }, Vec::new());
    for piece in list.listing.pieces {
        let cell = |place: usize| piece.more.get(place).map_or("", |cell| cell.trim());
        let out = away(cell(1), piece.count).map_err(|why| match why {
            NotAway::NoSpan(span) => words::no_span(&piece.name, span),
            NotAway::WrongCount(span) => words::not_so_many(&piece.name, span, piece.count),
        });
        let value = match cell(2) {
            "" => Ok(None),
            text => Money::read(text, None)
                .map(|(value, _)| Some(value))
                .map_err(|why| words::no_value(&piece.name, text, &why.to_string())),
        };
        match (out, value) {
            (Ok(away), Ok(value)) => {
                store.kept.push(KeptAt { place: cell(0).to_owned(), value });
                store.owned.push(Owned { piece, away });
            }
            (out, value) => {
                told.extend(out.err().into_iter().chain(value.err()).map(|fault| at_line(*fault, piece.line)));
            }
        }
    }
    if told.is_empty() {
        Ok(store)
    } else {
        Err(Failure::ListFaults { name: list.name, faults: Faults { told, beyond: 0 } })
    }
}

/// The fault with the line it is on.
pub(super) fn at_line(fault: Fault, line: usize) -> Fault {
    Fault { place: Some(Place { line, column: 0, offset: 0, length: 0 }), ..fault }
}
