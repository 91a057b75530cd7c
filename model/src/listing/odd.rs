//! Sizes that no shop has, and the unit that was likely meant.

use super::{ListedPiece, OddSize};
use crate::dimension::Dimension;
use crate::scenario::likely_unit;
use crate::tables::{Built, KindSizes};
use crate::unit::Unit;

/// Less than this share of the least of its kind, or more than so many times the most, is nothing that a shop has (common
/// practice, no source). A list says what is there, so it is held closer than what a room asks for.
const SHARE_OF_THE_LEAST: f64 = 1.0 / 3.0;
const TIMES_THE_MOST: f64 = 2.5;

/// The sizes of `piece` that no shop has; `written`: the unit that the number of a dimension was written in.
pub(super) fn odd_sizes(
    piece: &ListedPiece,
    sizes: &KindSizes,
    written: impl Fn(Dimension) -> Option<Unit>,
) -> Vec<OddSize> {
    let width = sizes.u_width.as_ref().filter(|_| piece.second_return.is_some()).unwrap_or(&sizes.width);
    let odd = |dimension: Dimension| {
        let range = match dimension {
            Dimension::Width => width,
            Dimension::Depth | Dimension::ReturnDepth => &sizes.depth,
            Dimension::Return | Dimension::SecondReturn => sizes.return_length.as_ref()?,
        };
        // A return without a depth of its own is as deep as all runs, and told with them.
        let length =
            piece.size(dimension).filter(|_| dimension != Dimension::ReturnDepth || piece.return_depth.is_some())?;
        let is_odd = length < SHARE_OF_THE_LEAST * range.least || length > TIMES_THE_MOST * range.most;
        let built = Built { least: range.least, most: range.most };
        is_odd.then(|| OddSize {
            line: piece.line,
            name: piece.name.clone(),
            dimension,
            length,
            usual: [range.least, range.most],
            likely: written(dimension).and_then(|written| likely_unit(length, written, built)),
        })
    };
    Dimension::ALL.iter().copied().filter_map(odd).collect()
}
