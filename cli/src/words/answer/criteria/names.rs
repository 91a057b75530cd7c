//! Names with their articles, as sentences about criteria take them.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, ItemId, PieceId, Rounding};
use elbowroom_solver::BodyId;
use elbowroom_solver::criteria::across::Bar;
use elbowroom_solver::criteria::obstacles::Whose;

use crate::words::list::listed;

/// `the sofa`.
pub(super) fn piece(brief: &Brief, piece: PieceId) -> String {
    the(brief.piece_name(piece))
}

/// `the bay`.
pub(super) fn item(brief: &Brief, item: ItemId) -> String {
    the(brief.room.item_name(item))
}

/// `the bay`, `the bay and the roof light`, `the bay, the side light and the roof light`.
pub(super) fn items(brief: &Brief, items: &[ItemId]) -> String {
    listed(&items.iter().map(|one| item(brief, *one)).collect::<Vec<_>>())
}

/// The same of pieces.
pub(super) fn pieces(brief: &Brief, pieces: &[PieceId]) -> String {
    listed(&pieces.iter().map(|one| piece(brief, *one)).collect::<Vec<_>>())
}

/// `the back of the sofa`.
pub(super) fn obstacle(brief: &Brief, whose: Whose) -> String {
    match whose {
        Whose::Back(seat) => format!("the back of {}", piece(brief, seat)),
        Whose::ReturnBack(seat) => format!("the return of {}", piece(brief, seat)),
        Whose::SecondReturnBack(seat) => format!("the second return of {}", piece(brief, seat)),
        Whose::Screen(unit) => format!("the screen on {}", piece(brief, unit)),
        Whose::Piece(other) => piece(brief, other),
        Whose::Body(BodyId::Fixed(id)) => the(brief.room.fixed_name(id)),
        Whose::Body(BodyId::Item(id)) => item(brief, id),
    }
}

/// `the return of the corner sofa stands across 95 % of <its>, 100 cm before it`.
pub(super) fn bar(brief: &Brief, bar: &Bar, its: &str) -> String {
    let (whose, share) = (obstacle(brief, bar.whose), 100.0 * bar.share);
    format!("{whose} stands across {share:.0} % of {its}, {} before it", length(brief, bar.off))
}

/// A length in the brief's own unit.
pub(super) fn length(brief: &Brief, length: f64) -> String {
    brief.units.words(length, Rounding::Nearest)
}
