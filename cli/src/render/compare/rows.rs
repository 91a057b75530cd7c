//! The tables of a comparison: a row for each thing that can be held against each other, a column for each option.

use elbowroom_model::{Criterion, Dimension};
use elbowroom_solver::outcome::{OptionFound, PieceFound};

use super::Compared;
use crate::render::rank::{figures, wall_faced};
use crate::text::table::{Stand, Table};
use crate::words::compare as words;
use crate::words::lengths::{shopped_range, taped_bare};

/// Scores nearer than this tell no options apart.
const SAME: f64 = 3.0;

/// The decisions of each option.
pub(super) fn decisions(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[]);
    let of_each = |row: &str, of: &dyn Fn(&OptionFound) -> String| {
        let mut cells = vec![row.to_owned()];
        cells.extend(compared.options.iter().map(|option| of(option)));
        cells
    };
    let wall = |wall: &Option<String>, none: &str| wall.clone().unwrap_or_else(|| none.to_owned());
    table.cells(of_each(words::BACK, &|option| wall(&option.choices.seat_back, words::FREE)));
    table.cells(of_each(words::FACING, &|option| wall(&wall_faced(&compared.brief.room, option), "")));
    if compared.options.iter().any(|option| option.choices.hand.is_some()) {
        table.cells(of_each(words::HAND, &|option| wall(&option.choices.hand, "")));
    }
    if compared.options.iter().any(|option| option.choices.media_wall.is_some()) {
        table.cells(of_each(words::SCREEN, &|option| wall(&option.choices.media_wall, words::NONE)));
    }
    let seats: Vec<&str> =
        compared.options.iter().flat_map(|option| &option.choices.second_seats).map(|seat| seat.name.as_str()).fold(
            Vec::new(),
            |mut all, name| {
                if !all.contains(&name) {
                    all.push(name);
                }
                all
            },
        );
    for name in seats {
        table.cells(of_each(name, &|option| {
            let seat = option.choices.second_seats.iter().find(|seat| seat.name == name);
            seat.map_or_else(|| words::NONE.to_owned(), |seat| seat.place.clone())
        }));
    }
    table
}

/// The scores, the weight before them; then how firm each is.
pub(super) fn scores(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[(words::WEIGHT, Stand::Right)]);
    for criterion in compared.options.first().map_or(&[][..], |option| &option.criteria) {
        let mut cells = vec![criterion.name.key().to_owned(), words::weight(criterion.weight)];
        cells.extend(compared.options.iter().map(|option| {
            let score = option.criteria.iter().find(|it| it.name == criterion.name).map(|it| it.score);
            score.map_or_else(String::new, words::score)
        }));
        table.cells(cells);
    }
    let mut whole = vec![words::WHOLE.to_owned(), String::new()];
    whole.extend(compared.options.iter().map(|option| words::score(option.score)));
    table.cells(whole);
    let mut firm = vec![words::FIRM.to_owned(), String::new()];
    firm.extend(compared.options.iter().map(|option| crate::words::rank::share(option.first_place_share)));
    table.cells(firm);
    table
}

/// Criteria that tell the options apart, the most first, with the reason of each option.
pub(super) fn apart_most<'a>(compared: &Compared<'a>) -> Vec<(Criterion, Vec<(usize, &'a str)>)> {
    let Some(first) = compared.options.first() else { return Vec::new() };
    let mut found = Vec::new();
    for criterion in &first.criteria {
        let each = compared.options.iter().filter_map(|option| {
            let it = option.criteria.iter().find(|it| it.name == criterion.name)?;
            Some((it.score, (option.rank, it.reason.as_str())))
        });
        let (scores, reasons): (Vec<f64>, Vec<(usize, &str)>) = each.unzip();
        let spread = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - scores.iter().copied().fold(f64::INFINITY, f64::min);
        if spread >= SAME && criterion.weight > 0.0 {
            found.push((spread * criterion.weight, criterion.name, reasons));
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().map(|(_, name, reasons)| (name, reasons)).collect()
}

/// The sizes to shop by: least to most together.
pub(super) fn sizes(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[("", Stand::Left)]);
    for name in names(compared) {
        let each: Vec<Option<&PieceFound>> =
            compared.options.iter().map(|option| option.pieces.iter().find(|piece| piece.name == name)).collect();
        for (place, dimension) in dimensions(&each).into_iter().enumerate() {
            let size = |piece: &Option<&PieceFound>| {
                let found = piece.and_then(|piece| figures(piece, dimension));
                let range = found.map(|it| shopped_range(compared.units(), it.least, it.together));
                range.unwrap_or_else(|| words::NONE.to_owned())
            };
            let label = if place == 0 { name.to_owned() } else { String::new() };
            let mut cells = vec![label, dimension.key().to_owned()];
            cells.extend(each.iter().map(size));
            table.cells(cells);
        }
    }
    table
}

fn names<'a>(compared: &Compared<'a>) -> Vec<&'a str> {
    let asked = compared.brief.pieces.iter().map(|piece| piece.name.as_str());
    asked.filter(|name| compared.options.iter().any(|option| option.pieces.iter().any(|it| it.name == *name))).collect()
}

fn dimensions(each: &[Option<&PieceFound>]) -> Vec<Dimension> {
    let all = [Dimension::Width, Dimension::Return, Dimension::Depth];
    let has = |dimension: &Dimension| each.iter().flatten().any(|piece| figures(piece, *dimension).is_some());
    all.into_iter().filter(has).collect()
}

/// The ways: what each needs, and how wide it is.
pub(super) fn ways(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[(words::NEEDS, Stand::Right)]);
    let mut told: Vec<(&str, &str)> = Vec::new();
    for route in compared.options.iter().flat_map(|option| &option.routes) {
        let ends = (route.from.as_str(), route.to.as_str());
        if told.contains(&ends) {
            continue;
        }
        told.push(ends);
        let mut cells = vec![crate::words::rank::route(ends.0, ends.1), taped_bare(compared.units(), route.needs)];
        cells.extend(compared.options.iter().map(|option| {
            let same = option.routes.iter().find(|it| (it.from.as_str(), it.to.as_str()) == ends);
            same.map_or_else(|| words::NONE.to_owned(), |it| taped_bare(compared.units(), it.width))
        }));
        table.cells(cells);
    }
    table
}
