//! A real piece as a list gives it.

use crate::dimension::Dimension;
use crate::kind::PieceKind;
use crate::piece::Hand;
use crate::unit::Unit;

use super::Money;

/// A piece that can be had: a candidate in a shop, or one in a store.
#[derive(Debug, Clone, PartialEq)]
pub struct ListedPiece {
    /// Line of its row, from 1.
    pub line: usize,
    /// Its name, never empty, clean of control characters; unique in its list. Any other text, and never a path.
    pub name: String,
    /// What it is.
    pub kind: PieceKind,
    /// Along its back, mm.
    pub width: f64,
    /// Away from its back, mm.
    pub depth: f64,
    /// A corner sofa's return, mm; `None` for every other kind.
    pub return_length: Option<f64>,
    /// Its second return, at the other end, mm: a U.
    pub second_return: Option<f64>,
    /// Depth of its return, where that is not the main run's, mm.
    pub return_depth: Option<f64>,
    /// Above the floor, mm.
    pub height: Option<f64>,
    /// Hands it can have: none where it is no corner sofa.
    pub hands: Vec<Hand>,
    /// Its return has no back.
    pub chaise: Option<bool>,
    /// Diagonal of the screen it carries, mm.
    pub screen: Option<f64>,
    /// Chairs at it.
    pub seats: Option<u32>,
    /// What one of it costs.
    pub price: Option<Money>,
    /// How many can be had.
    pub count: u32,
    /// How well it is liked, 0 to 100.
    pub score: Option<f64>,
    /// Height of legs that come off, mm.
    pub legs_off: Option<f64>,
    /// The narrowest its profile passes when tilted, mm, as its maker says.
    pub diagonal_depth: Option<f64>,
    /// What it looks like from its end.
    pub section: Section,
    /// The parts it comes in; empty: it comes whole.
    pub parts: Vec<Part>,
    /// The cells of the columns asked for beyond these, in their order; empty: nothing is said.
    pub more: Vec<String>,
}

/// What a piece looks like from its end, as far as its list says, mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Section {
    /// Of the seat above the floor.
    pub seat_height: Option<f64>,
    /// Of the arms above the floor, at their front.
    pub arm_height: Option<f64>,
    /// Of the back at its top, from the rear.
    pub back_thickness: Option<f64>,
    /// Of its legs, of which it is not said that they come off.
    pub leg_height: Option<f64>,
}

/// A part that a piece comes in: its three sides, mm, as written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// Width, depth, height.
    pub sides: [f64; 3],
}

impl ListedPiece {
    /// Its size in `dimension`; `None` where its kind has no such dimension.
    #[must_use]
    pub const fn size(&self, dimension: Dimension) -> Option<f64> {
        match dimension {
            Dimension::Width => Some(self.width),
            Dimension::Return => self.return_length,
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => Some(self.depth),
            Dimension::ReturnDepth => match (self.return_length, self.return_depth) {
                (None, _) => None,
                (Some(_), None) => Some(self.depth),
                (Some(_), own) => own,
            },
        }
    }
}

/// A size that no shop has.
#[derive(Debug, Clone, PartialEq)]
pub struct OddSize {
    /// Line of its row, from 1.
    pub line: usize,
    /// Name of the piece.
    pub name: String,
    /// Which size.
    pub dimension: Dimension,
    /// As listed, mm.
    pub length: f64,
    /// The least and the most that are usual, mm.
    pub usual: [f64; 2],
    /// The unit in which the same number is a usual size.
    pub likely: Option<Unit>,
}

/// A table once read.
#[derive(Debug, Clone, PartialEq)]
pub struct Listing {
    /// Its pieces, in the order of its rows.
    pub pieces: Vec<ListedPiece>,
    /// The currency its prices are in, as written; `None` where none is given.
    pub currency: Option<String>,
    /// Columns that are none of those known, and were passed over.
    pub passed_over: Vec<String>,
    /// Sizes that no shop has.
    pub odd: Vec<OddSize>,
    /// The sheet of a workbook that it stands in: lines are its rows. `None` where it is text.
    pub sheet: Option<String>,
}
