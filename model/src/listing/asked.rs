//! What the reader of a table is told beforehand.

use super::columns::Extra;
use super::figure::Decimals;
use super::form::Form;
use crate::unit::Unit;

/// What the reader of a table is told beforehand.
#[derive(Debug, Clone)]
pub struct Asked<'a> {
    /// How the table is written; `None`: by what it looks like.
    pub form: Option<Form>,
    /// Unit of numbers that carry none; `None`: such numbers are refused.
    pub units: Option<Unit>,
    /// Which of comma and point parts the decimals; `None`: a figure that could be read in two ways is refused.
    pub decimals: Option<Decimals>,
    /// Most rows that are taken.
    pub most_rows: usize,
    /// How many there are of a piece whose row gives no `count`: one where it is owned, as many as one likes
    /// ([`UNCOUNTED`](super::UNCOUNTED)) where it is for sale.
    pub uncounted: u32,
    /// Columns beyond the usual ones that are to be handed on as text: [`ListedPiece::more`](super::ListedPiece::more), in this order.
    pub extra: &'a [Extra],
}

/// A count that never runs out.
pub const UNCOUNTED: u32 = u32::MAX;

impl Default for Asked<'_> {
    fn default() -> Self {
        Self { form: None, units: None, decimals: None, most_rows: 0, uncounted: 1, extra: &[] }
    }
}
