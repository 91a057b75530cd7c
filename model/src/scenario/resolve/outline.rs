//! The outline: walls from lengths and corners, or from coordinates, closed.

use super::diagonals::{self, Diagonal};
use super::names::Names;
use crate::on_plan::on_plan;
use crate::point::Point;
use crate::report::{Of, Report, Taken};
use crate::room::{Survey, Wall};
use crate::scenario::check;
use crate::scenario::document::{Document, WallRow};
use crate::scenario::tolerance::{CLOSED, NO_MISFIT, ROUNDED};
use crate::survey::{compass, fit, trace};
use crate::yaml::Trail;

/// Corners that the file does not state.
const RIGHT_ANGLE: f64 = 90.0;

/// What was found of the walls.
#[derive(Debug, Default)]
pub(super) struct Found {
    /// Each wall's length as measured, mm, where it can be had: what items are held to, even where nothing closes.
    pub(super) lengths: Vec<Option<f64>>,
    /// What a length may be off because the coordinates were rounded, mm.
    pub(super) rounding: f64,
    /// The outline, where it is sound.
    pub(super) outline: Option<Outline>,
}

/// A closed outline.
#[derive(Debug)]
pub(super) struct Outline {
    pub(super) walls: Vec<Wall>,
    pub(super) survey: Survey,
    pub(super) notices: Vec<String>,
}

/// The outline of the document's walls, and their lengths as measured.
pub(super) fn outline(document: &Document, names: &Names, within: f64, report: &mut Report<'_>) -> Found {
    let Some(rows) = document.walls.as_ref() else { return Found::default() };
    if !check::limits::enough_walls(rows.len(), report) {
        return Found::default();
    }
    let diagonals = diagonals::diagonals(document, names, report);
    let by_coordinates = rows.iter().flatten().any(|row| row.start.is_some());
    let mut found = if by_coordinates {
        from_coordinates(rows, names, report)
    } else {
        from_lengths(rows, names, diagonals.as_deref(), within, report)
    };
    if by_coordinates && let (Some(outline), Some(diagonals)) = (&mut found.outline, diagonals) {
        let (residuals, notices) = diagonals::checked(&outline.walls, &diagonals, within, report);
        outline.survey.residuals = residuals;
        outline.notices.extend(notices);
    }
    found.outline = found.outline.filter(|outline| check::walls::sound(&outline.walls, report));
    found
}

fn wall_at(place: usize) -> Trail {
    Trail::default().key("walls").index(place)
}

fn from_coordinates(rows: &[Option<WallRow>], names: &Names, report: &mut Report<'_>) -> Found {
    let mut corners = Vec::new();
    for (place, row) in rows.iter().enumerate() {
        let corner = row.as_ref().and_then(|row| start(row, place, &names.walls[place], report));
        corners.push(corner);
    }
    let whole: Option<Vec<Point>> = corners.iter().copied().collect();
    let length = |place: usize| Some((corners[(place + 1) % corners.len()]? - corners[place]?).norm());
    let outline =
        whole.map(|corners| Outline { walls: named(&corners, names), survey: Survey::default(), notices: Vec::new() });
    Found { lengths: (0..corners.len()).map(length).collect(), rounding: ROUNDED, outline }
}

fn start(row: &WallRow, place: usize, name: &str, report: &mut Report<'_>) -> Option<Point> {
    check::walls::one_way_or_the_other(row, name, &wall_at(place), report);
    let [x, y] = row.start.as_ref()?;
    let (at, of) = (wall_at(place).key("start"), Of { item: name, figure: "start" });
    let x = report.length(x, &at.index(0), of, Taken::Any);
    let y = report.length(y, &at.index(1), of, Taken::Any);
    Some(Point::new(x?, y?))
}

/// `diagonals`: `None` after a fault of one of them.
fn from_lengths(
    rows: &[Option<WallRow>],
    names: &Names,
    diagonals: Option<&[Diagonal]>,
    within: f64,
    report: &mut Report<'_>,
) -> Found {
    let before = report.count();
    let mut lengths = Vec::new();
    let mut corners = Vec::new();
    for (place, row) in rows.iter().enumerate() {
        let (at, name) = (wall_at(place), &names.walls[place]);
        let corner = row.as_ref().and_then(|row| row.corner);
        corners.push(corner.and_then(|corner| check::walls::corner(corner, name, &at, report)));
        lengths.push(row.as_ref().and_then(|row| length(row, name, &at, report)));
    }
    let measured: Option<Vec<f64>> = lengths.iter().copied().collect();
    let outline = match (measured, diagonals) {
        (Some(measured), Some(diagonals)) if report.count() == before => {
            if diagonals.is_empty() {
                close(&measured, &corners, names, report)
            } else {
                fitted(&measured, &corners, names, diagonals, within, report)
            }
        }
        _ => None,
    };
    Found { lengths, rounding: 0.0, outline }
}

fn length(row: &WallRow, name: &str, at: &Trail, report: &mut Report<'_>) -> Option<f64> {
    let Some(measure) = &row.length else {
        check::walls::no_length(name, at, report);
        return None;
    };
    report.length(measure, &at.key("length"), Of { item: name, figure: "length" }, Taken::AboveZero)
}

fn close(lengths: &[f64], corners: &[Option<f64>], names: &Names, report: &mut Report<'_>) -> Option<Outline> {
    let corners: Vec<f64> = corners.iter().map(|corner| corner.unwrap_or(RIGHT_ANGLE)).collect();
    let misfit = corners.iter().sum::<f64>() - trace::corner_sum(corners.len());
    if !check::walls::corners_add_up(&corners, misfit, report) {
        return None;
    }
    let share = misfit / corners.len() as f64;
    let spread: Vec<f64> = corners.iter().map(|corner| corner - share).collect();
    let measured = trace::vectors(lengths, &spread);
    let closed = compass::close(&measured);
    if !check::walls::closes(&closed, &as_measured(&measured, names), report) {
        return None;
    }
    let off = closed.misclosure.norm() > CLOSED;
    let legs = if off { &closed.legs } else { &measured };
    let corrections = if off { closed.corrections(&measured) } else { vec![0.0; lengths.len()] };
    let survey = Survey {
        misclosure: Some(if off { closed.misclosure } else { Point::default() }),
        spread: off,
        corner_misfit: misfit,
        corrections,
        residuals: Vec::new(),
    };
    let notices = closing_notices(&survey, report);
    let walls = named(&trace::corners(legs), names);
    Some(Outline { walls, survey, notices })
}

fn fitted(
    lengths: &[f64],
    corners: &[Option<f64>],
    names: &Names,
    diagonals: &[Diagonal],
    within: f64,
    report: &mut Report<'_>,
) -> Option<Outline> {
    let stated: Option<Vec<f64>> = corners.iter().copied().collect();
    if let Some(stated) = stated {
        let misfit = stated.iter().sum::<f64>() - trace::corner_sum(stated.len());
        if !check::walls::corners_add_up(&stated, misfit, report) {
            return None;
        }
    }
    let measures = fit::Measures {
        lengths: lengths.to_vec(),
        corners: corners.to_vec(),
        diagonals: diagonals.iter().map(|one| (one.from, one.to, one.length)).collect(),
    };
    let Some(fitted) = fit::fit(&measures) else {
        check::walls::no_fit(report);
        return None;
    };
    let (residuals, notices) = diagonals::residuals(&measures, &fitted, names, within, report);
    let survey = Survey { residuals, ..Survey::default() };
    let walls = named(&fitted.corners, names);
    Some(Outline { walls, survey, notices })
}

fn closing_notices(survey: &Survey, report: &Report<'_>) -> Vec<String> {
    let mut notices = Vec::new();
    if survey.corner_misfit.abs() > NO_MISFIT {
        notices.push(format!(
            "The corners add up to {:.2} degrees {} than they should; the misfit is spread evenly over them.",
            survey.corner_misfit.abs(),
            if survey.corner_misfit > 0.0 { "more" } else { "less" }
        ));
    }
    if let (true, Some(vector)) = (survey.spread, survey.misclosure) {
        let most = survey.corrections.iter().copied().fold(0.0, f64::max);
        notices.push(format!(
            "The walls as measured miss closing by {} ({}); this is spread over them in proportion \
             to their lengths, {} at most on one wall.",
            report.words(vector.norm()),
            on_plan(vector, |length| report.words(length)),
            report.words(most)
        ));
    }
    notices
}

/// Walls one after another, not closed.
fn as_measured(legs: &[Point], names: &Names) -> Vec<Wall> {
    let starts = trace::corners(legs);
    let wall = |((start, leg), name): ((&Point, &Point), &String)| Wall {
        name: name.clone(),
        start: *start,
        end: *start + *leg,
    };
    starts.iter().zip(legs).zip(&names.walls).map(wall).collect()
}

/// Walls between the corners, each the left-hand end of a wall.
fn named(corners: &[Point], names: &Names) -> Vec<Wall> {
    let count = corners.len();
    let wall = |place: usize| Wall {
        name: names.walls[place].clone(),
        start: corners[place],
        end: corners[(place + 1) % count],
    };
    (0..count).map(wall).collect()
}
