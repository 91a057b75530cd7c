//! The room as it is measured: clockwise, a wall at a time, the walls drawn beside as they grow.

use elbowroom_model::filed::Filed;
use elbowroom_model::{Rounding, Unit};
use maud::{Markup, html};
use serde_json::{Value, json};

use super::field::{Field, Takes, chosen, typed};
use super::lengths::Units;
use super::on::On;
use super::outline::{misclosure, outline};
use super::wall;
use crate::words::page::measure as words;

/// What a gap may be that rounding leaves, mm.
const CLOSED: f64 = 0.5;

/// The screen's own part.
pub(super) fn part(on: On<'_>) -> Markup {
    let values = Filed::read(&on.seen.text).map(|filed| filed.values()).unwrap_or_default();
    let units = Units::of(&values, on.units);
    let walls: Vec<&Value> = values["walls"].as_array().into_iter().flatten().collect();
    let by_places = walls.iter().any(|wall| !wall["start"].is_null());
    let names: Vec<String> = walls.iter().enumerate().map(|(place, wall)| wall::name(place, wall)).collect();
    let now = on.wall.min(walls.len().saturating_sub(1));
    html! {
        div.beside {
            div id="fields" {
                p.soft { (if by_places { words::BY_PLACES } else { words::ABOUT }) }
                (wall_list(&names, now))
                @if let Some(wall) = walls.get(now) { (wall::put(&wall::Measured { place: now, wall, names: &names, by_places, units })) }
                @if !by_places { (diagonals(&values, &names, units)) }
                (room(&values, units))
            }
            div.drawing-beside {
                figure.plan { (outline(on.seen, on.units)) }
                @if let Some(gap) = misclosure(&values, units) {
                    p.gap-told role="status" {
                        @if gap <= CLOSED { (words::CLOSES) }
                        @else if on.seen.read.is_ok() { (words::closes_within(&units.told.words(gap, Rounding::Nearest))) }
                    }
                }
            }
        }
    }
}

/// The walls by name: a tap goes to one.
fn wall_list(names: &[String], now: usize) -> Markup {
    html! {
        nav.walls aria-label=(words::WALLS) {
            ol {
                @for (place, name) in names.iter().enumerate() {
                    li { button type="button" data-wall=(place) aria-current=[(place == now).then_some("step")] { (name) } }
                }
            }
        }
    }
}

fn room(values: &Value, units: Units) -> Markup {
    let all: Vec<(&str, &str)> = Unit::ALL.iter().map(|unit| (unit.key(), unit.key())).collect();
    html! {
        section aria-labelledby="h-room" {
            h2 id="h-room" { (words::ROOM) }
            div.fields {
                (typed(&Field { at: "name", label: words::NAME, takes: Takes::Text, value: &values["name"], hint: "" }))
                (chosen("units", words::UNITS, &all, &values["units"], "cm"))
                (typed(&Field { at: "ceiling", label: words::CEILING, takes: Takes::Length(units), value: &values["ceiling"], hint: "" }))
                (typed(&Field { at: "measured_within", label: words::OFF_BY, takes: Takes::Length(units), value: &values["measured_within"], hint: "" }))
            }
        }
    }
}

fn diagonals(values: &Value, names: &[String], units: Units) -> Markup {
    let choices: Vec<(&str, &str)> = names.iter().map(|name| (name.as_str(), name.as_str())).collect();
    let row = json!({ "from": names.first(), "to": names.get(2), "length": Value::Null });
    html! {
        section aria-labelledby="h-diagonals" {
            h2 id="h-diagonals" { (words::DIAGONALS) }
            p.soft { (words::DIAGONALS_ABOUT) }
            @for (place, diagonal) in values["diagonals"].as_array().into_iter().flatten().enumerate() {
                @let at = |key: &str| format!("diagonals.{place}.{key}");
                fieldset.card {
                    legend { (words::DIAGONALS) " " (place + 1) }
                    div.fields {
                        (chosen(&at("from"), words::FROM, &choices, &diagonal["from"], ""))
                        (chosen(&at("to"), words::TO, &choices, &diagonal["to"], ""))
                        (typed(&Field { at: &at("length"), label: words::LENGTH, takes: Takes::Length(units), value: &diagonal["length"], hint: "" }))
                    }
                    button type="button" data-remove=(format!("diagonals.{place}")) { (words::remove(&format!("{} {}", words::DIAGONALS, place + 1))) }
                }
            }
            @if names.len() > 3 {
                button type="button" data-add-to="diagonals" data-row=(row) { (words::ADD_DIAGONAL) }
            }
        }
    }
}
