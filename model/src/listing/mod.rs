//! Lists of real pieces: a shop's candidates, a store's stock. Tables of one row for each piece, as CSV, YAML, NDJSON or a
//! workbook.
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
mod gathering;
mod grid;
mod headers;
mod json_lines;
mod money;
mod odd;
mod piece;
mod quoting;
mod row;
mod separated;
mod workbook;
mod yaml_list;

pub use asked::{Asked, UNCOUNTED};
pub use columns::Extra;
pub use encoding::LARGEST;
pub use faults::{Faults, MOST_FAULTS};
pub use figure::{Decimals, FigureError, number};
pub use form::Form;
pub use grid::{Grid, GridRow};
pub use money::{Money, MoneyError};
pub use piece::{ListedPiece, Listing, OddSize, Part, Section};

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
    let mut told = faults::FaultList::default();
    let is_known = |header: &str| columns::is_known(header, asked.extra);
    let grid = if is_workbook(bytes, asked.form) {
        workbook::grid(bytes, asked.most_rows, &is_known, &mut told)
    } else {
        let text = encoding::text(bytes).map_err(|fault| Faults::one(*fault))?;
        match asked.form.unwrap_or_else(|| Form::of_text(&text)) {
            Form::JsonLines => json_lines::grid(&text, asked, &mut told),
            Form::Yaml => yaml_list::grid(&text, asked, &mut told),
            // A workbook is no text.
            Form::Separated | Form::Workbook => separated::grid(&text, asked.most_rows, &is_known, &mut told),
        }
    };
    let listing = grid.map(|grid| row::listing(&grid, asked, &mut told));
    match listing {
        Some(listing) if told.is_empty() => Ok(listing),
        _ => Err(told.into_faults()),
    }
}

/// Whether the bytes are to be read as a workbook: they look like one, or are said to be one.
fn is_workbook(bytes: &[u8], form: Option<Form>) -> bool {
    form == Some(Form::Workbook) || workbook::is_one(bytes)
}

/// Reads a table whose cells are parted by commas, semicolons or tabs, or that stands in a workbook, whatever it is about:
/// `form`: how it is said to be written; `is_known`: whether a header is one of those looked for. Rows that are none are left
/// out, and stand among the faults with their lines.
///
/// # Errors
/// What keeps it from being read as a table; nothing is said of what the cells mean.
///
/// ```
/// let rooms = elbowroom_model::listing::table(b"room;from\na.yaml;2026-03-02\n", None, 10, &|header| header == "room");
/// let (rooms, faults) = rooms.map_err(|faults| format!("{faults:?}"))?;
/// assert!(faults.told.is_empty());
/// assert_eq!((rooms.headers.len(), rooms.rows[0].line), (2, 2));
/// # Ok::<(), String>(())
/// ```
pub fn table(
    bytes: &[u8],
    form: Option<Form>,
    most_rows: usize,
    is_known: &dyn Fn(&str) -> bool,
) -> Result<(Grid, Faults), Faults> {
    let mut told = faults::FaultList::default();
    let grid = if is_workbook(bytes, form) {
        workbook::grid(bytes, most_rows, is_known, &mut told)
    } else {
        let text = encoding::text(bytes).map_err(|fault| Faults::one(*fault))?;
        separated::grid(&text, most_rows, is_known, &mut told)
    };
    match grid {
        Some(grid) => Ok((grid, told.into_faults())),
        None => Err(told.into_faults()),
    }
}
