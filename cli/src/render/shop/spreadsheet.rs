//! One row of a spreadsheet for each candidate; lengths in millimetres, prices in the list's currency.

use elbowroom_model::Dimension;
use elbowroom_model::listing::ListedPiece;
use elbowroom_solver::shop::CandidateFound;
use elbowroom_solver::way_in::Failed;

use super::ShopPage;
use crate::process::failure::Failure;
use crate::text::cells::{cell, line};
use crate::words::shop as words;

/// The heads of the columns.
const HEADS: [&str; 18] = [
    "line",
    "name",
    "kind",
    "as",
    "width_mm",
    "return_mm",
    "depth_mm",
    "price",
    "currency",
    "fits",
    "gets_in",
    "options",
    "best_option",
    "best_score",
    "left_mm",
    "misses_mm",
    "fails_at",
    "would_help",
];

/// A head, then a row for each candidate in the list's order.
pub(crate) fn csv(told: &ShopPage<'_>) -> Result<String, Failure> {
    let line = |cells: &[String]| line(cells).map_err(Failure::Unwritable);
    let mut text = line(&HEADS.map(str::to_owned))?;
    for (listed, one) in told.names.listed.iter().zip(&told.found.candidates) {
        text.push_str(&line(&row(told, listed, one))?);
    }
    Ok(text)
}

fn row(told: &ShopPage<'_>, listed: &ListedPiece, one: &CandidateFound) -> [String; 18] {
    let yes_no = |yes: bool| if yes { "yes" } else { "no" }.to_owned();
    let best = one.options.first();
    let fails = one.way.iter().flat_map(|way| &way.carried.parts).find_map(|part| part.fails.as_ref());
    let figures = |all: &mut dyn Iterator<Item = (Dimension, f64)>| {
        all.map(|(dimension, by)| format!("{} {by:.0}", dimension.key())).collect::<Vec<_>>().join("; ")
    };
    let remedies = || words::remedies(told.names.brief, one).join(" ");
    let why = words::why_not(told.names, listed, one).unwrap_or_else(remedies);
    let at = |fails: &Failed| told.names.brief.way.as_ref().map_or("", |way| crate::words::way::at(way, fails.at));
    [
        listed.line.to_string(),
        cell(&listed.name),
        listed.kind.key().to_owned(),
        cell(one.row.map_or("", |row| told.names.row(row))),
        format!("{:.1}", listed.width),
        listed.return_length.map_or_else(String::new, |length| format!("{length:.1}")),
        format!("{:.1}", listed.depth),
        listed.price.map_or_else(String::new, |price| price.words()),
        cell(told.currency.filter(|_| listed.price.is_some()).unwrap_or_default()),
        yes_no(one.goes()),
        one.way.as_ref().map_or_else(String::new, |way| yes_no(way.carried.gets_in)),
        one.options.len().to_string(),
        cell(best.map_or("", |best| best.key.as_str())),
        best.map_or_else(String::new, |best| format!("{:.1}", best.score)),
        figures(&mut one.left.iter().map(|left| (left.dimension, left.by))),
        figures(&mut one.misses.iter().map(|miss| (miss.dimension, miss.by))),
        cell(fails.map_or("", at)),
        cell(&why),
    ]
}
