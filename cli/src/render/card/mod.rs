//! The shopping card: how large each piece may be, to take to the shop, folded to a pocket.

mod way_in;

use elbowroom_model::{Dimension, PieceId, Rounding, Unit};
use elbowroom_solver::answer::{Answer, DimensionRange, RankedOption};

use crate::drawing::Scale;
use crate::render::leaf::{Beside, Block, Grid, Head, Leaf, Picture, Set};
use crate::render::plan::{self, Shown};
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
    let mut leaf = Leaf::new(words::title(&brief.room.name)).set(Set::Folding);
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
        let groups: Vec<Group<'_>> = groups(brief, option).into_iter().filter(bought).collect();
        let shown = Shown::Option { answer: shopped.answer, option };
        let pieces: Vec<PieceId> = groups.iter().map(|group| group.piece.placed.piece).collect();
        let scale = plan::piece_scale(shown, &pieces);
        for group in &groups {
            piece(&mut leaf, shown, option, group, scale);
        }
    }
    leaf.put(Block::Heading(words::COLUMNS.to_owned()));
    leaf.put(Block::List(words::COLUMNS_SAY.iter().map(|words| (*words).to_owned()).collect()));
    way_in::put(&mut leaf);
    leaf.put(Block::Heading(words::CAUTIONS.to_owned()));
    leaf.put(Block::List(notices_of(shopped.answer, shopped.options)));
    leaf
}

/// One piece, or several alike: its outline, its hand, its sizes, how to measure it, what limits it, room to write.
fn piece(leaf: &mut Leaf, shown: Shown<'_>, option: &RankedOption, group: &Group<'_>, scale: Scale) {
    let (brief, sizes) = (shown.brief(), group.piece.sizes);
    leaf.put(Block::Part(words::piece(&group.label, group.count)));
    let is_handed = sizes.return_length.is_some();
    let mut blocks = Vec::new();
    if let Some(hand) = option.choices.hand.filter(|_| is_handed) {
        blocks.push(Block::Strong(words::hand(hand)));
    }
    let found: Vec<(Dimension, DimensionRange)> =
        Dimension::ALL.iter().filter_map(|dimension| Some((*dimension, sizes.get(*dimension)?))).collect();
    let heads = vec![
        Head::words("").at_least(4.6),
        Head::figures(words::LEAST).at_least(5.2),
        Head::figures(words::PLANNED).at_least(5.2),
        Head::figures(words::TOGETHER).at_least(5.2),
        Head::blank(words::FOUND).at_least(5.0),
    ];
    let rows = found.iter().map(|(dimension, found)| row(*dimension, found)).collect();
    blocks.push(Block::Grid(Grid { heads, rows }));
    blocks.push(Block::Words(words::to_measure(group.piece.piece.kind, is_handed).to_owned()));
    let alone: Vec<(Dimension, String)> =
        found.iter().filter_map(|(dimension, found)| Some((*dimension, alone(found)?))).collect();
    if !alone.is_empty() {
        blocks.push(Block::Words(words::alone(&alone)));
    }
    blocks.push(Block::Words(words::held(&held(brief, sizes))));
    if sizes.second_return.is_some() {
        blocks.push(Block::Words(words::OF_A_U.to_owned()));
    }
    blocks.push(Block::Write(words::SEEN.map(str::to_owned).to_vec()));
    // As its table has it: one piece of paper tells a size one way.
    let unit = outline_unit(brief.units);
    let told = |dimension: Dimension, length: f64| {
        let found =
            sizes.get(dimension).map(|found| Ends::of(unit, found.least, found.together).planned(found.planned));
        found.unwrap_or_else(|| unit.words(length, Rounding::Down))
    };
    match plan::piece(shown, group.piece.placed.piece, scale, told) {
        Some(sheet) => leaf.put(Block::Beside(Beside { picture: Picture { sheet, caption: String::new() }, blocks })),
        None => blocks.into_iter().for_each(|block| leaf.put(block)),
    }
}

/// The unit of the outline: that one of the table's two that the room is measured in, or is nearest to it.
const fn outline_unit(units: Unit) -> Unit {
    match units {
        Unit::Inch | Unit::Foot => Unit::Inch,
        Unit::Millimetre | Unit::Centimetre | Unit::Metre => Unit::Centimetre,
    }
}

/// The least, the planned and the most together, in both units.
fn row(dimension: Dimension, found: &DimensionRange) -> Vec<String> {
    let [metric, inches] = [Unit::Centimetre, Unit::Inch].map(|unit| {
        let ends = Ends::of(unit, found.least, found.together);
        [ends.least(), ends.planned(found.planned), ends.most()]
    });
    let told = metric.iter().zip(&inches).map(|(metric, inches)| words::both(metric, inches));
    let blank = String::new();
    std::iter::once(words::dimension(dimension).to_owned()).chain(told).chain([blank]).collect()
}

/// What the piece alone could have, in both units, where that is more.
fn alone(found: &DimensionRange) -> Option<String> {
    let alone = found.alone.filter(|alone| *alone > found.together)?;
    let told = |unit: Unit| Ends::of(unit, found.least, found.together).most_alone(alone);
    let [metric, inches] = [Unit::Centimetre, Unit::Inch].map(told);
    (metric != Ends::of(Unit::Centimetre, found.least, found.together).most()).then(|| words::in_both(&metric, &inches))
}

#[cfg(test)]
mod tests {
    use elbowroom_model::scenario;
    use elbowroom_solver::{Limits, Unwatched, rank};

    use super::{Shopped, leaf};
    use crate::drawing::svg_in_page;
    use crate::render::leaf::{Beside, Block};

    /// Beside the table that says 82 cm no outline says 0.83 m.
    #[test]
    fn the_outline_tells_each_size_as_the_table_does() {
        let text = "units: m\nwalls: [{ length: 4.2 }, { length: 3.6 }, { length: 4.2 }, { length: 3.6 }]\npieces:\n  \
                    - { kind: sofa, width: 1.607..1.9, depth: 0.829 }\n  - { kind: armchair }\n";
        let brief = scenario::read(text, None).unwrap();
        let answer = rank(&brief, &Limits::default(), &Unwatched);
        let card = leaf(&Shopped { answer: &answer, options: &[&answer.options[0]] });
        let mut told = 0;
        for block in &card.blocks {
            let Block::Beside(Beside { picture, blocks }) = block else { continue };
            let drawn = svg_in_page(&picture.sheet);
            for block in blocks {
                let Block::Grid(grid) = block else { continue };
                for row in &grid.rows {
                    let planned = row[2].lines().next().unwrap();
                    assert!(drawn.contains(&format!("{} {planned}", row[0])), "{row:?} is not in {drawn}");
                    told += 1;
                }
            }
        }
        assert!(told >= 4, "{told}");
    }
}
