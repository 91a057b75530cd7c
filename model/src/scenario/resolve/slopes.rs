//! Ceilings that fall toward a wall.

use super::names::Names;
use crate::length::Measure;
use crate::report::{Of, Report, Taken};
use crate::room::{Slope, WallId};
use crate::scenario::document::{Document, WallRow};
use crate::yaml::Trail;

/// Those that are sound.
pub(super) fn slopes(document: &Document, names: &Names, report: &mut Report<'_>) -> Vec<Slope> {
    let mut found = Vec::new();
    for (place, row) in document.walls.iter().flatten().enumerate() {
        if let Some(row) = row {
            let at = Trail::default().key("walls").index(place);
            found.extend(slope(row, WallId(place), &names.walls[place], &at, report));
        }
    }
    found
}

fn slope(row: &WallRow, wall: WallId, name: &str, at: &Trail, report: &mut Report<'_>) -> Option<Slope> {
    let keys = [
        ("ceiling_from", &row.ceiling_from, Taken::AboveZero),
        ("ceiling_to", &row.ceiling_to, Taken::FromZero),
        ("ceiling_over", &row.ceiling_over, Taken::AboveZero),
    ];
    if keys.iter().all(|(_, measure, _)| measure.is_none()) {
        return None;
    }
    if let Some((missing, ..)) = keys.iter().find(|(_, measure, _)| measure.is_none()) {
        let message = format!("The ceiling falls toward {name}, and `{missing}` is not given.");
        let remedy = "Give `ceiling_from`, `ceiling_to` (its height at the wall) and `ceiling_over` (how far out it begins to fall).";
        report.add(at, "missing_key", name, message, remedy.to_owned());
        return None;
    }
    let mut length = |(key, measure, taken): (&'static str, &Option<Measure>, Taken)| {
        report.length(measure.as_ref()?, &at.key(key), Of { item: name, figure: key }, taken)
    };
    let [from, to, over] = keys.map(&mut length);
    let (from, to, over) = (from?, to?, over?);
    if to < from {
        return Some(Slope { wall, from, to, over });
    }
    let (high, low) = (report.words(to), report.words(from));
    let message = format!("The ceiling at {name} is {high} high at the wall and {low} further out: it does not fall.");
    let remedy = "Give `ceiling_to` as its height at the wall, less than `ceiling_from`.".to_owned();
    report.add(&at.key("ceiling_to"), "ceiling_not_falling", name, message, remedy);
    None
}
