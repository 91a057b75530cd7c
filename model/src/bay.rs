//! The bay of a seat: the front that one sits along with nothing beside the knees.

use crate::piece::Piece;

impl Piece {
    /// What the returns of a corner sofa leave of the front of a main run so wide, at their usual depths, mm; of what has none
    /// the width itself.
    #[must_use]
    pub fn bay_of(&self, width: f64) -> f64 {
        let first = self.return_length.map_or(0.0, |_| self.return_depth.unwrap_or(self.depth).usual);
        let second = self.second_return.map_or(0.0, |_| self.depth.usual);
        width - first - second
    }
}
