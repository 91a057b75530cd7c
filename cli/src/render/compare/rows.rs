//! The tables of a comparison: a row for each thing that can be held against each other, a column for each option.

use elbowroom_model::{Criterion, Dimension, Hand, PieceId, WallId};
use elbowroom_solver::answer::{PieceSizes, RankedOption, Thing};

use super::Compared;
use crate::render::rank::wall_faced;
use crate::text::table::{Stand, Table};
use crate::words::answer::reason;
use crate::words::compare as words;
use crate::words::lengths::{planned_range, taped_bare};

/// Scores nearer than this tell no options apart.
const SAME: f64 = 3.0;

/// The decisions of each option.
pub(super) fn decisions(compared: &Compared<'_>) -> Table {
    let (mut table, brief) = (compared.table(&[]), compared.brief());
    let of_each = |row: &str, of: &dyn Fn(&RankedOption) -> String| {
        let mut cells = vec![row.to_owned()];
        cells.extend(compared.options.iter().map(|option| of(option)));
        cells
    };
    let wall = |wall: Option<WallId>, none: &str| {
        wall.map_or_else(|| none.to_owned(), |wall| Thing::Wall(wall).name(brief).to_owned())
    };
    table.cells(of_each(words::BACK, &|option| wall(option.choices.seat_back, words::FREE)));
    table.cells(of_each(words::FACING, &|option| wall(wall_faced(brief, option), "")));
    if compared.options.iter().any(|option| option.choices.hand.is_some()) {
        table.cells(of_each(words::HAND, &|option| option.choices.hand.map_or("", Hand::key).to_owned()));
    }
    if compared.options.iter().any(|option| option.choices.media_wall.is_some()) {
        table.cells(of_each(words::SCREEN, &|option| wall(option.choices.media_wall, words::NONE)));
    }
    let mut seats: Vec<PieceId> = Vec::new();
    for seat in compared.options.iter().flat_map(|option| option.choices.seats()) {
        if !seats.contains(&seat.piece) {
            seats.push(seat.piece);
        }
    }
    for piece in seats {
        table.cells(of_each(Thing::Piece(piece).name(brief), &|option| {
            let seat = option.choices.seats().into_iter().find(|seat| seat.piece == piece);
            seat.map_or(words::NONE, |seat| seat.place.key()).to_owned()
        }));
    }
    table
}

/// The scores, the weight before them; then how firm each is.
pub(super) fn scores(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[(words::WEIGHT, Stand::Right)]);
    for first in compared.options.first().map_or(&[][..], |option| &option.judgements) {
        let weight = compared.brief().wishes.get(first.criterion);
        let mut cells = vec![first.criterion.key().to_owned(), words::weight(weight)];
        cells.extend(compared.options.iter().map(|option| {
            let score = option.judgement(first.criterion).map(|it| it.score);
            score.map_or_else(String::new, words::score)
        }));
        table.cells(cells);
    }
    let mut whole = vec![words::WHOLE.to_owned(), String::new()];
    whole.extend(compared.options.iter().map(|option| words::score(option.score)));
    table.cells(whole);
    let mut firm = vec![words::FIRM.to_owned(), String::new()];
    firm.extend(compared.options.iter().map(|option| words::firm(option)));
    table.cells(firm);
    table
}

/// Criteria that tell the options apart, the most first, with the reason of each option.
pub(super) fn apart_most(compared: &Compared<'_>) -> Vec<(Criterion, Vec<(usize, String)>)> {
    let (Some(first), brief) = (compared.options.first(), compared.brief()) else { return Vec::new() };
    let mut found = Vec::new();
    for criterion in first.judgements.iter().map(|it| it.criterion) {
        let each = compared.options.iter().filter_map(|option| {
            let it = option.judgement(criterion)?;
            Some((it.score, (option.rank, reason(brief, &it.finding))))
        });
        let (scores, reasons): (Vec<f64>, Vec<(usize, String)>) = each.unzip();
        let spread = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - scores.iter().copied().fold(f64::INFINITY, f64::min);
        let weight = brief.wishes.get(criterion);
        if spread >= SAME && weight > 0.0 {
            found.push((spread * weight, criterion, reasons));
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().map(|(_, criterion, reasons)| (criterion, reasons)).collect()
}

/// The sizes as planned, and to shop by: least to most together.
pub(super) fn sizes(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[("", Stand::Left)]);
    for (piece, asked) in compared.brief().pieces() {
        let each: Vec<Option<&PieceSizes>> = compared.options.iter().map(|option| option.sizes_of(piece)).collect();
        for (place, dimension) in dimensions(&each).into_iter().enumerate() {
            let size = |sizes: &Option<&PieceSizes>| {
                let found = sizes.and_then(|sizes| sizes.get(dimension));
                let range = found.map(|it| planned_range(compared.units(), &it));
                range.unwrap_or_else(|| words::NONE.to_owned())
            };
            let label = if place == 0 { asked.name.clone() } else { String::new() };
            let mut cells = vec![label, dimension.words().to_owned()];
            cells.extend(each.iter().map(size));
            table.cells(cells);
        }
    }
    table
}

/// The dimensions that a piece has in any option; none where it stands in none.
fn dimensions(each: &[Option<&PieceSizes>]) -> Vec<Dimension> {
    let has = |dimension: &Dimension| each.iter().flatten().any(|sizes| sizes.get(*dimension).is_some());
    Dimension::ALL.iter().copied().filter(has).collect()
}

/// The ways: what each needs, and how wide it is.
pub(super) fn ways(compared: &Compared<'_>) -> Table {
    let mut table = compared.table(&[(words::NEEDS, Stand::Right)]);
    let mut told = Vec::new();
    for route in compared.options.iter().flat_map(|option| &option.routes) {
        let ends = [route.from, route.to];
        if told.contains(&ends) {
            continue;
        }
        told.push(ends);
        let label = crate::words::rank::route(compared.brief(), ends.map(Thing::from));
        let mut cells = vec![label, taped_bare(compared.units(), route.needs)];
        cells.extend(compared.options.iter().map(|option| {
            let same = option.routes.iter().find(|it| [it.from, it.to] == ends);
            same.map_or_else(|| words::NONE.to_owned(), |it| taped_bare(compared.units(), it.width))
        }));
        table.cells(cells);
    }
    table
}
