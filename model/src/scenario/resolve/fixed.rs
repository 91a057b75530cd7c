//! What stands off the walls for good.

use super::names::Names;
use super::outline::Outline;
use crate::length::Measure;
use crate::point::Point;
use crate::report::{Of, Report, Taken};
use crate::room::Fixed;
use crate::scenario::check;
use crate::scenario::document::{Document, FixedRow};
use crate::tables::{FixtureUse, fixture_use};
use crate::yaml::Trail;

/// The fixed things that are sound.
pub(super) fn fixed(
    document: &Document,
    names: &Names,
    outline: Option<&Outline>,
    report: &mut Report<'_>,
) -> Vec<Fixed> {
    let (mut found, mut taken_as_used) = (Vec::new(), Vec::new());
    for (place, row) in document.fixed.iter().flatten().enumerate() {
        let Some(row) = row else { continue };
        let at = Trail::default().key("fixed").index(place);
        let thing = one(row, &names.fixed[place], &at, report);
        taken_as_used.extend(thing.iter().filter(|_| row.use_depth.is_none()).filter_map(as_used));
        found.extend(thing);
    }
    tell_used(&taken_as_used, report);
    let outside =
        |one: &&Fixed| outline.is_some_and(|outline| !check::fixed::in_the_room(&one.corners, &outline.walls));
    let notice = |one: &Fixed| {
        format!(
            "{} stands outside the walls; its corners are plan coordinates, from the left end of the first wall.",
            one.name
        )
    };
    for one in found.iter().filter(outside) {
        report.notice(notice(one));
    }
    found
}

/// A fixed thing that counts as used without the file saying so: its name, and by what.
struct AsUsed {
    name: String,
    used: FixtureUse,
}

fn as_used(thing: &Fixed) -> Option<AsUsed> {
    fixture_use(&thing.kind).map(|used| AsUsed { name: thing.name.clone(), used })
}

/// Tells once what counts as used by its kind.
fn tell_used(things: &[AsUsed], report: &mut Report<'_>) {
    if things.is_empty() {
        return;
    }
    let said: Vec<String> =
        things.iter().map(|thing| format!("{} {}", thing.name, report.words(thing.used.depth))).collect();
    let mut sources: Vec<&str> = things.iter().map(|thing| thing.used.source.as_str()).collect();
    sources.sort_unstable();
    sources.dedup();
    report.notice(format!(
        "By its kind this counts as used, and so much floor before its longest free edge stays clear and can be reached: {}. \
         Sources: {}. `use` sets another depth, 0 none.",
        said.join(", "),
        sources.join("; ")
    ));
}

fn one(row: &FixedRow, name: &str, at: &Trail, report: &mut Report<'_>) -> Option<Fixed> {
    let kind = row.kind.clone()?;
    if kind.chars().any(crate::quote::is_control) || kind.trim().is_empty() {
        let message = format!("The kind of {} is empty or holds control characters.", crate::quote::quoted(name));
        report.add(
            &at.key("kind"),
            "control_character",
            name,
            message,
            "Write a plain word, such as pillar.".to_owned(),
        );
        return None;
    }
    let height = match &row.height {
        Some(measure) => {
            Some(report.length(measure, &at.key("height"), Of { item: name, figure: "height" }, Taken::AboveZero)?)
        }
        None => None,
    };
    let corners = row.corners.as_ref()?;
    let corners: Option<Vec<Point>> = corners
        .iter()
        .enumerate()
        .map(|(nth, corner)| point(corner, name, &at.key("corners").index(nth), report))
        .collect();
    let corners = check::fixed::convex(name, corners?, at, report)?;
    let use_depth = match &row.use_depth {
        Some(measure) => {
            let of = Of { item: name, figure: "use" };
            let depth = report.length(measure, &at.key("use"), of, Taken::FromZero)?;
            (depth > 0.0).then_some(depth)
        }
        None => fixture_use(&kind).map(|used| used.depth),
    };
    Some(Fixed { name: name.to_owned(), kind, corners, height, use_depth })
}

fn point([x, y]: &[Measure; 2], name: &str, at: &Trail, report: &mut Report<'_>) -> Option<Point> {
    let of = Of { item: name, figure: "corner" };
    let x = report.length(x, &at.index(0), of, Taken::Any);
    let y = report.length(y, &at.index(1), of, Taken::Any);
    Some(Point::new(x?, y?))
}
