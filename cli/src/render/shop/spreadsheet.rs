//! One row of a spreadsheet for each candidate: a column for each figure, lengths in the unit asked for, prices in the list's
//! currency.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Dimension, Rounding, Unit};
use elbowroom_solver::shop::CandidateFound;
use elbowroom_solver::way_in::Failed;

use super::{ShopPage, why_not};
use crate::text::cells::Cell;
use crate::words::lengths::shop_unit;
use crate::words::number::number;
use crate::words::shop as words;

/// A head, then a row for each candidate in the list's order.
pub(crate) fn candidate_rows(told: &ShopPage<'_>) -> Vec<Vec<Cell>> {
    let heads = heads(told.names.brief.units).into_iter().map(Cell::Text).collect();
    let each = told.names.listed.iter().zip(&told.found.candidates).map(|(listed, one)| row(told, listed, one));
    std::iter::once(heads).chain(each).collect()
}

fn heads(unit: Unit) -> Vec<String> {
    let sizes = |before: &'static str| {
        Dimension::ALL.iter().map(move |one| format!("{before}{}_{}", one.key(), shop_unit(unit).key()))
    };
    let text = |heads: &[&str]| heads.iter().map(|head| (*head).to_owned()).collect::<Vec<_>>();
    let mut heads = text(&["line", "name", "kind", "as"]);
    heads.extend(sizes(""));
    heads.extend(text(&["price", "currency", "fits", "gets_in", "options", "best_option", "best_score"]));
    heads.extend(sizes("left_").chain(sizes("misses_")));
    heads.extend(text(&["fails_at", "would_help", "left_or_more", "reason"]));
    heads
}

fn row(told: &ShopPage<'_>, listed: &ListedPiece, one: &CandidateFound) -> Vec<Cell> {
    let unit = told.names.brief.units;
    let yes_no = |yes: bool| Cell::text(if yes { "yes" } else { "no" });
    let best = one.options.first();
    let fails = one.way.iter().flat_map(|way| &way.carried.parts).find_map(|part| part.fails.as_ref());
    let remedies = words::remedies(told.names.brief, one).join(" ");
    let or_more = one.left.iter().filter(|left| left.or_more).map(|left| left.dimension.key());
    let or_more = or_more.collect::<Vec<_>>().join(" ");
    let at = |fails: &Failed| told.names.brief.way.as_ref().map_or("", |way| crate::words::way::at(way, fails.at));
    let each = |of: &dyn Fn(Dimension) -> Option<f64>, rounding: Rounding| {
        let told = |length: f64| number(unit, length, rounding);
        Dimension::ALL.iter().map(|dimension| Cell::maybe(of(*dimension).map(told))).collect::<Vec<_>>()
    };
    let left = |dimension| one.left.iter().find(|left| left.dimension == dimension).map(|left| left.by);
    let misses = |dimension| one.misses.iter().find(|miss| miss.dimension == dimension).map(|miss| miss.by);
    let mut cells = vec![
        Cell::number(listed.line),
        Cell::text(&listed.name),
        Cell::text(listed.kind.key()),
        Cell::text(one.row.map_or("", |row| told.names.row(row))),
    ];
    cells.extend(each(&|dimension| listed.size(dimension), Rounding::Nearest));
    cells.extend([
        Cell::maybe(listed.price.map(|price| price.words())),
        Cell::text(told.currency.filter(|_| listed.price.is_some()).unwrap_or_default()),
        yes_no(one.goes()),
        one.way.as_ref().map_or(Cell::EMPTY, |way| yes_no(way.carried.gets_in)),
        Cell::number(one.options.len()),
        Cell::text(best.map_or("", |best| best.key.as_str())),
        Cell::maybe(best.map(|best| format!("{:.1}", best.score))),
    ]);
    cells.extend(each(&left, Rounding::Down));
    cells.extend(each(&misses, Rounding::Up));
    cells.extend([
        Cell::text(fails.map_or("", at)),
        Cell::Text(remedies),
        Cell::text(or_more),
        Cell::Text(why_not(told, listed, one)),
    ]);
    cells
}
