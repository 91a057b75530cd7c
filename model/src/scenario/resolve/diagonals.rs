//! Diagonals that check the outline: read, and held against what was found.

use super::names::Names;
use crate::nearest::nearest;
use crate::quote::quoted;
use crate::report::{Of, Report, Taken};
use crate::room::{Residual, Wall};
use crate::scenario::document::{DiagonalRow, Document};
use crate::scenario::tolerance::LEAST_SLIP;
use crate::survey::fit::{Fitted, Measures};
use crate::yaml::Trail;

/// A residual over so many times `measured_within` is a likely slip.
const SLIP: f64 = 3.0;
/// A measured diagonal.
#[derive(Debug, Clone, Copy)]
pub(super) struct Diagonal {
    /// The wall whose left end it starts from.
    pub(super) from: usize,
    /// The wall whose left end it runs to.
    pub(super) to: usize,
    /// mm.
    pub(super) length: f64,
}

/// The diagonals of the document; `None` after a fault.
pub(super) fn diagonals(document: &Document, names: &Names, report: &mut Report<'_>) -> Option<Vec<Diagonal>> {
    let rows = document.diagonals.iter().flatten().enumerate();
    let read: Vec<Option<Diagonal>> = rows
        .map(|(place, row)| {
            let at = Trail::default().key("diagonals").index(place);
            one(row.as_ref()?, names, &at, report)
        })
        .collect();
    read.into_iter().collect()
}

fn one(row: &DiagonalRow, names: &Names, at: &Trail, report: &mut Report<'_>) -> Option<Diagonal> {
    let from = wall(row.from.as_deref()?, names, &at.key("from"), report);
    let to = wall(row.to.as_deref()?, names, &at.key("to"), report);
    let of = Of { item: "a diagonal", figure: "length" };
    let length = report.length(row.length.as_ref()?, &at.key("length"), of, Taken::AboveZero);
    let (from, to, length) = (from?, to?, length?);
    if from == to {
        let message = format!("A diagonal runs from {0} to {0}.", names.walls[from]);
        let remedy = "Give two walls: it runs from the left end of the one to the left end of the other.".to_owned();
        report.add(at, "diagonal_to_itself", &names.walls[from], message, remedy);
        return None;
    }
    Some(Diagonal { from, to, length })
}

fn wall(name: &str, names: &Names, at: &Trail, report: &mut Report<'_>) -> Option<usize> {
    let found = names.walls.iter().position(|wall| wall == name);
    if found.is_none() {
        let walls = || names.walls.iter().map(|name| quoted(name)).collect::<Vec<_>>().join(", ");
        let near = nearest(name, names.walls.iter().map(String::as_str));
        let remedy = near
            .map_or_else(|| format!("The walls are {}.", walls()), |near| format!("Did you mean `{}`?", quoted(near)));
        report.add(at, "unknown_wall", name, format!("There is no wall `{}`.", quoted(name)), remedy);
    }
    found
}

/// The diagonals against walls by coordinates, which are not moved, and what must be told of them.
pub(super) fn checked(
    walls: &[Wall],
    diagonals: &[Diagonal],
    within: f64,
    report: &Report<'_>,
) -> (Vec<Residual>, Vec<String>) {
    let between = |one: &Diagonal| {
        let (from, to) = (walls.get(one.from)?, walls.get(one.to)?);
        let of = format!("diagonal {} to {}", from.name, to.name);
        Some(residual(of, one.length, (to.start - from.start).norm(), 1.0, within))
    };
    let residuals: Vec<Residual> = diagonals.iter().filter_map(between).collect();
    let notices = slips(&residuals, report);
    (residuals, notices)
}

/// Every measure against the fitted outline, and what must be told of it.
pub(super) fn residuals(
    measures: &Measures,
    fitted: &Fitted,
    names: &Names,
    within: f64,
    report: &Report<'_>,
) -> (Vec<Residual>, Vec<String>) {
    let mean = measures.lengths.iter().sum::<f64>() / measures.lengths.len().max(1) as f64;
    let lengths = names.walls.iter().zip(&measures.lengths).zip(&fitted.lengths);
    let lengths =
        lengths.map(|((name, measured), found)| residual(format!("length of {name}"), *measured, *found, 1.0, within));
    let corners = names.walls.iter().zip(&measures.corners).zip(&fitted.angles);
    let corners = corners.filter_map(|((name, measured), found)| {
        let of = format!("corner at the right-hand end of {name}");
        Some(residual(of, (*measured)?, *found, mean.to_radians(), within))
    });
    let diagonals = measures.diagonals.iter().zip(&fitted.diagonals).map(|((from, to, measured), found)| {
        let of = format!("diagonal {} to {}", names.walls[*from], names.walls[*to]);
        residual(of, *measured, *found, 1.0, within)
    });
    let residuals: Vec<Residual> = lengths.chain(corners).chain(diagonals).collect();
    let mut notices =
        vec!["The outline is the one that fits best to the lengths, stated corners and diagonals.".to_owned()];
    if !fitted.fixed {
        notices.push(
            "The measures leave some corners open; these are kept as near to even as the measures allow. One more diagonal would fix \
             them."
                .to_owned(),
        );
    }
    notices.extend(slips(&residuals, report));
    (residuals, notices)
}

/// `each`: what one unit of the figure counts in mm.
fn residual(of: String, measured: f64, fitted: f64, each: f64, within: f64) -> Residual {
    let likely_slip = (measured - fitted).abs() * each > (SLIP * within).max(LEAST_SLIP);
    Residual { of, measured, fitted, likely_slip }
}

fn slips(residuals: &[Residual], report: &Report<'_>) -> Vec<String> {
    let words = |one: &Residual| {
        let off = one.measured - one.fitted;
        let (off, way) = (off.abs(), if off > 0.0 { "more" } else { "less" });
        let by = if one.of.starts_with("corner") { format!("{off:.2} degrees") } else { report.words(off) };
        format!("The {} is {by} {way} than the outline that fits best: a likely slip.", one.of)
    };
    residuals.iter().filter(|one| one.likely_slip).map(words).collect()
}
