//! How large each piece is in the plan, how large it may be, and what holds it.

use elbowroom_model::{Brief, Dimension, Rounding};
use elbowroom_solver::answer::{PieceSizes, RankedOption};

use super::RankPage;
use super::group::groups;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{planned_range, shop_unit, shopped, sign};
use crate::words::rank as words;

/// Sizes as planned, the range to shop by, and what holds it.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption) {
    page.strong(&words::sizes(sign(shop_unit(told.units()))));
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("width", Stand::Right),
        ("return", Stand::Right),
        ("depth", Stand::Right),
        (words::HELD_BY, Stand::Left),
    ]);
    for group in groups(told.brief(), best) {
        let size = |dimension| {
            let found = group.piece.sizes.get(dimension);
            found.map_or_else(String::new, |it| planned_range(told.units(), &it))
        };
        let [width, return_length, depth] = [Dimension::Width, Dimension::Return, Dimension::Depth].map(size);
        table.row([group.label, width, return_length, depth, held(told.brief(), group.piece.sizes)]);
        let [second, deep] = [Dimension::SecondReturn, Dimension::ReturnDepth].map(size);
        let blank = String::new;
        if !deep.is_empty() {
            table.row([words::ITS_RETURN.to_owned(), blank(), blank(), deep, blank()]);
        }
        if !second.is_empty() {
            table.row([words::ITS_SECOND_RETURN.to_owned(), blank(), second, blank(), blank()]);
        }
    }
    page.table(3, &table);
    if let Some(unproven) = words::unproven(best) {
        page.paragraph(3, &unproven);
    }
}

/// What each size could be if all else gave way, where that is more.
pub(super) fn tell_alone(page: &mut Page, told: &RankPage<'_>, best: &RankedOption) {
    let mut entries = Vec::new();
    for group in groups(told.brief(), best) {
        let more: Vec<String> =
            Dimension::ALL.iter().copied().filter_map(|it| alone(told, group.piece.sizes, it)).collect();
        if !more.is_empty() {
            entries.push(format!("{}: {}", group.label, more.join(", ")));
        }
    }
    if entries.is_empty() {
        return;
    }
    page.heading(&words::alone(sign(shop_unit(told.units()))));
    for entry in entries {
        page.entry(3, &entry);
    }
}

/// `width up to 248`, where that is a step more than together.
fn alone(told: &RankPage<'_>, sizes: &PieceSizes, dimension: Dimension) -> Option<String> {
    let found = sizes.get(dimension)?;
    let alone = found.alone?;
    let shop = shop_unit(told.units());
    let gains = shop.rounded(alone, Rounding::Down) > shop.rounded(found.together, Rounding::Down);
    gains.then(|| words::dimension_up_to(dimension.words(), &shopped(shop, alone, Rounding::Down)))
}

/// What holds the sizes of a piece: `hall door swing (width, depth); 64 cm to walk past (return)`; nothing where none can change.
pub(crate) fn held(brief: &Brief, sizes: &PieceSizes) -> String {
    let mut told: Vec<(String, Vec<&str>)> = Vec::new();
    let mut put = |by: String, dimension: Dimension| match told.iter_mut().find(|(known, _)| *known == by) {
        Some((_, dimensions)) => dimensions.push(dimension.words()),
        None => told.push((by, vec![dimension.words()])),
    };
    let free = |dimension: &Dimension| sizes.get(*dimension).is_some_and(|it| it.most > it.least);
    for dimension in Dimension::ALL.iter().copied().filter(free) {
        let mut holders = sizes.held_by.iter().filter(|held| held.dimension == dimension).peekable();
        // A sofa with two returns stands between them as planned: nothing holds its width.
        let is_between = sizes.second_return.is_some() && dimension == Dimension::Width;
        if holders.peek().is_none() && !is_between {
            put(words::WHOLE_ROOM.to_owned(), dimension);
        }
        for held in holders {
            put(words::holder(brief, sizes.piece, &held.by), dimension);
        }
    }
    words::held(&told)
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{PieceId, scenario};
    use elbowroom_solver::answer::{DimensionRange, PieceSizes};

    use super::held;
    use crate::words::card;

    /// What can change and is held by no one thing is not told to be fixed.
    #[test]
    fn only_what_cannot_change_is_told_to_be_fixed() {
        let text = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\npieces:\n  \
                    - { kind: sofa }\n  - { kind: rug }\n";
        let brief = scenario::read(text, None).unwrap();
        let range =
            |most| DimensionRange { least: 2440.0, aim: None, planned: 3040.0, together: 3040.0, alone: None, most };
        let rug = |most| PieceSizes {
            piece: PieceId(1),
            width: range(most),
            return_length: None,
            second_return: None,
            depth: range(most),
            return_depth: None,
            held_by: Vec::new(),
        };
        assert_eq!(card::held(&held(&brief, &rug(3650.0))), "What limits it: the room as a whole.");
        assert_eq!(card::held(&held(&brief, &rug(2440.0))), "Its size is fixed.");
    }
}
