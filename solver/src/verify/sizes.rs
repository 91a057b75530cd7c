//! Every piece that is needed stands, and has a size that it may have.

use elbowroom_model::{Dimension, Rule};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::tolerance::SLACK;
use crate::answer::Thing;
use crate::layout::Layout;

pub(super) fn breaches(scene: &CheckedLayout<'_>, layout: &Layout) -> Vec<Breach> {
    let missing = scene.brief.pieces().filter(|(id, piece)| piece.needed && layout.of(*id).is_none());
    let missing = missing.map(|(id, _)| Breach::new(Rule::Needed, Wrong::LeftOut, &[Thing::Piece(id)], 0.0));
    let of = |piece: &InPlace<'_>| -> Vec<Breach> {
        piece.piece.dimensions().into_iter().filter_map(|dimension| breach(piece, dimension)).collect()
    };
    missing.chain(scene.pieces.iter().flat_map(of)).collect()
}

fn breach(piece: &InPlace<'_>, dimension: Dimension) -> Option<Breach> {
    let range = piece.piece.range(dimension)?;
    let between = [piece.thing()];
    let Some(size) = piece.placed.size.get(dimension) else {
        return Some(Breach::new(Rule::Size, Wrong::NoSize(dimension), &between, range.least));
    };
    let outside = (range.least - size).max(size - range.most);
    // A size that is no number is outside.
    let fits = outside <= SLACK;
    (!fits).then(|| Breach::new(Rule::Size, Wrong::SizeOutOfRange(dimension), &between, outside))
}
