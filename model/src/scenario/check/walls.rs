//! Walls: corners, closing, crossing, direction, area.

use super::plausible;
use crate::on_plan::on_plan;
use crate::point::Point;
use crate::report::Report;
use crate::ring;
use crate::room::Wall;
use crate::scenario::document::WallRow;
use crate::scenario::tolerance::{ALONG_MISCLOSURE, AT_LIMIT};
use crate::survey::compass::{Closed, MOST_SPREAD};
use crate::survey::simple::crossings;
use crate::survey::tolerance::TOUCHING;
use crate::survey::trace;
use crate::tables::Built;
use crate::unit::Unit;
use crate::yaml::Trail;

/// Least and most area of a room, mm2.
const AREAS: (f64, f64) = (2e6, 400e6);
/// The side of a square as large as living rooms are, 8 to 50 m2, mm (common practice, no source).
const LIVING_ROOM: Built = Built { least: 2828.0, most: 7071.0 };
/// A room larger than three times the most of those is told, mm2.
const IMPLAUSIBLE: f64 = 150e6;
/// Corners may miss their sum by this, degrees.
const MOST_CORNER_MISFIT: f64 = 3.0;
fn wall_at(place: usize) -> Trail {
    Trail::default().key("walls").index(place)
}

/// A wall that has no length, unless the length was at fault.
pub(crate) fn no_length(name: &str, at: &Trail, report: &mut Report<'_>) {
    if report.was_told(&at.key("length")) {
        return;
    }
    let message = format!("{name} has no `length`.");
    let remedy = "Give its length, or give every wall `start: [x, y]` instead.".to_owned();
    report.add(at, "missing_key", name, message, remedy);
}

/// Tells a wall that mixes the two forms.
pub(crate) fn one_way_or_the_other(row: &WallRow, name: &str, at: &Trail, report: &mut Report<'_>) {
    let remedy = || "Give every wall `start`, or every wall `length`; not some of each.".to_owned();
    if row.start.is_none() && !report.was_told(&at.key("start")) {
        let message = format!("{name} has no `start`, and other walls have one.");
        report.add(at, "mixed_walls", name, message, remedy());
    }
    for (key, given) in [("length", row.length.is_some()), ("corner", row.corner.is_some())] {
        if given && row.start.is_some() {
            let message = format!("{name} has both `start` and `{key}`.");
            report.add(&at.key(key), "mixed_walls", name, message, remedy());
        }
    }
}

/// The inside angle, where it is one.
pub(crate) fn corner(corner: f64, name: &str, at: &Trail, report: &mut Report<'_>) -> Option<f64> {
    if corner > 0.0 && corner < 360.0 {
        return Some(corner);
    }
    let message =
        format!("The corner at the right-hand end of {name} is {corner} degrees; it must lie between 0 and 360.");
    let remedy = "Give the inside angle: 90 for a plain corner, 270 for an outside one.".to_owned();
    report.add(&at.key("corner"), "corner_out_of_range", name, message, remedy);
    None
}

/// Whether the corners add up to what a closed outline has, within what may be spread.
pub(crate) fn corners_add_up(corners: &[f64], misfit: f64, report: &mut Report<'_>) -> bool {
    if misfit.abs() <= MOST_CORNER_MISFIT + AT_LIMIT {
        return true;
    }
    let sum: f64 = corners.iter().sum();
    let needed = trace::corner_sum(corners.len());
    let message = format!(
        "The {} inside corners add up to {sum} degrees; they must add up to {needed}, so {} degrees are {}.",
        corners.len(),
        misfit.abs(),
        if misfit > 0.0 { "too many" } else { "missing" }
    );
    let outside = 360.0 * corners.len() as f64 - sum;
    let remedy = if (outside - needed).abs() <= MOST_CORNER_MISFIT {
        "These look like outside angles: give what is left to 360 of each.".to_owned()
    } else {
        "Check which corners are outside corners (270), and that no wall is left out.".to_owned()
    };
    report.add(&Trail::default().key("walls"), "corners_do_not_add_up", "", message, remedy);
    false
}

/// Measures that no outline fits.
pub(crate) fn no_fit(report: &mut Report<'_>) {
    let message = "No outline fits the lengths, corners and diagonals together.".to_owned();
    let remedy =
        "Measure again; the diagonals run from the left end of one wall to the left end of another.".to_owned();
    report.add(&Trail::default().key("walls"), "no_outline_fits", "", message, remedy);
}

/// Whether what fails to close may be spread; else names the walls that run along it.
pub(crate) fn closes(closed: &Closed, walls: &[Wall], report: &mut Report<'_>) -> bool {
    if closed.ratio() <= MOST_SPREAD + AT_LIMIT {
        return true;
    }
    let vector = closed.misclosure;
    let message = format!(
        "The walls do not close: the last ends {} from where the first began ({}), {:.1} % of their total length; \
         up to 1 % is spread.",
        report.words(vector.norm()),
        on_plan(vector, |length| report.words(length)),
        closed.ratio() * 100.0
    );
    let likely = likely_slips(walls, vector);
    let remedy = format!("Measure again what runs that way: {}.", likely.join(", "));
    report.add(&Trail::default().key("walls"), "does_not_close", "", message, remedy);
    false
}

fn likely_slips(walls: &[Wall], vector: Point) -> Vec<String> {
    let Some(along) = vector.unit() else { return Vec::new() };
    let skew = |wall: &&Wall| wall.along().cross(along).abs();
    let parallel: Vec<String> =
        walls.iter().filter(|wall| skew(wall) <= ALONG_MISCLOSURE).map(|wall| wall.name.clone()).collect();
    if !parallel.is_empty() {
        return parallel;
    }
    walls.iter().min_by(|a, b| skew(a).total_cmp(&skew(b))).map(|wall| wall.name.clone()).into_iter().collect()
}

/// Whether the outline is simple, clockwise and of a sensible area.
pub(crate) fn sound(walls: &[Wall], report: &mut Report<'_>) -> bool {
    let before = report.count();
    tell_no_length(walls, report);
    if report.count() == before {
        tell_crossing(walls, report);
    }
    if report.count() == before {
        tell_direction_and_area(walls, report);
    }
    report.count() == before
}

fn tell_no_length(walls: &[Wall], report: &mut Report<'_>) {
    for (place, wall) in walls.iter().enumerate().filter(|(_, wall)| wall.length() <= TOUCHING) {
        let message = format!("{} starts and ends at the same place.", wall.name);
        report.add(
            &wall_at(place),
            "wall_without_length",
            &wall.name,
            message,
            "Leave it out, or move its start.".to_owned(),
        );
    }
}

fn tell_crossing(walls: &[Wall], report: &mut Report<'_>) {
    for (first, second) in crossings(walls) {
        let (one, other) = (&walls[first].name, &walls[second].name);
        let message = format!("{one} and {other} cross or touch.");
        let remedy = format!("Check the lengths and corners between {one} and {other}.");
        report.add(&wall_at(second), "walls_cross", other, message, remedy);
    }
}

fn tell_direction_and_area(walls: &[Wall], report: &mut Report<'_>) {
    let outline: Vec<Point> = walls.iter().map(|wall| wall.start).collect();
    let area = -ring::signed_area(&outline);
    let at = Trail::default().key("walls");
    if area < -TOUCHING {
        let message = "The walls run counter-clockwise as seen from above (x to the right, y up).".to_owned();
        let remedy = "List the corners in the opposite order; each wall's `start` is its left-hand end as you face it from inside.";
        report.add(&at, "runs_counter_clockwise", "", message, remedy.to_owned());
        return;
    }
    let (least, most) = AREAS;
    let metres = area / 1e6;
    if area < least * (1.0 - AT_LIMIT) {
        let message =
            format!("The room has {metres:.2} m2, {:.2} less than the 2 m2 it must have.", (least - area) / 1e6);
        report.add(&at, "too_small", "", message, check_units(area, report.units()));
    } else if area > most * (1.0 + AT_LIMIT) {
        let message =
            format!("The room has {metres:.1} m2, {:.1} more than the 400 m2 it may have.", (area - most) / 1e6);
        report.add(&at, "too_large", "", message, check_units(area, report.units()));
    } else if area > IMPLAUSIBLE
        && let Some(unit) = plausible::likely_unit(area.sqrt(), report.units(), LIVING_ROOM)
    {
        let as_that = plausible::read_as(area.sqrt(), report.units(), unit).powi(2) / 1e6;
        report.notice(format!(
            "The room has {metres:.0} m2, and living rooms have 8 to 50 m2: is the file in {unit}? The room would then have {as_that:.1} m2.",
            unit = unit.key()
        ));
    }
}

/// What to do where the area is no room's.
fn check_units(area: f64, units: Unit) -> String {
    let check = "Check the unit: is `units` what the lengths are in?";
    let Some(unit) = plausible::likely_unit(area.sqrt(), units, LIVING_ROOM) else { return check.to_owned() };
    let metres = plausible::read_as(area.sqrt(), units, unit).powi(2) / 1e6;
    format!("{check} In {} the room would have {metres:.1} m2.", unit.key())
}
