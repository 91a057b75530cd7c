//! The shopping card: how large each piece may be, to take to the shop; one page.

mod way_in;

use elbowroom_model::{Brief, Dimension, Unit};
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption};

use crate::render::leaf::{Block, Grid, Head, Leaf};
use crate::render::rank::{Group, groups, held};
use crate::words::answer::{all_eased, notices_of};
use crate::words::card as words;
use crate::words::lengths::Ends;

/// All that the card is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shopped<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// The options that are shopped for, with the figures of those that are shown.
    pub options: &'a [&'a RankedOption],
}

/// The card.
pub(crate) fn leaf(shopped: &Shopped<'_>) -> Leaf {
    let brief = &shopped.answer.brief;
    let mut leaf = Leaf::new(words::title(&brief.room.name)).folding();
    for line in crate::words::order::lines(brief) {
        leaf.put(Block::Words(line));
    }
    leaf.put(Block::Words(words::HOW.to_owned()));
    if shopped.options.len() > 1 {
        leaf.put(Block::Strong(words::MIX_NONE.to_owned()));
    }
    for option in shopped.options {
        leaf.put(Block::Heading(words::option(brief, option)));
        for eased in all_eased(brief, option) {
            leaf.put(Block::Words(eased));
        }
        let bought = |group: &Group<'_>| !group.piece.piece.kind.stays_open();
        for group in groups(brief, option).into_iter().filter(bought) {
            piece(&mut leaf, brief, option, &group);
        }
    }
    leaf.put(Block::Heading(words::COLUMNS.to_owned()));
    leaf.put(Block::List(words::COLUMNS_SAY.iter().map(|words| (*words).to_owned()).collect()));
    way_in::put(&mut leaf);
    leaf.put(Block::Heading(words::CAUTIONS.to_owned()));
    leaf.put(Block::List(notices_of(shopped.answer, shopped.options)));
    leaf
}

/// One piece, or several alike: its hand, its sizes, what limits them.
fn piece(leaf: &mut Leaf, brief: &Brief, option: &RankedOption, group: &Group<'_>) {
    leaf.put(Block::Part(words::piece(&group.label, group.count)));
    let is_handed = group.piece.sizes.return_length.is_some();
    if let Some(hand) = option.choices.hand.filter(|_| is_handed) {
        leaf.put(Block::Strong(words::hand(hand)));
    }
    let heads = vec![
        Head::words(""),
        Head::figures(words::LEAST),
        Head::figures(words::PLANNED),
        Head::figures(words::TOGETHER),
        Head::figures(words::ALONE),
        Head::blank(words::FOUND),
    ];
    let rows =
        Dimension::ALL.iter().copied().filter_map(|dimension| Some((dimension, group.piece.sizes.get(dimension)?)));
    let rows = rows.map(|(dimension, found)| row(dimension, &found)).collect();
    leaf.put(Block::Grid(Grid { heads, rows }));
    leaf.put(Block::Words(words::held(&held(brief, group.piece.sizes))));
    if group.piece.sizes.second_return.is_some() {
        leaf.put(Block::Words(words::OF_A_U.to_owned()));
    }
}

fn row(dimension: Dimension, found: &DimensionRange) -> Vec<String> {
    let alone = found.alone.unwrap_or(found.together).max(found.together);
    let [metric, inches] = [Unit::Centimetre, Unit::Inch].map(|unit| {
        let ends = Ends::of(unit, found.least, found.together);
        [ends.least(), ends.planned(found.planned), ends.most(), ends.most_alone(alone)]
    });
    let told = metric.iter().zip(&inches).map(|(metric, inches)| words::both(metric, inches));
    let blank = String::new();
    std::iter::once(words::dimension(dimension).to_owned()).chain(told).chain([blank]).collect()
}
