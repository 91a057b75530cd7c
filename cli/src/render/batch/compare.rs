//! Variants of one room against the first of them: what was asked otherwise, and what became of it.

use std::collections::BTreeMap;

use elbowroom_model::Unit;

use super::{reason, size};
use crate::render::batch::room_line::{LineOption, LineResult, RoomLine};
use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::batch as words;
use crate::words::lengths::{shop_unit, sign, taped};

/// Options that came or went which are named; of more only the number is told.
const NAMED: usize = 3;
/// Where the text beside a label stands.
const HANG: usize = 11;

/// Every room that goes by a name which an earlier one goes by, against that first one and in its unit. `None` where all
/// names differ.
pub(crate) fn compared(rooms: &[RoomLine], look: Look) -> Option<String> {
    let mut of_name: BTreeMap<&str, Vec<&RoomLine>> = BTreeMap::new();
    let mut names = Vec::new();
    for (told, name) in rooms.iter().filter_map(|told| Some((told, told.result.as_ref()?.room.name.as_str()))) {
        let variants = of_name.entry(name).or_default();
        if variants.is_empty() {
            names.push(name);
        }
        variants.push(told);
    }
    let mut page = Page::new(look);
    for (name, variants) in names.iter().filter_map(|name| Some((name, of_name.get(name)?))) {
        let Some((base, others)) = variants.split_first().filter(|(_, others)| !others.is_empty()) else { continue };
        page.heading(&words::variants_of(name, base.source.as_deref(), sign(shop_unit(base.unit()))));
        for other in others {
            tell(&mut page, base, other);
        }
    }
    let text = page.into_text();
    (!text.is_empty()).then_some(text)
}

fn tell(page: &mut Page, base: &RoomLine, other: &RoomLine) {
    let unit = base.unit();
    page.entry(0, &words::called(other.source.as_deref()));
    let (Some(was), Some(is)) = (&base.result, &other.result) else { return };
    let rows = [
        (words::ASKED, asked(was, is, unit)),
        (words::OPTIONS, options(was, is)),
        (words::FIRST, first(base, other)),
        (words::SIZES, sizes(base.best(), other.best(), unit)),
    ];
    let changed = rows.into_iter().filter_map(|(label, text)| Some((label, text?)));
    let mut none = true;
    for (label, text) in changed {
        none = false;
        page.labelled(2, label, HANG, &text);
    }
    if none {
        page.paragraph(2, words::NOTHING_CHANGED);
    }
}

/// Rules, wishes and ranges of sizes that differ, and the room's area.
fn asked(was: &LineResult, is: &LineResult, unit: Unit) -> Option<String> {
    let mut changes = Vec::new();
    let length =
        |figure: Option<f64>| figure.map_or_else(|| words::NOT_IN_FORCE.to_owned(), |figure| taped(unit, figure));
    if (was.room.area - is.room.area).abs() >= 0.005 {
        let area = |area: f64| format!("{area:.2} m2");
        changes.push(words::change(words::AREA, &area(was.room.area), &area(is.room.area)));
    }
    for (rule, figure) in &is.rules.figures {
        let before = was.rules.figures.get(rule).copied().flatten();
        if before != *figure {
            changes.push(words::change(&rule.replace('_', " "), &length(before), &length(*figure)));
        }
    }
    if let Some((before, now)) = was.options.first().zip(is.options.first()) {
        for criterion in &now.criteria {
            let same = before.criteria.iter().find(|it| it.name == criterion.name);
            if let Some(same) = same.filter(|same| same.weight != criterion.weight) {
                changes.push(words::wish_change(&criterion.name, same.weight, criterion.weight));
            }
        }
        changes.extend(ranges(before, now, unit));
    }
    (!changes.is_empty()).then(|| changes.join("; "))
}

/// Ranges of sizes that differ.
fn ranges(before: &LineOption, now: &LineOption, unit: Unit) -> Vec<String> {
    let mut changes = Vec::new();
    for piece in &now.pieces {
        let Some(same) = before.pieces.iter().find(|it| it.name == piece.name) else { continue };
        for (dimension, range) in piece.range.each() {
            let was = same.range.each().find(|(of, _)| *of == dimension).map(|(_, range)| range);
            let words_of = |range: &crate::render::batch::room_line::LineRange| {
                format!("{} to {}", taped(shop_unit(unit), range.least), taped(shop_unit(unit), range.most))
            };
            if let Some(was) = was.filter(|was| (was.least, was.most) != (range.least, range.most)) {
                changes.push(words::change(&format!("{} {dimension}", piece.name), &words_of(was), &words_of(range)));
            }
        }
    }
    changes
}

/// How many fit, and which came and went.
fn options(was: &LineResult, is: &LineResult) -> Option<String> {
    let missing = |from: &LineResult, to: &LineResult| {
        let keys = from.options.iter().map(|option| option.key.clone());
        keys.filter(|key| to.options.iter().all(|option| option.key != *key)).collect::<Vec<_>>()
    };
    let (lost, gained) = (missing(was, is), missing(is, was));
    if lost.is_empty() && gained.is_empty() {
        return None;
    }
    Some(words::options_change(was.options.len(), is.options.len(), &lost, &gained, NAMED))
}

/// What stands first, and its score.
fn first(base: &RoomLine, other: &RoomLine) -> Option<String> {
    match (base.best(), other.best()) {
        (Some(was), Some(is)) if was.key != is.key => {
            Some(words::first_change(&was.title, was.score, &is.title, is.score))
        }
        (Some(was), Some(is)) if (was.score - is.score).abs() >= 0.5 => Some(words::score_change(was.score, is.score)),
        (Some(_), Some(_)) => None,
        (None, Some(is)) => Some(words::first_now(&is.title, is.score)),
        _ => reason(other),
    }
}

/// Pieces of the first option whose sizes as planned differ, that came, and that went.
fn sizes(was: Option<&LineOption>, is: Option<&LineOption>, unit: Unit) -> Option<String> {
    let (was, is) = was.zip(is)?;
    let mut changes = Vec::new();
    for piece in &is.pieces {
        match was.pieces.iter().find(|it| it.name == piece.name) {
            Some(before) if size(before, unit) != size(piece, unit) => {
                changes.push(words::change(&piece.name, &size(before, unit), &size(piece, unit)));
            }
            Some(_) => {}
            None => changes.push(words::came(&piece.name, &size(piece, unit))),
        }
    }
    let gone = was.pieces.iter().filter(|piece| is.pieces.iter().all(|it| it.name != piece.name));
    changes.extend(gone.map(|piece| words::went(&piece.name)));
    (!changes.is_empty()).then(|| changes.join("; "))
}
