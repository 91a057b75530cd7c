//! What is judged: a layout in its room.

use elbowroom_model::{Brief, Piece, PieceId, PieceKind};

use crate::composition::TermCost;
use crate::layout::{Layout, Placed};
use crate::routes::Route;
use crate::site::Site;

/// All that a criterion looks at.
#[derive(Debug, Clone, Copy)]
pub struct LayoutInRoom<'a> {
    /// What was measured and asked.
    pub brief: &'a Brief,
    /// The room as the rules see it.
    pub site: &'a Site,
    /// The layout to judge.
    pub layout: &'a Layout,
    /// Its routes.
    pub routes: &'a [Route],
    /// The main seat.
    pub main_seat: PieceId,
    /// What each term of a plan costs it; `None` where no search laid it out, and only what lies off the main seat's axis
    /// is measured.
    pub composition: Option<&'a [TermCost]>,
}

impl<'a> LayoutInRoom<'a> {
    /// The pieces that stand and are of such a kind.
    pub(super) fn placed(
        &self,
        is_such: fn(PieceKind) -> bool,
    ) -> impl Iterator<Item = (&'a Piece, &'a Placed)> + Clone + use<'a> {
        let brief = self.brief;
        let standing = self.layout.placed.iter();
        standing
            .filter_map(|placed| Some((brief.piece(placed.piece)?, placed)))
            .filter(move |(piece, _)| is_such(piece.kind))
    }
}
