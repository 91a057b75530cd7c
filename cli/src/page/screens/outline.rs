//! The walls as they were measured, drawn from the figures alone: they need not close, and the gap is drawn where they do not.

use elbowroom_model::filed::Filed;
use elbowroom_model::survey::trace::{corners, vectors};
use elbowroom_model::{Point, Unit};
use maud::{Markup, html};
use serde_json::Value;

use super::lengths::Units;
use crate::page::room::Seen;
use crate::words::lengths::taped;
use crate::words::page::measure as words;

/// Size of the letters, of the drawing's height and of its width: so that they read on a phone, where it is least.
const LETTERS: [f64; 2] = [1.0 / 17.0, 1.0 / 29.0];
/// Free paper round the walls, letters: a length and a name are outside of each.
const MARGIN: f64 = 3.2;
/// How wide a letter is of its size.
const WIDE: f64 = 0.56;
/// Chords of a leaf's quarter circle.
const CHORDS: usize = 8;
/// What is said to close, mm.
const CLOSED: f64 = 0.5;

/// A wall as drawn.
struct Drawn {
    name: String,
    length: Option<f64>,
    from: Point,
    to: Point,
    holds: Vec<(String, [Point; 2])>,
    /// What leaves sweep.
    swings: Vec<Vec<Point>>,
}

/// The walls and what they hold.
pub(in crate::page) fn outline(seen: &Seen, told: Option<Unit>) -> Markup {
    let values = Filed::read(&seen.text).map(|filed| filed.values()).unwrap_or_default();
    let units = Units::of(&values, told);
    let walls = drawn(seen, &values, units);
    let ends: Vec<Point> = walls.iter().flat_map(|wall| [wall.from, wall.to]).collect();
    let (low, high) =
        ends.iter().fold((Point::new(f64::MAX, f64::MAX), Point::new(f64::MIN, f64::MIN)), |(low, high), at| {
            (Point::new(low.x.min(at.x), low.y.min(at.y)), Point::new(high.x.max(at.x), high.y.max(at.y)))
        });
    if ends.is_empty() || !(high.x - low.x + high.y - low.y).is_finite() {
        return html! { p.soft { (words::DRAWN) } };
    }
    let [wide, high_by] = [(high.x - low.x).max(1.0), (high.y - low.y).max(1.0)];
    // The margins are of letters, and these of all with its margins.
    let size = |side: f64, of: f64| side * of / (1.0 - 2.0 * MARGIN * of);
    let letters = size(high_by, LETTERS[0]).max(size(wide, LETTERS[1]));
    let margin = MARGIN * letters;
    let view = format!(
        "{:.0} {:.0} {:.0} {:.0}",
        low.x - margin,
        -high.y - margin,
        wide + 2.0 * margin,
        high_by + 2.0 * margin
    );
    let gap = walls.last().zip(walls.first()).map(|(last, first)| (last.to, first.from));
    html! {
        svg.outline viewBox=(view) role="img" aria-label=(words::DRAWN) font-size=(format!("{letters:.0}")) {
            @for wall in &walls {
                (line("wall", wall.from, wall.to))
                @for (kind, ends) in &wall.holds { (line(kind, ends[0], ends[1])) }
                @for swing in &wall.swings { (path(swing)) }
            }
            @for wall in &walls { (name(wall, units.told, letters)) }
            @if let Some((end, start)) = gap.filter(|(end, start)| (*end - *start).norm() > CLOSED) {
                (line("gap", end, start))
                (letter((end + start) * 0.5, "gap-name", &words::gap(&taped(units.told, (end - start).norm()))))
            }
        }
    }
}

fn line(class: &str, from: Point, to: Point) -> Markup {
    let at = |figure: f64| format!("{figure:.1}");
    html! { line class=(class) x1=(at(from.x)) y1=(at(-from.y)) x2=(at(to.x)) y2=(at(-to.y)) vector-effect="non-scaling-stroke" {} }
}

fn letter(at: Point, class: &str, text: &str) -> Markup {
    html! { text class=(class) x=(format!("{:.1}", at.x)) y=(format!("{:.1}", -at.y)) text-anchor="middle" { (text) } }
}

/// What a leaf sweeps.
fn path(swing: &[Point]) -> Markup {
    let points: Vec<String> = swing.iter().map(|at| format!("{:.1},{:.1}", at.x, -at.y)).collect();
    html! { polyline.swing points=(points.join(" ")) vector-effect="non-scaling-stroke" {} }
}

/// A wall's length outside of it, and beyond that its name where there is room for it along the wall.
fn name(wall: &Drawn, units: Unit, letters: f64) -> Markup {
    let Some(along) = (wall.to - wall.from).unit() else { return html! {} };
    // Clockwise: the room lies to the right, and paper is free to the left.
    let out = along.left();
    let middle = (wall.from + wall.to) * 0.5;
    let angle = -along.degrees();
    let upright = if (-90.5..=90.5).contains(&angle) { angle } else { angle + 180.0 };
    let text = |off: f64, class: &str, text: &str| {
        let at = middle + out * (letters * off);
        let (x, y) = (format!("{:.1}", at.x), format!("{:.1}", -at.y));
        let turn = format!("rotate({upright:.1} {x} {y})");
        html! { text class=(class) x=(x) y=(y) transform=(turn) text-anchor="middle" dominant-baseline="central" { (text) } }
    };
    let has_room = wall.name.chars().count() as f64 * letters * WIDE <= (wall.to - wall.from).norm() * 1.15;
    html! {
        @if let Some(length) = wall.length { (text(0.9, "figure", &taped(units, length))) }
        @if has_room { (text(2.2, "name", &wall.name)) }
    }
}

/// What the leaf of a door sweeps that hangs on two jambs: from the free jamb round to where it is open, and back to its hinge.
fn swing(item: &Value, [left, right]: [Point; 2], inward: Point) -> Option<Vec<Point>> {
    let (hinge, free) = match item["hinge"].as_str()? {
        "left" => (left, right),
        "right" => (right, left),
        _ => return None,
    };
    let way = match item["swings"].as_str()? {
        "in" => inward,
        "out" => -inward,
        _ => return None,
    };
    let (closed, open) = (free - hinge, way * (free - hinge).norm());
    let at = |chord: usize| {
        let (sine, cosine) = (std::f64::consts::FRAC_PI_2 * chord as f64 / CHORDS as f64).sin_cos();
        hinge + closed * cosine + open * sine
    };
    Some((0..=CHORDS).map(at).chain([hinge]).collect())
}

fn drawn(seen: &Seen, values: &Value, units: Units) -> Vec<Drawn> {
    let rows: Vec<&Value> = values["walls"].as_array().into_iter().flatten().collect();
    let figure = |value: &Value| units.length(value);
    let places: Vec<[Point; 2]> = match &seen.read {
        Ok(brief) if !is_open(rows.iter().copied(), units) => {
            brief.room.walls.iter().map(|wall| [wall.start, wall.end]).collect()
        }
        _ => as_typed(&rows, units),
    };
    let one = |(place, (row, [from, to])): (usize, (&&Value, [Point; 2]))| {
        let along = (to - from).unit().unwrap_or(Point::new(1.0, 0.0));
        let is_measured = (to - from).norm() > CLOSED;
        let items = || row["holds"].as_array().into_iter().flatten().filter(|_| is_measured);
        let held = |item: &Value| {
            let at = figure(&item["at"])?;
            let width = figure(&item["width"]).unwrap_or(0.0).max(40.0);
            Some((item.clone(), item["kind"].as_str()?.to_owned(), [from + along * at, from + along * (at + width)]))
        };
        Drawn {
            name: row["name"].as_str().map_or_else(|| words::wall(place), str::to_owned),
            length: figure(&row["length"]),
            from,
            to,
            // Nothing is on a wall that is not measured yet.
            holds: items().filter_map(held).map(|(_, kind, ends)| (kind, ends)).collect(),
            swings: items().filter_map(held).filter_map(|(item, _, ends)| swing(&item, ends, -along.left())).collect(),
        }
    };
    rows.iter().zip(places).enumerate().map(one).collect()
}

/// Whether the lengths, taken as they were typed, end elsewhere than they began.
fn is_open<'a>(rows: impl Iterator<Item = &'a Value>, units: Units) -> bool {
    let rows: Vec<&Value> = rows.collect();
    if rows.iter().any(|row| row["length"].is_null()) {
        return false;
    }
    gap(&rows, units) > CLOSED
}

/// How far from where they began the walls end, as typed, mm.
fn gap(rows: &[&Value], units: Units) -> f64 {
    let walls = as_typed(rows, units);
    walls.last().zip(walls.first()).map_or(0.0, |(last, first)| (last[1] - first[0]).norm())
}

/// How far from where they began the walls of a file end, as typed, mm; nothing where they are given by places.
pub(super) fn misclosure(values: &Value, units: Units) -> Option<f64> {
    let rows: Vec<&Value> = values["walls"].as_array().into_iter().flatten().collect();
    (rows.len() > 2 && rows.iter().all(|row| units.length(&row["length"]).is_some())).then(|| gap(&rows, units))
}

/// Each wall after the one before, as typed.
fn as_typed(rows: &[&Value], units: Units) -> Vec<[Point; 2]> {
    let lengths: Vec<f64> = rows.iter().map(|row| units.length(&row["length"]).unwrap_or(0.0)).collect();
    let angles: Vec<f64> = rows.iter().map(|row| row["corner"].as_f64().unwrap_or(90.0)).collect();
    let legs = vectors(&lengths, &angles);
    corners(&legs).into_iter().zip(legs).map(|(from, leg)| [from, from + leg]).collect()
}
