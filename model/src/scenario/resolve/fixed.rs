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
use crate::used_at::UsedAt;
use crate::yaml::Trail;

/// A change of the floor's height along a line.
const STEP: &str = "step";

/// A step is longer, mm: a foot's width.
const SHORTEST_STEP: f64 = 100.0;

/// The fixed things that are sound.
pub(super) fn fixed(
    document: &Document,
    names: &Names,
    outline: Option<&Outline>,
    reach_in_wheelchair: bool,
    report: &mut Report<'_>,
) -> Vec<Fixed> {
    let (mut found, mut taken_as_used, mut counters) = (Vec::new(), Vec::new(), Vec::new());
    for (place, row) in document.fixed.iter().flatten().enumerate() {
        let Some(row) = row else { continue };
        let at = Trail::default().key("fixed").index(place);
        let thing = one(row, &names.fixed[place], &at, report);
        if row.use_depth.is_none() {
            taken_as_used.extend(thing.iter().filter_map(as_used));
            counters.extend(thing.iter().cloned());
        }
        found.extend(thing);
    }
    tell_used(&taken_as_used, report);
    tell_steps(&found, reach_in_wheelchair, report);
    let walls = outline.map_or(&[][..], |outline| &outline.walls);
    let is_outside = |one: &&Fixed| outline.is_some() && !check::fixed::in_the_room(&one.corners, walls);
    let counters = counters.iter().filter(|thing| !is_outside(thing));
    let counters: Vec<String> = counters.filter_map(|thing| check::counter::told(thing, report)).collect();
    counters.into_iter().for_each(|told| report.notice(told));
    let told: Vec<String> =
        found.iter().filter(is_outside).map(|one| check::fixed::outside(one, walls, report)).collect();
    told.into_iter().for_each(|told| report.notice(told));
    found
}

/// Tells once what steps in the floor keep apart.
fn tell_steps(things: &[Fixed], in_wheelchair: bool, report: &mut Report<'_>) {
    let steps: Vec<&str> =
        things.iter().filter(|thing| thing.step().is_some()).map(|thing| thing.name.as_str()).collect();
    if steps.is_empty() {
        return;
    }
    let who = if in_wheelchair { "nobody crosses one in a wheelchair" } else { "ways may cross one: mind it" };
    report
        .notice(format!("No piece stands across a step in the floor, rugs neither, and {who}: {}.", steps.join(", ")));
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
        "By its kind this counts as used, and so much floor before it stays clear and can be reached: {}. \
         Sources: {}. `use` sets another depth, 0 none; `used_at: [x, y]` is a place at the edge where one stands, the longest that \
         floor lies before where nothing is said, of stairs the shortest.",
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
    if let Some(ends) = line(row, name, at, report)? {
        let (name, corners) = (name.to_owned(), ends.into());
        return Some(Fixed { name, kind, corners, height, use_depth: None, used_at: UsedAt::default() });
    }
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
    let used_at = match &row.used_at {
        Some(place) => UsedAt::Place(point(place, name, &at.key("used_at"), report)?),
        None => fixture_use(&kind).map(|used| used.at).unwrap_or_default(),
    };
    Some(Fixed { name: name.to_owned(), kind, corners, height, use_depth, used_at })
}

/// Both ends of a step's line; `Some(None)` of what is no step, `None` after a fault.
fn line(row: &FixedRow, name: &str, at: &Trail, report: &mut Report<'_>) -> Option<Option<[Point; 2]>> {
    let is_step = row.kind.as_deref().is_some_and(|kind| kind.trim().eq_ignore_ascii_case(STEP));
    let was_told = report.was_told(&at.key("corners"));
    let mut fault = |key: &'static str, code: &'static str, message: String, remedy: &str| {
        let at = if key.is_empty() { at.clone() } else { at.key(key) };
        report.add(&at, code, name, message, remedy.to_owned());
        None
    };
    match (&row.line, is_step) {
        (None, true) => {
            let remedy = "Give `line`: both ends of the step in plan coordinates, [[0, 100], [300, 100]].";
            fault("", "missing_key", format!("{name} is a step and has no `line`."), remedy)
        }
        (Some(_), false) => {
            let remedy = "Write `kind: step`, or give `corners`.";
            fault("line", "key_of_another_kind", format!("{name} has a `line` and is no step."), remedy)
        }
        // What was no list of corners is told already.
        (None, false) if row.corners.is_none() && was_told => None,
        (None, false) if row.corners.is_none() => {
            let remedy = "Give `corners`: its corners in plan coordinates, in turn; convex.";
            fault("", "missing_key", format!("{name} has no `corners`."), remedy)
        }
        (None, false) => Some(None),
        (Some(_), true) if row.corners.is_some() || row.use_depth.is_some() || row.used_at.is_some() => {
            let remedy = "Leave `corners`, `use` and `used_at` out: a step is its line, and nobody stands before it.";
            fault("line", "key_of_another_kind", format!("{name} is a step and has more than a `line`."), remedy)
        }
        (Some([from, to]), true) => {
            let at = at.key("line");
            let ends = [point(from, name, &at.index(0), report), point(to, name, &at.index(1), report)];
            let (from, to) = (ends[0]?, ends[1]?);
            if (to - from).norm() >= SHORTEST_STEP {
                return Some(Some([from, to]));
            }
            let message = format!("The line of {name} is {} long.", report.words((to - from).norm()));
            let remedy = "Give both ends of the step in plan coordinates.".to_owned();
            report.add(&at, "too_small", name, message, remedy);
            None
        }
    }
}

fn point([x, y]: &[Measure; 2], name: &str, at: &Trail, report: &mut Report<'_>) -> Option<Point> {
    let of = Of { item: name, figure: "corner" };
    let x = report.length(x, &at.index(0), of, Taken::Any);
    let y = report.length(y, &at.index(1), of, Taken::Any);
    Some(Point::new(x?, y?))
}
