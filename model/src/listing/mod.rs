//! Lists of real pieces: a shop's candidates, a store's stock. Tables of one row for each piece, as CSV, YAML or NDJSON.
//!
//! [`read`] turns the bytes of such a table into [`ListedPiece`]s, or into every fault of it with its line. What a figure
//! may be is understood or refused, never guessed: a number needs its unit (in the cell, in the header, in a column
//! `units`), and `1,200` that could be read in two ways is sent back. Which room a piece is for, what it is assigned to
//! and how a table is written out do not live here.

mod asked;
mod columns;
mod encoding;
mod faults;
mod figure;
mod form;
mod grid;
mod headers;
mod json_lines;
mod money;
mod piece;
mod quoting;
mod row;
mod separated;
mod yaml_list;

pub use asked::{Asked, UNCOUNTED};
pub use columns::Extra;
pub use encoding::LARGEST;
pub use faults::{Faults, MOST_FAULTS};
pub use figure::{Decimals, FigureError, number};
pub use form::Form;
pub use grid::{Grid, GridRow};
pub use money::{Money, MoneyError};
pub use piece::{ListedPiece, Listing, Part, Section};

/// Reads a table.
///
/// # Errors
/// All faults of all rows at once.
///
/// ```
/// use elbowroom_model::listing::{Asked, read};
/// let text = "kind;name;width (cm);depth (cm);price EUR\nsofa;Heron;212,5;95;799,00\n";
/// let asked = Asked { most_rows: 100, ..Asked::default() };
/// let listing = read(text.as_bytes(), &asked).map_err(|faults| format!("{faults:?}"))?;
/// assert_eq!(listing.pieces[0].width, 2125.0);
/// assert_eq!(listing.currency.as_deref(), Some("EUR"));
/// # Ok::<(), String>(())
/// ```
pub fn read(bytes: &[u8], asked: &Asked<'_>) -> Result<Listing, Faults> {
    let text = encoding::text(bytes).map_err(|fault| Faults { told: vec![*fault], beyond: 0 })?;
    let form = asked.form.unwrap_or_else(|| Form::of_text(&text));
    let mut told = faults::FaultList::default();
    let grid = match form {
        Form::Separated => {
            separated::grid(&text, asked.most_rows, &|header| columns::is_known(header, asked.extra), &mut told)
        }
        Form::JsonLines => json_lines::grid(&text, asked, &mut told),
        Form::Yaml => yaml_list::grid(&text, asked, &mut told),
    };
    let listing = grid.map(|grid| row::listing(&grid, asked, &mut told));
    match listing {
        Some(listing) if told.is_empty() => Ok(listing),
        _ => Err(told.into_faults()),
    }
}

/// Reads a table whose cells are parted by commas, semicolons or tabs, whatever it is about: `is_known` says whether a
/// header is one of those looked for. Rows that are none are left out, and stand among the faults with their lines.
///
/// # Errors
/// What keeps it from being read as a table; nothing is said of what the cells mean.
///
/// ```
/// let rooms = elbowroom_model::listing::table(b"room;from\na.yaml;2026-03-02\n", 10, &|header| header == "room");
/// let (rooms, faults) = rooms.map_err(|faults| format!("{faults:?}"))?;
/// assert!(faults.told.is_empty());
/// assert_eq!((rooms.headers.len(), rooms.rows[0].line), (2, 2));
/// # Ok::<(), String>(())
/// ```
pub fn table(bytes: &[u8], most_rows: usize, is_known: &dyn Fn(&str) -> bool) -> Result<(Grid, Faults), Faults> {
    let text = encoding::text(bytes).map_err(|fault| Faults { told: vec![*fault], beyond: 0 })?;
    let mut told = faults::FaultList::default();
    match separated::grid(&text, most_rows, is_known, &mut told) {
        Some(grid) => Ok((grid, told.into_faults())),
        None => Err(told.into_faults()),
    }
}
