//! The room as it is measured: clockwise, a wall at a time, the walls drawn beside as they grow.

use elbowroom_model::filed::Filed;
use elbowroom_model::{Rounding, Unit};
use maud::{Markup, html};
use serde_json::Value;

use super::field::{Field, Takes, chosen, long, typed};
use super::lengths::Units;
use super::on::On;
use super::outline::{misclosure, outline};
use super::wall;
use crate::page::room::Seen;
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
                p.soft { @if by_places { (words::BY_PLACES) } @else { (words::about(units.told)) } }
                (wall_list(&names, now))
                @if let Some(wall) = walls.get(now) { (wall::put(&wall::Measured { place: now, wall, names: &names, by_places, units })) }
                @if !by_places { (diagonals(&values, &names, units)) }
                (room(&values, units))
            }
            div.drawing-beside {
                figure.plan { (outline(on.seen, on.units)) }
                @if let Some(gap) = misclosure(&values, units) {
                    @let told = units.told.words(gap, Rounding::Nearest);
                    p.gap-told role="status" {
                        @if gap <= CLOSED { (words::CLOSES) }
                        @else if on.seen.read.is_ok() { (words::closes_within(&told)) }
                        @else { (slip(on.seen).unwrap_or_else(|| words::ends_off(&told))) }
                    }
                    @if gap > CLOSED && on.seen.read.is_err() && names.len() > 3 {
                        section.card aria-labelledby="h-ask" {
                            h2 id="h-ask" { (words::ASK_DIAGONAL) }
                            p.soft { (words::ASK_DIAGONAL_ABOUT) }
                            (new_diagonal(&names, units, "asked", words::ASK_DIAGONAL))
                        }
                    }
                }
            }
        }
    }
}

/// What is told of walls that do not close: the likeliest slip.
fn slip(seen: &Seen) -> Option<String> {
    let faults = seen.read.as_ref().err()?;
    let fault = faults.iter().find(|fault| fault.code == "does_not_close")?;
    Some(format!("{} {}", fault.message, fault.remedy))
}

/// A form for a diagonal: it is put into the file once it is measured.
fn new_diagonal(names: &[String], units: Units, form: &str, label: &str) -> Markup {
    let id = |key: &str| format!("{form}-diagonal-{key}");
    let corner = |key: &str, label: &str, usual: usize| {
        html! {
            div.field {
                label for=(id(key)) { (label) }
                select id=(id(key)) name=(key) {
                    @for (place, name) in names.iter().enumerate() { option value=(name) selected[place == usual] { (name) } }
                }
            }
        }
    };
    html! {
        form data-add="diagonals" data-row="{}" aria-label=(label) {
            div.fields {
                (corner("from", words::FROM, 0))
                (corner("to", words::TO, 2))
                div.field {
                    label for=(id("length")) { (words::LENGTH) }
                    input type="text" id=(id("length")) name="length" data-as="figure" data-unit=[units.typed()] required autocomplete="off";
                }
            }
            button type="submit" { (words::ADD_DIAGONAL) }
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
                (typed(&Field { at: "room.client", label: words::CLIENT, takes: Takes::Text, value: &values["room"]["client"], hint: "" }))
            }
            (long("room.note", words::NOTE, &values["room"]["note"], words::NOTE_ABOUT))
        }
    }
}

fn diagonals(values: &Value, names: &[String], units: Units) -> Markup {
    let choices: Vec<(&str, &str)> = names.iter().map(|name| (name.as_str(), name.as_str())).collect();
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
                (new_diagonal(names, units, "another", words::ADD_DIAGONAL))
            }
        }
    }
}
