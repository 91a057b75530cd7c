//! The way into the room of what is not chosen yet: to be measured, and written down, before anything is paid.

use crate::render::leaf::{Block, Grid, Head, Leaf};
use crate::words::card as words;

/// A row for each thing on the way, to write in.
pub(super) fn put(leaf: &mut Leaf) {
    leaf.put(Block::Heading(words::WAY_IN.to_owned()));
    leaf.put(Block::Words(words::WAY_IN_SAYS.to_owned()));
    let heads = vec![
        Head::words("").at_least(7.5),
        Head::blank(words::WIDE).at_least(5.5),
        Head::blank(words::HIGH).at_least(5.5),
        Head::blank(words::DEEP).at_least(5.5),
    ];
    let rows = words::ON_THE_WAY.iter().map(|thing| {
        let blank = String::new;
        vec![(*thing).to_owned(), blank(), blank(), blank()]
    });
    leaf.put(Block::Grid(Grid { heads, rows: rows.collect() }));
}
