//! What should lie on the axis of the main seat, and how far off it lies, in a layout that no search laid out.

use elbowroom_model::{PieceKind, Term, tables};

use super::criteria_context::CriteriaContext;
use crate::composition::TermCost;
use crate::layout::Placed;
use crate::rules::With;

/// Cosine of the angle, 11 degrees, within which a screen counts as faced (ours, no source).
const FACED: f64 = 0.98;

/// Whether a term costs what lies off an axis, or off the middle of its stretch of wall.
pub(super) const fn is_of_axis(term: Term) -> bool {
    matches!(
        term,
        Term::ScreenAside
            | Term::TableAside
            | Term::RugAside
            | Term::FocusAside
            | Term::FireAside
            | Term::OppositeAside
            | Term::PairAside
            | Term::OffMiddle
            | Term::ScreenOffMiddle
    )
}

/// The screen that a seat faces, its table and the rug, each off the axis of the seat, at the prices of the plan's terms.
pub(super) fn off_axis(context: &CriteriaContext, seat: &Placed) -> Vec<TermCost> {
    let screen = context.watched().next();
    let screen = screen.filter(|(_, screen)| screen.facing.dot(seat.facing) < -FACED);
    let table = context.placed(PieceKind::stands_before_seat).find(|(table, _)| table.is_table_of_main_group());
    let rug = context.placed(PieceKind::is_flat).next();
    let found = [(Term::ScreenAside, screen), (Term::TableAside, table), (Term::RugAside, rug)];
    found.into_iter().filter_map(|(term, found)| Some(aside(term, seat, found?.1))).collect()
}

/// What a piece that lies off the axis of a seat costs.
fn aside(term: Term, seat: &Placed, placed: &Placed) -> TermCost {
    let (left, right) = seat.front();
    let off = (placed.main().middle() - (left + right) * 0.5).dot(seat.left()).abs();
    TermCost { term, piece: placed.piece, with: With::Piece(seat.piece), off, cost: tables::price(term).cost * off }
}
