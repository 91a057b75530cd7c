//! The circle that a wheelchair turns in, on the tape sheet.

use elbowroom_solver::setting_out::CircleOut;

use super::{Laid, piece};
use crate::render::leaf::{Block, Grid, Head, Leaf};
use crate::words::tape as words;

/// Puts the circle on the sheet.
pub(super) fn put(leaf: &mut Leaf, laid: &Laid<'_>, circle: &CircleOut) {
    leaf.put(Block::Part(words::CIRCLE.to_owned()));
    leaf.put(Block::Words(words::circle(&laid.tape(circle.diameter))));
    leaf.put(Block::Words(piece::from_where(laid, &circle.centre)));
    let heads = std::iter::once(Head::words("")).chain(piece::heads_of(&circle.centre)).collect();
    let cells = std::iter::once(words::CENTRE.to_owned()).chain(piece::lengths(laid, &circle.centre)).collect();
    leaf.put(Block::Grid(Grid { heads, rows: vec![cells] }));
    let strip = circle.strips.first().map_or(0.0, |strip| strip.cut);
    leaf.put(Block::Words(words::round(&laid.tape(circle.diameter / 2.0), circle.strips.len(), &laid.tape(strip))));
}
