//! What the reader of a table is told beforehand.

use super::columns::Extra;
use super::figure::Decimals;
use super::form::Form;
use crate::unit::Unit;

/// What the reader of a table is told beforehand.
#[derive(Debug, Clone, Default)]
pub struct Asked<'a> {
    /// How the table is written; `None`: by what it looks like.
    pub form: Option<Form>,
    /// Unit of numbers that carry none; `None`: such numbers are refused.
    pub units: Option<Unit>,
    /// Which of comma and point parts the decimals; `None`: a figure that could be read in two ways is refused.
    pub decimals: Option<Decimals>,
    /// Most rows that are taken.
    pub most_rows: usize,
    /// Columns beyond the usual ones that are to be handed on as text: [`ListedPiece::more`](super::ListedPiece::more), in this order.
    pub extra: &'a [Extra],
}
