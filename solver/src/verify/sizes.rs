//! Every piece that is needed stands, and has a size that it may have.

use elbowroom_model::{Dimension, Rule};

use super::breach::Breach;
use super::scene::{InPlace, Scene};
use super::tolerance::SLACK;
use crate::layout::Layout;

pub(super) fn breaches(scene: &Scene<'_>, layout: &Layout) -> Vec<Breach> {
    let missing = scene.brief.pieces().filter(|(place, piece)| piece.needed && layout.of(*place).is_none());
    let missing =
        missing.map(|(_, piece)| Breach::new(Rule::Needed, &[&piece.name], 0.0, "is needed and does not stand"));
    let of = |piece: &InPlace<'_>| -> Vec<Breach> {
        piece.piece.dimensions().into_iter().filter_map(|dimension| breach(piece, dimension)).collect()
    };
    missing.chain(scene.pieces.iter().flat_map(of)).collect()
}

fn breach(piece: &InPlace<'_>, dimension: Dimension) -> Option<Breach> {
    let range = piece.piece.range(dimension)?;
    let Some(size) = piece.placed.size.get(dimension) else {
        return Some(Breach::new(Rule::Size, &[piece.name(), dimension.key()], range.least, "has no"));
    };
    let outside = (range.least - size).max(size - range.most);
    // A size that is no number is outside.
    let fits = outside <= SLACK;
    (!fits).then(|| Breach::new(Rule::Size, &[piece.name(), dimension.key()], outside, "is out of range in its"))
}
